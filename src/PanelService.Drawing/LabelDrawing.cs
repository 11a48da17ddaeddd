using PanelService.Drawing.Labels;
using PanelService.Planning.Plans;

namespace PanelService.Drawing;

/// <summary>
/// Labels for the backs of the panels a plan cuts and for the board offcuts it keeps, as SVG pages in millimetres of
/// paper: print at full size, on plain paper cut along the marks, twelve to a page;
/// or on one of the grids of <see cref="LabelSheet"/>. Cloth without a board has no back
/// and gets none. No script, no style sheet, no ids.
/// </summary>
public static class LabelDrawing
{
    /// <summary>How many pages the labels fill on plain paper; 1 where there is nothing to label: it then says so.</summary>
    /// <param name="plan">The plan.</param>
    public static int Pages(Plan plan) => Pages(plan, LabelSheet.All[0]);

    /// <summary>How many pages the labels fill.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="sheet">How they lie on the paper.</param>
    public static int Pages(Plan plan, LabelSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(sheet);
        return LabelPage.Count(LabelRuns.Of(plan, LabelWords.Of(SlipLanguage.English)), sheet);
    }

    /// <summary>Draws a page of plain paper.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="paper">What it is printed on.</param>
    /// <param name="page">1 to <see cref="Pages(Plan)"/>.</param>
    /// <returns>An SVG document, the same for the same plan.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no page of that number.</exception>
    public static string Render(Plan plan, LabelPaper paper, int page) => Render(plan, LabelSheet.Find(paper, "plain")!, page, date: "");

    /// <summary>Draws a page.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="sheet">How labels lie on the paper.</param>
    /// <param name="page">1 to <see cref="Pages(Plan, LabelSheet)"/>.</param>
    /// <param name="date">What stands as the date; empty: room to write it.</param>
    /// <param name="language">The language of what is not the painter's own words.</param>
    /// <returns>An SVG document, the same for the same plan.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no page of that number.</exception>
    public static string Render(Plan plan, LabelSheet sheet, int page, string date, SlipLanguage language = SlipLanguage.English)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(sheet);
        var words = LabelWords.Of(language);
        var runs = LabelRuns.Of(plan, words);
        ArgumentOutOfRangeException.ThrowIfLessThan(page, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(page, LabelPage.Count(runs, sheet));
        return new LabelPage(plan, sheet, date, words).Render(page, runs);
    }
}
