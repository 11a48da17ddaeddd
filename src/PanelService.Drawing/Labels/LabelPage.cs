using System.Collections.Immutable;
using System.Text;
using System.Xml.Linq;
using PanelService.Drawing.Drafting;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Labels;

/// <summary>A page of labels; plain paper has marks to cut along. Lives for one page.</summary>
internal sealed class LabelPage(Plan plan, LabelSheet sheet, string date, LabelWords words)
{
    private const double TickGap = 2;
    private const double TickLength = 5;
    private const double CrossArm = 1.5;

    public static int Count(ImmutableArray<LabelRun> runs, LabelSheet sheet) =>
        (int)Math.Max(1, (runs.Sum(run => run.Count) + sheet.Count - 1) / sheet.Count);

    public string Render(int page, ImmutableArray<LabelRun> runs)
    {
        (double width, double height) = sheet.PaperSize;
        var grid = new Box(sheet.Left, sheet.Top, (sheet.Columns * (sheet.Width + sheet.GapAcross)) - sheet.GapAcross, sheet.Rows * sheet.Height);
        string batch = Lettering.Clean(plan.Order.Title);
        string heading = words.Page(page, Count(runs, sheet));
        return new XElement(
            Ink.Svg + "svg",
            new XAttribute("viewBox", $"0 0 {Ink.Number(width)} {Ink.Number(height)}"),
            new XAttribute("width", Ink.Number(width) + "mm"),
            new XAttribute("height", Ink.Number(height) + "mm"),
            new XAttribute("class", "drawing labels"),
            new XAttribute("role", "img"),
            new XAttribute("font-family", Lettering.Family),
            Ink.Fill(Ink.Black),
            Ink.Title(batch.Length == 0 ? heading : $"{batch}: {heading}"),
            Ink.Rectangle(new Box(0, 0, width, height), Ink.Fill(Ink.White), new XAttribute("class", "paper")),
            sheet.IsPlain ? [Marks(grid)] : Array.Empty<XElement>(),
            runs.IsEmpty ? [LabelFace.Nothing(grid, words)] : Faces(batch, page, runs)).ToString(SaveOptions.DisableFormatting);
    }

    private XElement[] Faces(string batch, int page, ImmutableArray<LabelRun> runs) =>
    [
        .. Slice(runs, (page - 1L) * sheet.Count).Select((label, place) => LabelFace.Draw(
            new Box(
                sheet.Left + (place % sheet.Columns * (sheet.Width + sheet.GapAcross)),
                sheet.Top + (place / sheet.Columns * sheet.Height),
                sheet.Width,
                sheet.Height),
            label.Run,
            label.Number,
            (batch, date),
            words)),
    ];

    // Runs may be a hundred thousand long: those before the page are stepped over, not counted out.
    private IEnumerable<(LabelRun Run, long Number)> Slice(ImmutableArray<LabelRun> runs, long skip)
    {
        int room = sheet.Count;
        foreach (LabelRun run in runs)
        {
            for (long at = Math.Min(skip, run.Count); at < run.Count && room > 0; at++, room--)
            {
                yield return (run, run.First + at);
            }

            skip = Math.Max(0, skip - run.Count);
        }
    }

    private XElement Marks(Box grid)
    {
        var path = new StringBuilder();
        double[] across = [.. Enumerable.Range(0, sheet.Columns + 1).Select(n => grid.X + (n * sheet.Width))];
        double[] down = [.. Enumerable.Range(0, sheet.Rows + 1).Select(n => grid.Y + (n * sheet.Height))];
        foreach (double x in across)
        {
            path.Append(Ink.Line(x, grid.Y - TickGap - TickLength, x, grid.Y - TickGap));
            path.Append(Ink.Line(x, grid.Bottom + TickGap, x, grid.Bottom + TickGap + TickLength));
        }

        foreach (double y in down)
        {
            path.Append(Ink.Line(grid.X - TickGap - TickLength, y, grid.X - TickGap, y));
            path.Append(Ink.Line(grid.Right + TickGap, y, grid.Right + TickGap + TickLength, y));
        }

        foreach ((double x, double y) in across[1..^1].SelectMany(x => down[1..^1].Select(y => (x, y))))
        {
            path.Append(Ink.Line(x - CrossArm, y, x + CrossArm, y)).Append(Ink.Line(x, y - CrossArm, x, y + CrossArm));
        }

        return Ink.Path(path.ToString(), new XAttribute("class", "cut-marks"), Ink.Fill("none"), Ink.Stroke(Ink.Grey), Ink.Weight(0.15));
    }
}
