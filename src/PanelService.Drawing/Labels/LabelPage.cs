using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Xml.Linq;
using PanelService.Drawing.Drafting;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Labels;

/// <summary>A page of labels, two columns by six rows in the middle of the paper, with marks to cut along.</summary>
internal static class LabelPage
{
    public const int Columns = 2;
    public const int Rows = 6;

    private const double TickGap = 2;
    private const double TickLength = 5;
    private const double CrossArm = 1.5;

    public static int Count(ImmutableArray<LabelRun> runs) =>
        (int)Math.Max(1, (runs.Sum(run => run.Count) + (Columns * Rows) - 1) / (Columns * Rows));

    public static string Render(Plan plan, LabelPaper paper, int page, ImmutableArray<LabelRun> runs)
    {
        (double width, double height) = paper == LabelPaper.A4 ? (210, 297) : (215.9, 279.4);
        var grid = Box.Centred(width / 2, height / 2, Columns * LabelFace.Width, Rows * LabelFace.Height);
        string batch = Lettering.Clean(plan.Order.Title);
        string heading = string.Create(CultureInfo.InvariantCulture, $"Labels, page {page} of {Count(runs)}");
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
            Marks(grid),
            runs.IsEmpty ? [LabelFace.Nothing(grid)] : Faces(grid, batch, page, runs)).ToString(SaveOptions.DisableFormatting);
    }

    private static XElement[] Faces(Box grid, string batch, int page, ImmutableArray<LabelRun> runs) =>
    [
        .. Slice(runs, (page - 1L) * Columns * Rows).Select((label, place) => LabelFace.Draw(
            new Box(
                grid.X + (place % Columns * LabelFace.Width),
                grid.Y + (place / Columns * LabelFace.Height),
                LabelFace.Width,
                LabelFace.Height),
            label.Run,
            label.Number,
            batch)),
    ];

    // Runs may be a hundred thousand long: those before the page are stepped over, not counted out.
    private static IEnumerable<(LabelRun Run, long Number)> Slice(ImmutableArray<LabelRun> runs, long skip)
    {
        int room = Columns * Rows;
        foreach (LabelRun run in runs)
        {
            for (long at = Math.Min(skip, run.Count); at < run.Count && room > 0; at++, room--)
            {
                yield return (run, run.First + at);
            }

            skip = Math.Max(0, skip - run.Count);
        }
    }

    private static XElement Marks(Box grid)
    {
        var path = new StringBuilder();
        double[] across = [.. Enumerable.Range(0, Columns + 1).Select(n => grid.X + (n * LabelFace.Width))];
        double[] down = [.. Enumerable.Range(0, Rows + 1).Select(n => grid.Y + (n * LabelFace.Height))];
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
