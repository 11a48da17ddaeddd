using System.Globalization;
using PanelService.Drawing.Drafting;
using PanelService.Planning.Plans;
using PanelService.Planning.Yields;

namespace PanelService.Drawing;

/// <summary>
/// A sheet cut into as many panels of one size as come out of it, as SVG, in the manner of <see cref="SheetDrawing"/>;
/// the title strip says how many, and what the areas alone would promise.
/// </summary>
public static class YieldDrawing
{
    /// <summary>Draws the answer for one board.</summary>
    /// <param name="yield">The answers.</param>
    /// <param name="board">The one to draw.</param>
    /// <returns>An SVG document, the same for the same answer.</returns>
    /// <exception cref="ArgumentException">Nothing comes out of the board: there is no sheet to draw.</exception>
    public static string Render(Yield yield, BoardYield board)
    {
        ArgumentNullException.ThrowIfNull(yield);
        ArgumentNullException.ThrowIfNull(board);
        SheetLayout sheet = board.Sheet ?? throw new ArgumentException("Nothing comes out of this board.", nameof(board));
        Draft draft = SheetDraft.Of(yield.Drawn, sheet);
        string size = Wording.Size(yield.Drawn.Order.Panels[0].Width, yield.Drawn.Order.Panels[0].Height, draft.Unit);
        string name = string.Create(CultureInfo.InvariantCulture, $"{board.Count} out of one sheet");
        string area = string.Create(CultureInfo.InvariantCulture, $"by area alone {board.ByArea:0.#}");
        return Drafter.Render(draft with
        {
            Sort = "yield",
            Batch = size,
            Name = name,
            Copies = area,
            Description = $"{name}, {area}. {draft.Description}",
        });
    }
}
