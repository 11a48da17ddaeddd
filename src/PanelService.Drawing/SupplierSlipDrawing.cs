using System.Globalization;
using System.Xml.Linq;
using PanelService.Drawing.Drafting;
using PanelService.Drawing.Slips;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Drawing;

/// <summary>
/// The slip for the supplier's counter, as SVG pages in millimetres of paper: sheet by sheet the cuts that make it fit car
/// and hands, in order, with the distance and the edge it is measured from, boxes to tick, and a picture with every part's size.
/// No script, no style sheet, no ids.
/// </summary>
public static class SupplierSlipDrawing
{
    /// <summary>How many pages the slip fills; 1 where nothing is cut at the supplier's: it then says so.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="language">The language it is written in.</param>
    public static int Pages(Plan plan, SlipLanguage language)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return SlipPages.Shared(SupplierEntry.Of(plan, SlipWords.Of(language)), entry => entry.Height).Count;
    }

    /// <summary>Draws a page.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="paper">What it is printed on.</param>
    /// <param name="page">1 to <see cref="Pages"/>.</param>
    /// <param name="language">The language it is written in.</param>
    /// <returns>An SVG document, the same for the same plan.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no page of that number.</exception>
    public static string Render(Plan plan, LabelPaper paper, int page, SlipLanguage language)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var words = SlipWords.Of(language);
        var pages = SlipPages.Shared(SupplierEntry.Of(plan, words), entry => entry.Height);
        ArgumentOutOfRangeException.ThrowIfLessThan(page, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(page, pages.Count);
        string batch = Lettering.Clean(plan.Order.Title);
        bool nothing = pages[0].IsEmpty;
        var drawn = new List<XElement>();
        double top = SlipPages.Top;
        foreach (var entry in pages[page - 1])
        {
            drawn.Add(Entry(plan, entry, (SlipSheet.LeftOn(paper), top), words));
            top += entry.Height;
        }

        return SlipSheet.Render(
            "supplier-slip",
            paper,
            (batch.Length == 0 ? words.SupplierTitle : $"{words.SupplierTitle}{words.Colon}{batch}", words.Page(words.SupplierSlip, page, pages.Count), nothing ? words.SupplierNothing : words.SupplierLead, nothing ? "" : words.SupplierFoot),
            drawn);
    }

    private static XElement Entry(Plan plan, SupplierEntry entry, (double Left, double Top) at, SlipWords words)
    {
        var (left, top) = at;
        var (sheet, unit) = (entry.Sheet, plan.Order.Units);
        double room = SlipSheet.Width - SupplierEntry.PictureWidth - 2;
        string name = $"{words.Sheets(sheet.Copies)}{words.Colon}{sheet.Board.Name ?? sheet.Board.Id}, {words.Size((sheet.Board.Width, sheet.Board.Height), unit)} {LengthText.Abbreviation(unit)}";
        var group = Ink.Group(
            "supplier-sheet",
            new XAttribute("data-sheet", sheet.Number.ToString(CultureInfo.InvariantCulture)),
            SlipSheet.Rule(left, top - 1),
            SlipSheet.Text(name, left, top + 6, 5, room, SlipSheet.Bold));
        double y = top + SupplierEntry.HeadHeight + 3;
        foreach (var line in entry.Cuts)
        {
            group.Add(line.IsFirst ? SlipSheet.Tick(left, y - 3, 3.4) : null, SlipSheet.Text(line.Text, left + 6, y, SlipText.LineSize + 0.6, room - 6));
            y += SupplierEntry.LineHeight;
        }

        foreach (string line in entry.Parts)
        {
            group.Add(SlipSheet.Text(line, left, y + 2, SlipText.LineSize, room));
            y += SupplierEntry.LineHeight;
        }

        var picture = new Box(left + SlipSheet.Width - SupplierEntry.PictureWidth, top + 2, SupplierEntry.PictureWidth, SupplierEntry.PictureHeight);
        group.Add(SupplierPicture.Draw(sheet, (unit, words), picture));
        return group;
    }
}
