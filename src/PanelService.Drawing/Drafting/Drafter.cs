using System.Xml.Linq;

namespace PanelService.Drawing.Drafting;

/// <summary>
/// Draws a <see cref="Draft"/>. Order matters: what lies lowest comes first, and texts take their places by
/// importance (cut numbers, which have little choice; pieces; leaders; the words in leftovers).
/// </summary>
internal static class Drafter
{
    public static string Render(Draft draft)
    {
        Sketch sketch = Try(draft, PaperFit.NarrowRight, out XElement[] body);
        if (sketch.Unmarked.Count > 0 && Folding.Of(draft) is { } folded)
        {
            draft = folded;
            sketch = Try(draft, PaperFit.NarrowRight, out body);
        }

        if (sketch.Unmarked.Count > 0)
        {
            sketch = Try(draft, PaperFit.LeaderRight, out body);
        }

        return Root(sketch, [.. body, .. Lettered(sketch), Leaders.Draw(sketch), Offcuts.Words(sketch), Key.Draw(sketch), TitleStrip.Draw(sketch)])
            .ToString(SaveOptions.DisableFormatting);
    }

    private static Sketch Try(Draft draft, double right, out XElement[] body)
    {
        var sketch = new Sketch(draft, PaperFit.For(draft.Outline, right, width => Key.Height(draft, width)));
        XElement frame = Frame.Draw(sketch);
        XElement cuts = CutNumbers.Draw(sketch);
        XElement pieces = Pieces.Draw(sketch);
        body = [Offcuts.Hatch(sketch), pieces, Frame.Bands(sketch), Dimensions(sketch), frame, cuts];
        return sketch;
    }

    private static XElement Dimensions(Sketch sketch) => Ink.Path(
        sketch.Dimensions.ToString(),
        new XAttribute("class", "dimensions"),
        Ink.Fill("none"),
        Ink.Stroke(Ink.Grey),
        Ink.Weight(sketch.Paper(0.13)));

    private static IEnumerable<XElement> Lettered(Sketch sketch)
    {
        yield return Ink.Group("letters", sketch.Letters);
        yield return Ink.Group("marks", new XAttribute("font-weight", "bold"), sketch.Marks);
    }

    private static XElement Root(Sketch sketch, XElement[] content)
    {
        Box page = sketch.Fit.Page;
        double scale = sketch.Fit.Scale;
        return new XElement(
            Ink.Svg + "svg",
            new XAttribute("viewBox", string.Join(' ', new[] { page.X, page.Y, page.Width, page.Height }.Select(Ink.Number))),
            new XAttribute("width", Ink.Number(page.Width / scale) + "mm"),
            new XAttribute("height", Ink.Number(page.Height / scale) + "mm"),
            new XAttribute("class", "drawing " + sketch.Draft.Sort),
            new XAttribute("role", "img"),
            new XAttribute("font-family", Lettering.Family),
            new XAttribute("text-anchor", "middle"),
            Ink.Fill(Ink.Black),
            Ink.Title(Heading(sketch.Draft)),
            new XElement(Ink.Svg + "desc", Lettering.Clean(sketch.Draft.Description)),
            Ink.Rectangle(page, Ink.Fill(Ink.White), new XAttribute("class", "paper")),
            content);
    }

    private static string Heading(Draft draft) =>
        draft.Batch.Length == 0 ? draft.Name : $"{draft.Batch}: {draft.Name}";
}
