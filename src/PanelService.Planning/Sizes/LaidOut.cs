using PanelService.Cutting;

namespace PanelService.Planning.Sizes;

/// <summary>A board or cloth laid out. Pieces are numbered by line, wishes after the lines.</summary>
/// <typeparam name="T">What it is cut from.</typeparam>
/// <param name="Stock">What it is cut from.</param>
/// <param name="Cuts">Cuts, pieces and leftovers of one copy, in steps.</param>
/// <param name="Copies">How many are cut so.</param>
internal sealed record LaidOut<T>(T Stock, SheetCuts Cuts, int Copies);
