namespace PanelService.Planning.Costing;

/// <summary>What a line's cost is made of.</summary>
internal enum CostPart
{
    Board,
    Cloth,
    Adhesive,
    Primer,
    Ready,
    Labour,
    Overheads,
    Consumables,
    Tools,
}
