using PanelService.Drawing.Drafting;
using PanelService.Planning.Plans;

namespace PanelService.Drawing;

/// <summary>
/// A sheet of a plan as SVG, to be read at the saw: pieces with their sizes, the blade's paths to scale with their
/// numbers, leftovers hatched. Black on white with one accent; the view box counts millimetres of the sheet from its
/// corner, width and height are those on paper (at most 186 × 245 mm). No script, no style sheet, no ids.
/// </summary>
public static class SheetDrawing
{
    /// <summary>Draws a sheet.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="sheetNumber">The sheet's number in it.</param>
    /// <returns>An SVG document, the same for the same plan.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The plan has no sheet of that number.</exception>
    public static string Render(Plan plan, int sheetNumber)
    {
        ArgumentNullException.ThrowIfNull(plan);
        SheetLayout sheet = plan.Sheets.FirstOrDefault(sheet => sheet.Number == sheetNumber)
            ?? throw new ArgumentOutOfRangeException(nameof(sheetNumber), sheetNumber, "The plan has no such sheet.");
        return Drafter.Render(SheetDraft.Of(plan, sheet));
    }
}
