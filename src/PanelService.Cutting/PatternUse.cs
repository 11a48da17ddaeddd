namespace PanelService.Cutting;

/// <summary>A way of cutting one stock rectangle, and how often it is used.</summary>
/// <param name="Stock">The stock's index in the problem.</param>
/// <param name="Block">What is cut from it; it fits the stock's usable size.</param>
/// <param name="Copies">How many stock rectangles are cut so; 1 or more.</param>
public sealed record PatternUse(int Stock, Block Block, int Copies)
{
    /// <summary>Whether it is cut for the largest leftover there can be, at the price of some cuts: see <see cref="SheetFrame.ForLeftover"/>.</summary>
    public bool ForLeftover { get; init; }
}
