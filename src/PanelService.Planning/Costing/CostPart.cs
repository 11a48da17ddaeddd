namespace PanelService.Planning.Costing;

/// <summary>What a line's cost is made of.</summary>
internal enum CostPart
{
    Board,
    Cloth,
    Adhesive,
    Primer,
    Strips,
    Ready,
    Delivery,
    Labour,
    Overheads,
    Consumables,
    Tools,
}
