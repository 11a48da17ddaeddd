using System.Xml.Linq;

namespace PanelService.Drawing.Drafting;

/// <summary>Leader lines from pieces too small for text to their marks and sizes, one below the other in the right margin.</summary>
internal static class Leaders
{
    private const double Size = 2.2;
    private const double Row = 2.9;

    public static XElement Draw(Sketch sketch)
    {
        XElement leaders = Ink.Group("leaders");
        double next = sketch.Fit.Margin.Y;
        foreach (DraftPiece piece in sketch.Unmarked.OrderBy(piece => piece.Box.CentreY).ThenByDescending(piece => piece.Box.CentreX))
        {
            double y = Math.Max(next, piece.Box.CentreY);
            if (y > sketch.Fit.Margin.Bottom)
            {
                sketch.Left++;
                continue;
            }

            leaders.Add(Draw(sketch, piece, y));
            next = y + sketch.Paper(Row);
        }

        return leaders;
    }

    private static XElement Draw(Sketch sketch, DraftPiece piece, double y)
    {
        double letters = sketch.Paper(Size);
        double knee = sketch.Fit.Margin.X + sketch.Paper(5);
        double room = sketch.Fit.Margin.Width - sketch.Paper(9);
        string text = Lettering.Fit(
            $"{piece.Mark}  {Wording.Size(piece.Width, piece.Height, sketch.Draft.Unit)}", letters, room);
        double half = Lettering.Width(text) * letters / 2;
        var label = new Label(text, knee + sketch.Paper(2) + half, y, letters);
        sketch.Labels.Take(label.Box);
        string path = Ink.Line(piece.Box.CentreX, piece.Box.CentreY, knee, y)
            + Ink.Line(knee, y, knee + sketch.Paper(1.5), y);
        double dot = sketch.Paper(0.4);
        return Ink.Group(
            "leader",
            Ink.Path(path, Ink.Stroke(Ink.Black), Ink.Weight(sketch.Paper(0.13)), Ink.Fill("none")),
            Ink.Rectangle(Box.Centred(piece.Box.CentreX, piece.Box.CentreY, dot * 2, dot * 2), new XAttribute("rx", Ink.Number(dot))),
            label.Draw());
    }
}
