namespace PanelService.Cutting.Lengths;

/// <summary>A way of cutting a rectangle of a good: a whole sheet, or a section from selvedge to selvedge.</summary>
/// <param name="Grid">The class of goods whose pieces may lie so.</param>
/// <param name="Width">The width it needs.</param>
/// <param name="Length">The length it needs.</param>
/// <param name="Counts">How many of each type it holds.</param>
/// <param name="Block">How they lie.</param>
internal sealed record Section(int Grid, long Width, long Length, int[] Counts, Block Block);
