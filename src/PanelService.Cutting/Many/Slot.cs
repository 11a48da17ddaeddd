namespace PanelService.Cutting.Many;

/// <summary>
/// A place where a piece can be put beside a node. "Along" is the axis the two then follow one another on, "across"
/// the other. The gap is what is free there as the bin stands; slack elsewhere (the donors) can widen it.
/// </summary>
internal struct Slot
{
    /// <summary>The node the piece comes to lie beside.</summary>
    public int Node;

    /// <summary>Whether they follow one another along x.</summary>
    public bool AlongX;

    /// <summary>The gap's extent along.</summary>
    public int GapAlong;

    /// <summary>The gap's extent across.</summary>
    public int GapAcross;

    /// <summary>Slack that can lengthen the gap, and how deep the strip is that it is taken from.</summary>
    public int DonorAlong, DepthAlong;

    /// <summary>Slack that can widen the gap, and how deep the strip is that it is taken from.</summary>
    public int DonorAcross, DepthAcross;

    /// <summary>What lies waste beside other parts for each unit the gap is lengthened.</summary>
    public int WasteAlong;

    /// <summary>What lies waste beside the node for each unit the gap is widened.</summary>
    public int WasteAcross;
}
