using System.Xml.Linq;
using PanelService.Planning.Measures;

namespace PanelService.Drawing.Drafting;

/// <summary>The pieces: outline, the panel under a piece of cloth as a dashed line, labels beside it.</summary>
internal static class Pieces
{
    public static XElement Draw(Sketch sketch)
    {
        XElement pieces = Ink.Group(
            "pieces", Ink.Fill(Ink.White), Ink.Stroke(Ink.Black), Ink.Weight(sketch.Paper(0.2)));
        foreach (DraftPiece piece in sketch.Draft.Pieces)
        {
            pieces.Add(Draw(sketch, piece));
        }

        return pieces;
    }

    private static XElement Draw(Sketch sketch, DraftPiece piece)
    {
        string size = Wording.Size(piece.Width, piece.Height, sketch.Draft.Unit);
        string turned = piece.Turned ? ", turned" : "";
        XElement group = Ink.Group(
            "piece",
            new XAttribute("data-mark", Lettering.Clean(piece.Mark)),
            Ink.Title($"{piece.Mark}: {size} {LengthText.Abbreviation(sketch.Draft.Unit)}{turned}"),
            Ink.Rectangle(piece.Box));
        if (piece.Panel is { } panel)
        {
            double dash = sketch.Paper(1);
            group.Add(Ink.Rectangle(
                panel,
                new XAttribute("class", "panel"),
                Ink.Fill("none"),
                Ink.Stroke(Ink.Grey),
                Ink.Weight(sketch.Paper(0.13)),
                new XAttribute("stroke-dasharray", $"{Ink.Number(dash)} {Ink.Number(dash * 0.7)}")));
        }

        PieceLabels.Draw(sketch, piece);
        return group;
    }
}
