using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;
using PanelService.Drawing.Drafting;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Slips;

/// <summary>A page of the slip.</summary>
internal static class SlipPage
{
    private const double Left = 12;
    private const double Width = 190;
    private const double HeadSize = 8;
    private const double LineSize = 3;
    private const double PictureWidth = 15;
    private const int Pictures = 3;
    private const string Foot = "Cautions, not instructions: the saw's manual, local rules and an experienced person come first.";

    public static string Render(Plan plan, LabelPaper paper, (int Number, int Of) page, ImmutableArray<SlipEntry> entries)
    {
        (double width, double height) = paper == LabelPaper.A4 ? (210, 297) : (215.9, 279.4);
        double left = Left + ((width - 210) / 2);
        string batch = Lettering.Clean(plan.Order.Title);
        string heading = string.Create(CultureInfo.InvariantCulture, $"Saw run, page {page.Number} of {page.Of}");
        return new XElement(
            Ink.Svg + "svg",
            new XAttribute("viewBox", $"0 0 {Ink.Number(width)} {Ink.Number(height)}"),
            new XAttribute("width", Ink.Number(width) + "mm"),
            new XAttribute("height", Ink.Number(height) + "mm"),
            new XAttribute("class", "drawing saw-slip"),
            new XAttribute("role", "img"),
            new XAttribute("font-family", Lettering.Family),
            Ink.Fill(Ink.Black),
            Ink.Title(batch.Length == 0 ? heading : $"{batch}: {heading}"),
            Ink.Rectangle(new Box(0, 0, width, height), Ink.Fill(Ink.White), new XAttribute("class", "paper")),
            Text(batch.Length == 0 ? "Saw run" : batch, left, 17, 6, Width - 60, Bold),
            Text(heading, left + Width, 17, LineSize, 60, ("text-anchor", "end")),
            Text(Summary(plan), left, 23.5, LineSize, Width),
            Entries(plan, entries, left),
            Text(Foot, left, height - 9, SlipText.CautionSize, Width)).ToString(SaveOptions.DisableFormatting);
    }

    private static readonly (string, string) Bold = ("font-weight", "bold");

    private static string Summary(Plan plan) => plan.SawRun.IsEmpty
        ? "Nothing is sawn."
        : string.Create(
            CultureInfo.InvariantCulture,
            $"{plan.SawProof.Settings} settings in {plan.SawProof.Steps} steps. {(plan.SawProof.Proven ? "No order of these cuts takes fewer settings." : $"At least {plan.SawProof.LeastPossible} are needed.")}");

    private static List<XElement> Entries(Plan plan, ImmutableArray<SlipEntry> entries, double left)
    {
        var drawn = new List<XElement>();
        double top = SlipPages.Top;
        foreach (var entry in entries)
        {
            drawn.Add(Entry(plan, entry, left, top));
            top += entry.Height(SlipText.CautionLines(entry).Count);
        }

        return drawn;
    }

    private static XElement Entry(Plan plan, SlipEntry entry, double left, double top)
    {
        double forPictures = (Math.Min(Pictures, entry.Sheets.Length) * (PictureWidth + 1)) + 2;
        var group = Ink.Group(
            "step",
            new XAttribute("data-step", entry.Step.Step),
            Ink.Path(Ink.Line(left, top - 1, left + Width, top - 1), Ink.Fill("none"), Ink.Stroke(Ink.Grey), Ink.Weight(0.2)),
            Ink.Rectangle(new Box(left, top + 1.5, 6, 6), Ink.Fine, Ink.Fill("none"), Ink.Stroke(Ink.Black), Ink.Weight(0.4), new XAttribute("class", "tick")),
            Text(entry.Step.Step.ToString(CultureInfo.InvariantCulture), left + 15, top + 7.5, HeadSize, 8, Bold, ("text-anchor", "end")),
            Text(SlipText.Head(entry, plan.Order.Units), left + 20, top + 7.5, HeadSize, Width - 20 - forPictures, Bold));
        double y = top + SlipEntry.HeadHeight + 2.5;
        foreach (var pass in entry.Passes)
        {
            group.Add(Text(SlipText.Pass(plan, pass), left + 9, y, LineSize, Width - 9 - forPictures));
            y += SlipEntry.LineHeight;
        }

        group.Add(entry.Sheets.Take(Pictures).Select((sheet, i) => SlipPicture.Draw(
            plan.Sheets[sheet - 1],
            [.. entry.Passes.Where(pass => pass.Sheet == sheet).Select(pass => pass.Cut)],
            new Box(left + Width - forPictures + 2 + (i * (PictureWidth + 1)), top + 1, PictureWidth, SlipEntry.PictureHeight - 2))));
        y = Math.Max(y, top + SlipEntry.PictureHeight + 2);
        foreach (string line in SlipText.CautionLines(entry))
        {
            group.Add(Text(line, left + 3, y, SlipText.CautionSize, Width - 3));
            y += 3.4;
        }

        return group;
    }

    private static XElement Text(string text, double x, double y, double size, double room, params (string Name, string Value)[] more) => new(
        Ink.Svg + "text",
        new XAttribute("x", Ink.Fine(x)),
        new XAttribute("y", Ink.Fine(y)),
        new XAttribute("font-size", Ink.Fine(size)),
        more.Select(attribute => new XAttribute(attribute.Name, attribute.Value)),
        Lettering.Fit(Lettering.Clean(text), more.Contains(Bold) ? size * 1.08 : size, room));
}
