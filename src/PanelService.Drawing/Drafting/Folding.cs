// Problem: a roll is ten times as long as it is wide; drawn in one piece, none of its pieces has room for its mark.
// Idea:    it is drawn in parts side by side, broken where no piece lies across: of two to six parts of about one length, as many
//          as are drawn largest.
// Cost:    pieces sorted once.
// Not:     the best breaks: each part ends at the break nearest to where parts alike would end.
using System.Collections.Immutable;
using PanelService.Planning.Measures;

namespace PanelService.Drawing.Drafting;

/// <summary>Parts what is too long to be drawn in one piece.</summary>
internal static class Folding
{
    private const int MostParts = 6;

    /// <summary>Room between two parts on paper, in millimetres: a dimension line stands there.</summary>
    private const double Between = 13;

    /// <summary>Less gain than this is not worth the breaks.</summary>
    private const double WorthIt = 0.75;

    /// <summary>Rounding in the ninth digit makes no part and forbids no break.</summary>
    private const double Touch = 1e-6;

    /// <summary>The same in parts; null where that makes it hardly larger.</summary>
    public static Draft? Of(Draft draft)
    {
        if (!draft.MayFold)
        {
            return null;
        }

        double[] breaks = [.. Breaks(draft)];
        double whole = Scale(draft, [draft.Outline.Height]);
        (double[] Ends, double Scale)[] ways = [.. Enumerable.Range(2, MostParts - 1)
            .Select(parts => Ends(draft.Outline.Height, parts, breaks))
            .Select(ends => (ends, Scale(draft, ends)))];
        var (best, scale) = ways.MinBy(way => way.Scale);
        return scale < whole * WorthIt ? Fold(draft, best, Between * scale) : null;
    }

    /// <summary>Where no piece lies across.</summary>
    private static IEnumerable<double> Breaks(Draft draft)
    {
        double covered = 0;
        foreach (DraftPiece piece in draft.Pieces.OrderBy(piece => piece.Box.Y))
        {
            if (piece.Box.Y >= covered - Touch && covered > 0)
            {
                yield return covered;
            }

            covered = Math.Max(covered, piece.Box.Bottom);
        }

        // Behind the last piece any place will do.
        for (double y = covered; y < draft.Outline.Height && y > 0; y += draft.Outline.Width)
        {
            yield return y;
        }
    }

    private static double[] Ends(double length, int parts, double[] breaks) =>
    [
        .. Enumerable.Range(1, parts - 1)
            .Select(part => length * part / parts)
            .Select(wanted => breaks.DefaultIfEmpty(length).MinBy(at => Math.Abs(at - wanted)))
            .Append(length)
            .Distinct()
            .Order(),
    ];

    /// <summary>Millimetres of material in one of paper.</summary>
    private static double Scale(Draft draft, double[] ends)
    {
        double longest = ends.Zip(ends.Prepend(0), (to, from) => to - from).Max();
        double across = PaperFit.MostWidth - PaperFit.Left - PaperFit.NarrowRight - (Between * (ends.Length - 1));
        double down = PaperFit.MostHeight - PaperFit.Above - PaperFit.Below - PaperFit.StripHeight - Key.Height(draft, PaperFit.MostWidth);
        return Math.Max(draft.Outline.Width * ends.Length / across, longest / down);
    }

    private static Draft Fold(Draft draft, double[] ends, double gap)
    {
        double width = draft.Outline.Width;
        ImmutableArray<DraftPart> parts = [.. ends.Zip(ends.Prepend(0)).Select((pair, i) => new DraftPart(
            LengthOf(pair.Second), LengthOf(pair.First), new Box(i * (width + gap), 0, width, pair.First - pair.Second)))];
        return draft with
        {
            Parts = parts,
            Pieces = [.. draft.Pieces.Select(piece => Move(piece, PartOf(piece.Box, parts)))],
            Offcuts = [.. draft.Offcuts.SelectMany(offcut => Split(offcut, parts))],
            Bands = [.. draft.Bands.SelectMany(band => Split(band, parts))],
        };
    }

    private static Length LengthOf(double millimetres) => Length.FromSteps((long)Math.Round(millimetres * Length.StepsPerMillimetre));

    private static DraftPart PartOf(Box box, ImmutableArray<DraftPart> parts) => parts.First(part => box.CentreY < Millimetres.Of(part.To));

    private static DraftPiece Move(DraftPiece piece, DraftPart part) => piece with
    {
        Box = Move(piece.Box, part),
        Panel = piece.Panel is { } panel ? Move(panel, part) : null,
    };

    private static Box Move(Box box, DraftPart part) => box with { X = box.X + part.Box.X, Y = box.Y - Millimetres.Of(part.From) };

    private static IEnumerable<Box> Split(Box box, ImmutableArray<DraftPart> parts) => parts
        .Select(part => Move(box, part).Clip(part.Box))
        .Where(piece => piece.Width > Touch && piece.Height > Touch);

    private static IEnumerable<DraftOffcut> Split(DraftOffcut offcut, ImmutableArray<DraftPart> parts)
    {
        Box[] boxes = [.. Split(offcut.Box, parts)];
        Box largest = boxes.MaxBy(box => box.Height);
        return boxes.Select(box => offcut with { Box = box, Named = box == largest });
    }
}
