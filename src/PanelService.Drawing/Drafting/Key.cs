using System.Globalization;
using System.Xml.Linq;

namespace PanelService.Drawing.Drafting;

/// <summary>Below the drawing: what each mark is, how the two hatchings read, and what could not be written.</summary>
internal static class Key
{
    private const double Size = KeyLayout.Size;
    private const double Row = 3.7;

    /// <summary>Height on paper for a width of paper.</summary>
    public static double Height(Draft draft, double width) => (new KeyLayout(draft.Keys, width).Rows * Row) + 3;

    public static XElement Draw(Sketch sketch)
    {
        Draft draft = sketch.Draft;
        var layout = new KeyLayout(draft.Keys, sketch.Fit.Key.Width / sketch.Fit.Scale);
        XElement key = Ink.Group("key");
        int shown = 0;
        foreach (var (entry, column, row) in layout.Placed())
        {
            key.Add(Entry(sketch, entry, sketch.Fit.Key.X + sketch.Paper((column * layout.ColumnWidth) + KeyLayout.Indent), row));
            shown++;
        }

        key.Add(Closing(sketch, layout, draft.Keys.Length - shown));
        return key;
    }

    private static XElement Entry(Sketch sketch, KeyEntry entry, double x, int row)
    {
        double size = sketch.Paper(Size);
        XElement group = Ink.Group("entry", Text(entry.Mark, x, Line(sketch, row), size, new XAttribute("font-weight", "bold")));
        row += entry.IsBeside ? 0 : 1;
        group.Add(entry.Lines.Select((line, i) => Text(line, x + sketch.Paper(entry.Offset), Line(sketch, row + i), size)));
        return group;
    }

    /// <summary>The last line of the last column.</summary>
    private static XElement Closing(Sketch sketch, KeyLayout layout, int missing)
    {
        double size = sketch.Paper(Size);
        double x = sketch.Fit.Key.X + sketch.Paper(((layout.Columns - 1) * layout.ColumnWidth) + KeyLayout.Indent);
        double y = Line(sketch, layout.Rows - 1);
        XElement closing = Ink.Group("hatchings", Ink.Fill(Ink.Black));
        string text = Note(sketch, missing);
        if (text.Length > 0)
        {
            closing.Add(Text(Lettering.Fit(text, size, sketch.Paper(layout.ColumnWidth - KeyLayout.Indent - 1)), x, y, size));
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
            return string.Create(CultureInfo.InvariantCulture, $"and {missing} more marks");
        }

        return sketch.Left > 0
            ? string.Create(CultureInfo.InvariantCulture, $"{sketch.Left} labels find no room")
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
