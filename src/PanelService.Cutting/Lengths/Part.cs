namespace PanelService.Cutting.Lengths;

/// <summary>What a rectangle may hold: a section from edge to edge of a long one, or all of a short one.</summary>
/// <param name="Stock">The rectangle's stock in the model of fixed goods.</param>
/// <param name="Length">The length it takes.</param>
/// <param name="Counts">How many of each type it holds.</param>
/// <param name="Block">How they lie.</param>
internal sealed record Part(int Stock, long Length, int[] Counts, Block Block);
