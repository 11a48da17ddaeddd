using System.Xml.Linq;
using PanelService.Planning.Measures;

namespace PanelService.Drawing.Drafting;

/// <summary>Leftovers: hatched wide and named "keep" with their size where they go back on the rack, hatched narrow where they are waste.</summary>
internal static class Offcuts
{
    public const double KeptGap = 3.4;
    public const double WasteGap = 1.3;

    private static readonly double[] Sizes = [2.8, 2.3, 1.9];

    public static XElement Hatch(Sketch sketch)
    {
        XElement hatches = Ink.Group("offcuts", Ink.Stroke(Ink.Black), Ink.Fill(Ink.White));
        foreach (DraftOffcut offcut in sketch.Draft.Offcuts)
        {
            hatches.Add(Hatch(sketch, offcut));
        }

        return hatches;
    }

    /// <summary>The words, on white: drawn after all else, in what room is left.</summary>
    public static XElement Words(Sketch sketch)
    {
        XElement words = Ink.Group("words");
        foreach (DraftOffcut offcut in sketch.Draft.Offcuts.Where(offcut => offcut.Named))
        {
            words.Add(Words(sketch, offcut));
        }

        return words;
    }

    private static XElement Hatch(Sketch sketch, DraftOffcut offcut)
    {
        double gap = sketch.Paper(offcut.Kept ? KeptGap : WasteGap);
        string size = Wording.Size(offcut.Width, offcut.Height, sketch.Draft.Unit);
        return Ink.Group(
            offcut.Kept ? "offcut kept" : "offcut waste",
            Ink.Title($"{Word(offcut)}: {size} {LengthText.Abbreviation(sketch.Draft.Unit)}"),
            Ink.Rectangle(offcut.Box, Ink.Weight(sketch.Paper(offcut.Kept ? 0.3 : 0.12))),
            Ink.Path(Hatching.Lines(offcut.Box, gap), Ink.Weight(sketch.Paper(0.12))));
    }

    private static string Word(DraftOffcut offcut) => offcut.Kept ? "keep" : "waste";

    private static IEnumerable<XElement> Words(Sketch sketch, DraftOffcut offcut)
    {
        string size = Wording.Size(offcut.Width, offcut.Height, sketch.Draft.Unit);
        string[] texts = offcut.Kept ? [$"keep {size}", "keep"] : ["waste"];
        foreach (string text in texts)
        {
            if (Place(sketch, offcut, text) is { } label)
            {
                return [Ink.Rectangle(label.Box, Ink.Fill(Ink.White), new XAttribute("class", "patch")), label.Draw()];
            }
        }

        return [];
    }

    private static Label? Place(Sketch sketch, DraftOffcut offcut, string text)
    {
        Box free = offcut.Box.Shrink(sketch.Paper(0.2));
        foreach (double size in Sizes)
        {
            foreach (bool upright in (bool[])[offcut.Box.Height > offcut.Box.Width * 1.5, offcut.Box.Height <= offcut.Box.Width * 1.5])
            {
                var label = new Label(text, offcut.Box.CentreX, offcut.Box.CentreY, sketch.Paper(size), upright);
                if (free.Holds(label.Box) && sketch.Labels.TryTake(label.Box))
                {
                    return label;
                }
            }
        }

        return null;
    }
}
