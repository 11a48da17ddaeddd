using PanelService.Drawing.Labels;
using PanelService.Planning.Plans;

namespace PanelService.Drawing;

/// <summary>
/// Labels for the backs of the panels a plan cuts and for the board offcuts it keeps, as SVG pages in millimetres of
/// paper: print at full size, cut along the marks. Twelve to a page on either paper. Cloth without a board has no back
/// and gets none. No script, no style sheet, no ids.
/// </summary>
public static class LabelDrawing
{
    /// <summary>How many pages the labels fill; 1 where there is nothing to label: it then says so.</summary>
    /// <param name="plan">The plan.</param>
    public static int Pages(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return LabelPage.Count(LabelRuns.Of(plan));
    }

    /// <summary>Draws a page.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="paper">What it is printed on.</param>
    /// <param name="page">1 to <see cref="Pages"/>.</param>
    /// <returns>An SVG document, the same for the same plan.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no page of that number.</exception>
    public static string Render(Plan plan, LabelPaper paper, int page)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var runs = LabelRuns.Of(plan);
        ArgumentOutOfRangeException.ThrowIfLessThan(page, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(page, LabelPage.Count(runs));
        return LabelPage.Render(plan, paper, page, runs);
    }
}
