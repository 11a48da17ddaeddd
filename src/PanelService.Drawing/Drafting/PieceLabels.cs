using PanelService.Planning.Measures;

namespace PanelService.Drawing.Drafting;

/// <summary>
/// What stands in a piece: its mark, and its size as dimension lines along two edges; where that is too much, mark
/// and size as text; where that is too much, the mark alone (the key has its size); else a leader line's turn.
/// A turned piece has its mark turned too, so that the mark stands upright when the panel hangs.
/// </summary>
internal static class PieceLabels
{
    private static readonly double[] DimensionSizes = [2.6, 2.2, 1.9];
    private static readonly double[] MarkSizes = [3.2, 2.6, 2.1, 1.7];
    private static readonly double[] Slides = [0.5, 0.36, 0.64, 0.25, 0.75];

    public static void Draw(Sketch sketch, DraftPiece piece)
    {
        if (!Full(sketch, piece) && !Written(sketch, piece) && !MarkOnly(sketch, piece))
        {
            sketch.Unmarked.Add(piece);
        }
    }

    private static bool Full(Sketch sketch, DraftPiece piece)
    {
        foreach (double size in DimensionSizes)
        {
            double letters = sketch.Paper(size);
            double inset = letters * 1.15;
            Box free = piece.Box.Shrink(sketch.Paper(0.5));
            Label? across = Slide(sketch, free, at => new Label(
                LengthText.FormatFigure(piece.Width, sketch.Draft.Unit), piece.Box.X + (at * piece.Box.Width), piece.Box.Y + inset, letters));
            Label? down = Slide(sketch, free, at => new Label(
                LengthText.FormatFigure(piece.Height, sketch.Draft.Unit), piece.Box.X + inset, piece.Box.Y + (at * piece.Box.Height), letters, Upright: true));
            Box rest = new(
                free.X + (inset * 1.6), free.Y + (inset * 1.6), free.Width - (inset * 1.6), free.Height - (inset * 1.6));
            if (across is { } level && down is { } upright && !level.Box.Overlaps(upright.Box) && BigMark(sketch, piece, rest) is { } mark
                && !mark.Box.Overlaps(level.Box) && !mark.Box.Overlaps(upright.Box))
            {
                sketch.Labels.Take(level.Box);
                sketch.Labels.Take(upright.Box);
                sketch.Labels.Take(mark.Box);
                DimensionLine.Draw(sketch, piece.Box.X, piece.Box.Right, level);
                DimensionLine.Draw(sketch, piece.Box.Y, piece.Box.Bottom, upright);
                sketch.Marks.Add(mark.Draw());
                return true;
            }
        }

        return false;
    }

    private static Label? Slide(Sketch sketch, Box free, Func<double, Label> at)
    {
        foreach (double slide in Slides)
        {
            Label label = at(slide);
            if (free.Holds(label.Box) && sketch.Labels.IsFree(label.Box))
            {
                return label;
            }
        }

        return null;
    }

    private static Label? BigMark(Sketch sketch, DraftPiece piece, Box rest)
    {
        double most = Math.Clamp(Math.Min(rest.Width, rest.Height) * 0.34 / sketch.Fit.Scale, MarkSizes[0], 7);
        foreach (double size in (double[])[most, .. MarkSizes])
        {
            var label = new Label(piece.Mark, rest.CentreX, rest.CentreY, sketch.Paper(size), piece.Turned);
            if (rest.Holds(label.Box) && sketch.Labels.IsFree(label.Box))
            {
                return label;
            }
        }

        return null;
    }

    private static bool Written(Sketch sketch, DraftPiece piece)
    {
        string size = Wording.Size(piece.Width, piece.Height, sketch.Draft.Unit);
        foreach (double letters in MarkSizes[1..])
        {
            foreach (bool upright in (bool[])[piece.Box.Height > piece.Box.Width, piece.Box.Height <= piece.Box.Width])
            {
                if (TwoLines(sketch, piece, size, sketch.Paper(letters), upright) is { } pair)
                {
                    sketch.Marks.Add(pair.Mark.Draw());
                    sketch.Letters.Add(pair.Size.Draw());
                    return true;
                }
            }
        }

        return false;
    }

    private static (Label Mark, Label Size)? TwoLines(Sketch sketch, DraftPiece piece, string size, double letters, bool upright)
    {
        double apart = letters * 0.6;
        double x = piece.Box.CentreX;
        double y = piece.Box.CentreY;
        Label mark = upright ? new(piece.Mark, x - apart, y, letters, true) : new(piece.Mark, x, y - apart, letters);
        Label text = upright ? new(size, x + apart, y, letters, true) : new(size, x, y + apart, letters);
        Box free = piece.Box.Shrink(sketch.Paper(0.4));
        if (!free.Holds(mark.Box) || !free.Holds(text.Box) || !sketch.Labels.IsFree(mark.Box) || !sketch.Labels.IsFree(text.Box))
        {
            return null;
        }

        sketch.Labels.Take(mark.Box);
        sketch.Labels.Take(text.Box);
        return (mark, text);
    }

    private static bool MarkOnly(Sketch sketch, DraftPiece piece)
    {
        Box free = piece.Box.Shrink(sketch.Paper(0.25));
        foreach (double size in MarkSizes)
        {
            foreach (bool upright in (bool[])[piece.Turned, !piece.Turned])
            {
                var label = new Label(piece.Mark, piece.Box.CentreX, piece.Box.CentreY, sketch.Paper(size), upright);
                if (free.Holds(label.Box) && sketch.Labels.TryTake(label.Box))
                {
                    sketch.Marks.Add(label.Draw());
                    return true;
                }
            }
        }

        return false;
    }
}
