using PanelService.Drawing.Slips;
using PanelService.Planning.Plans;

namespace PanelService.Drawing;

/// <summary>
/// The slip to pin up beside the saw, as SVG pages in millimetres of paper: one entry per setting with the distance in
/// large type, what goes through and what comes out, a box to tick, small pictures of the sheets with the cuts of that
/// setting in the accent colour. No script, no style sheet, no ids.
/// </summary>
public static class SawSlipDrawing
{
    /// <summary>How many pages the slip fills; 1 where nothing is sawn: it then says so.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="language">The language it is written in.</param>
    public static int Pages(Plan plan, SlipLanguage language = SlipLanguage.English)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return SlipPages.Of(plan, SlipWords.Of(language)).Count;
    }

    /// <summary>Draws a page.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="paper">What it is printed on.</param>
    /// <param name="page">1 to <see cref="Pages"/>.</param>
    /// <param name="language">The language it is written in.</param>
    /// <returns>An SVG document, the same for the same plan.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no page of that number.</exception>
    public static string Render(Plan plan, LabelPaper paper, int page, SlipLanguage language = SlipLanguage.English)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var words = SlipWords.Of(language);
        var pages = SlipPages.Of(plan, words);
        ArgumentOutOfRangeException.ThrowIfLessThan(page, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(page, pages.Count);
        return SlipPage.Render(plan, (paper, words), (page, pages.Count), pages[page - 1]);
    }
}
