using System.Globalization;
using System.Xml.Linq;

namespace PanelService.Drawing.Drafting;

/// <summary>Below the drawing: what each mark is, how the two hatchings read, and what could not be written.</summary>
internal static class Key
{
    private const int MostRows = 26;
    private const double Size = 2.5;
    private const double Row = 3.7;
    private const double Column = 56;

    // In line with the text of the title strip.
    private const double Indent = 2.4;

    /// <summary>Height on paper for a width of paper.</summary>
    public static double Height(Draft draft, double width) => (Math.Min(Rows(draft, width), MostRows) * Row) + 3;

    public static XElement Draw(Sketch sketch)
    {
        Draft draft = sketch.Draft;
        double width = sketch.Fit.Key.Width / sketch.Fit.Scale;
        int columns = Columns(width);
        int rows = Math.Min(Rows(draft, width), MostRows);
        int room = (columns * rows) - 1;
        XElement key = Ink.Group("key");
        List<DraftKey> shown = [.. draft.Keys.Take(room)];
        for (int i = 0; i < shown.Count; i++)
        {
            key.Add(Entry(sketch, shown[i], i / rows, i % rows, width / columns));
        }

        key.Add(Closing(sketch, (columns * rows) - 1, rows, width / columns, draft.Keys.Length - shown.Count));
        return key;
    }

    private static int Columns(double width) => Math.Max(1, (int)(width / Column));

    // One entry is kept for the hatchings.
    private static int Rows(Draft draft, double width) => (draft.Keys.Length + Columns(width)) / Columns(width);

    private static XElement Entry(Sketch sketch, DraftKey entry, int column, int row, double columnWidth)
    {
        double size = sketch.Paper(Size);
        double x = sketch.Fit.Key.X + sketch.Paper((column * columnWidth) + Indent);
        double y = Line(sketch, row);
        double longest = sketch.Draft.Keys.Max(key => Lettering.Width(key.Mark));
        double mark = Math.Max(sketch.Paper(7), (longest + 1) * size);
        double room = sketch.Paper(columnWidth - Indent - 1);
        string name = Lettering.Fit(entry.Mark, size, room * 0.5);
        mark = Math.Min(mark, room * 0.6);
        return Ink.Group(
            "entry",
            Text(name, x, y, size, new XAttribute("font-weight", "bold")),
            Text(Lettering.Fit(entry.Text, size, room - mark), x + mark, y, size));
    }

    private static XElement Closing(Sketch sketch, int at, int rows, double columnWidth, int missing)
    {
        double size = sketch.Paper(Size);
        double x = sketch.Fit.Key.X + sketch.Paper((at / rows * columnWidth) + Indent);
        double y = Line(sketch, at % rows);
        XElement closing = Ink.Group("hatchings", Ink.Fill(Ink.Black));
        string text = Note(sketch, missing);
        if (text.Length > 0)
        {
            closing.Add(Text(Lettering.Fit(text, size, sketch.Paper(columnWidth - Indent - 1)), x, y, size));
            return closing;
        }

        foreach ((string word, double gap) in Swatches(sketch.Draft))
        {
            var box = new Box(x, y - (size * 0.8), sketch.Paper(6), size);
            closing.Add(
                Ink.Rectangle(box, Ink.Fill(Ink.White), Ink.Stroke(Ink.Black), Ink.Weight(sketch.Paper(0.15))),
                Ink.Path(Hatching.Lines(box, sketch.Paper(gap)), Ink.Stroke(Ink.Black), Ink.Weight(sketch.Paper(0.12))),
                Text(word, x + sketch.Paper(7.5), y, size));
            x += sketch.Paper(8) + ((Lettering.Width(word) + 1.5) * size);
        }

        if (sketch.Draft.Cuts.Any(cut => cut.BySupplier))
        {
            double middle = y - (size * 0.3);
            closing.Add(
                Ink.Path(
                    Ink.Line(x, middle, x + sketch.Paper(6), middle), Ink.Fill("none"), Ink.Stroke(Ink.Accent), Ink.Weight(sketch.Paper(0.9)), new XAttribute("stroke-dasharray", $"{Ink.Fine(sketch.Paper(2.4))} {Ink.Fine(sketch.Paper(1.2))}")),
                Text("supplier", x + sketch.Paper(7.5), y, size));
        }

        return closing;
    }

    private static IEnumerable<(string Word, double Gap)> Swatches(Draft draft)
    {
        if (draft.Offcuts.Any(offcut => offcut.Kept))
        {
            yield return ("keep", Offcuts.KeptGap);
        }

        if (draft.Offcuts.Any(offcut => !offcut.Kept))
        {
            yield return ("waste", Offcuts.WasteGap);
        }
    }

    private static string Note(Sketch sketch, int missing)
    {
        if (missing > 0)
        {
            return string.Create(CultureInfo.InvariantCulture, $"and {missing} more marks: see the plan");
        }

        return sketch.Left > 0
            ? string.Create(CultureInfo.InvariantCulture, $"{sketch.Left} numbers too close to print: see the plan")
            : "";
    }

    private static double Line(Sketch sketch, int row) => sketch.Fit.Key.Y + sketch.Paper((row + 1) * Row);

    private static XElement Text(string text, double x, double y, double size, params XAttribute[] attributes) => new(
        Ink.Svg + "text",
        new XAttribute("x", Ink.Fine(x)),
        new XAttribute("y", Ink.Fine(y)),
        new XAttribute("font-size", Ink.Fine(size)),
        new XAttribute("text-anchor", "start"),
        attributes,
        text);
}
