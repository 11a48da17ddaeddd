using PanelService.Planning.Measures;
using PanelService.Wire.Orders;

namespace PanelService.Validation;

/// <summary>Whether trimming a sheet's edges leaves any of it.</summary>
internal static class Trim
{
    /// <summary>Reports a trim that leaves nothing, at the board where it has its own, else at the saw.</summary>
    internal static void Check(BoardRequest board, SawRequest? saw, string path, Action<string, string> report)
    {
        if (board is { Width: { } width, Height: { } height }
            && (board.EdgeTrim ?? saw?.EdgeTrim) is { } trim
            && trim > Length.Zero && trim <= WireLimits.Side
            && trim * 2 >= Length.Min(width, height))
        {
            report(
                board.EdgeTrim is null ? "Saw.EdgeTrim" : $"{path}.EdgeTrim",
                $"Lost at both edges, this leaves nothing of board \"{board.Id}\".");
        }
    }
}
