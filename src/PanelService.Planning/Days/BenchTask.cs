namespace PanelService.Planning.Days;

/// <summary>What is done at one time.</summary>
public enum BenchTask
{
    /// <summary>The shop trip.</summary>
    Errand,

    /// <summary>Cutting the boards, easing their edges, dusting.</summary>
    Saw,

    /// <summary>Cutting the cloth.</summary>
    CutCloth,

    /// <summary>Gluing and laying, up to the press.</summary>
    Glue,

    /// <summary>Under weight: nobody's hands are needed.</summary>
    Press,

    /// <summary>Trimming what came out of the press.</summary>
    Trim,

    /// <summary>Brushing and sanding a coat.</summary>
    Coat,
}
