using PanelService.Drawing.Curves;
using PanelService.Planning.Curves;

namespace PanelService.Drawing;

/// <summary>
/// A batch curve as SVG, 186 mm wide: what a panel costs beside the shop's price, from where on making is cheaper, what
/// the shop trip costs, and how many of each good are bought at each number of times. In the manner of
/// <see cref="SheetDrawing"/>: black on white with one accent, no script, no style sheet, no ids.
/// </summary>
public static class CurveDrawing
{
    /// <summary>Draws a curve.</summary>
    /// <param name="curve">The curve.</param>
    /// <returns>An SVG document, the same for the same curve.</returns>
    /// <exception cref="ArgumentException">It has no point.</exception>
    public static string Render(BatchCurve curve)
    {
        ArgumentNullException.ThrowIfNull(curve);
        return curve.Points.IsEmpty
            ? throw new ArgumentException("A curve of no points cannot be drawn.", nameof(curve))
            : CurveSheet.Render(curve);
    }
}
