using PanelService.Drawing.Drafting;
using PanelService.Planning.Plans;

namespace PanelService.Drawing;

/// <summary>
/// A length, roll or remnant of cloth of a plan as SVG, in the manner of <see cref="SheetDrawing"/>: pieces with
/// their margins, the panel under each as a dashed line, selvedges dotted. The roll runs down the page.
/// </summary>
public static class ClothDrawing
{
    /// <summary>Draws a cloth.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="clothNumber">The cloth's number in it.</param>
    /// <returns>An SVG document, the same for the same plan.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The plan has no cloth of that number.</exception>
    public static string Render(Plan plan, int clothNumber)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ClothLayout cloth = plan.Cloth.FirstOrDefault(cloth => cloth.Number == clothNumber)
            ?? throw new ArgumentOutOfRangeException(nameof(clothNumber), clothNumber, "The plan has no such cloth.");
        return Drafter.Render(ClothDraft.Of(plan, cloth));
    }
}
