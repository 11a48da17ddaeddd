// Problem: many different patterns of nearly the best value, none holding more of a piece than is still wanted.
// Idea:    the table of the exact programme knows for every rectangle what is lost by cutting it here instead of there.
//          Walk it down at random, spending no more than a given loss, and taking another piece where the one that
//          belongs there is wanted no more.
// Source:  randomised backtracking through a dynamic programme's table, as Ding and Lawrence, Nucleic Acids Research 31
//          (2003), draw near-optimal structures.
// Cost:    one look at the cuts of every rectangle on the way: about 10 µs a pattern, where a programme that keeps to
//          the demand takes tens of milliseconds.
// Not:     the best pattern within the demand: one of many good ones.
using PanelService.Cutting.Many;

namespace PanelService.Cutting.Patterns;

/// <summary>Draws patterns at random from a filled programme.</summary>
/// <param name="random">Where the chances come from.</param>
internal sealed class PatternSampler(SeededRandom random)
{
    private ValueProgramme _programme = null!;
    private int[] _values = [];
    private int[] _open = [];

    /// <summary>Cuts looked at since the start.</summary>
    public long Looked { get; private set; }

    /// <summary>Draws a pattern.</summary>
    /// <param name="programme">Filled with the values; its sizes the true ones.</param>
    /// <param name="values">Value of one of each piece.</param>
    /// <param name="size">The stock, without the kerf.</param>
    /// <param name="open">How many of each piece may be placed; what is placed is taken off.</param>
    /// <param name="loss">About how much less than the best the pattern may be worth, but for what is wanted no more.</param>
    /// <returns>The pattern; null where nothing was placed.</returns>
    public Block? Draw(ValueProgramme programme, int[] values, (long Width, long Height) size, int[] open, int loss)
    {
        (_programme, _values, _open) = (programme, values, open);
        int i = programme.Grid.Column(size.Width + programme.Grid.Kerf);
        int j = programme.Grid.Row(size.Height + programme.Grid.Kerf);
        return i < 0 || j < 0 ? null : Walk(i, j, loss);
    }

    private Block? Walk(int i, int j, int loss)
    {
        int best = _programme.At(i, j);
        if (best == 0)
        {
            return null;
        }

        var (i0, j0) = Shrunk(i, j, best);
        double share = random.Share();
        var drawn = new Step(StepKind.None, 0, 0, 0);
        int ways = 0;
        int most = (int)(loss * share * share);
        Shapes(i0, j0, (best, most), ref drawn, ref ways);
        Cuts(StepKind.AlongX, (i0, j0), (best, most), ref drawn, ref ways);
        Cuts(StepKind.AlongY, (i0, j0), (best, most), ref drawn, ref ways);
        return drawn.Kind switch
        {
            StepKind.None => Replace(i, j),
            StepKind.Piece => Place(drawn.First),
            _ => Part(drawn, i0, j0, loss - drawn.Lost),
        };
    }

    /// <summary>The smallest rectangle that is worth as much.</summary>
    private (int I, int J) Shrunk(int i, int j, int best)
    {
        while (i > 0 && _programme.At(i - 1, j) == best)
        {
            i--;
        }

        while (j > 0 && _programme.At(i, j - 1) == best)
        {
            j--;
        }

        return (i, j);
    }

    private void Shapes(int i, int j, (int Best, int Loss) room, ref Step drawn, ref int ways)
    {
        var grid = _programme.Grid;
        for (int s = 0; s < grid.Shapes.Length; s++)
        {
            var shape = grid.Shapes[s];
            int lost = room.Best - _values[shape.Piece];
            if (lost <= room.Loss && _open[shape.Piece] > 0 && Fits(s, i, j) && random.Below(++ways) == 0)
            {
                drawn = new Step(StepKind.Piece, s, 0, Math.Max(0, lost));
            }
        }
    }

    private void Cuts(StepKind kind, (int I, int J) at, (int Best, int Loss) room, ref Step drawn, ref int ways)
    {
        bool x = kind == StepKind.AlongX;
        var cuts = x ? _programme.Grid.CutsX : _programme.Grid.CutsY;
        var near = cuts.Near(x ? at.I : at.J);
        var far = cuts.Far(x ? at.I : at.J);
        Looked += near.Length + 5;
        for (int cut = 0; cut < near.Length; cut++)
        {
            int value = x ? _programme.At(near[cut], at.J) : _programme.At(at.I, near[cut]);
            int lost = room.Best - value - (x ? _programme.At(far[cut], at.J) : _programme.At(at.I, far[cut]));
            if (lost <= room.Loss && value > 0 && random.Below(++ways) == 0)
            {
                drawn = new Step(kind, far[cut], near[cut], lost);
            }
        }
    }

    private Block? Part(Step step, int i, int j, int loss)
    {
        bool x = step.Kind == StepKind.AlongX;
        int share = (int)(loss * random.Share());
        var far = Walk(x ? step.First : i, x ? j : step.First, share);
        var near = Walk(x ? step.Second : i, x ? j : step.Second, loss - share);
        return far is null ? near : near is null ? far : BlockMath.Join(x ? Axis.X : Axis.Y, far, near);
    }

    /// <summary>The most valuable piece that is still wanted and fits; null where none does.</summary>
    private PieceBlock? Replace(int i, int j)
    {
        var shapes = _programme.Grid.Shapes;
        int best = -1;
        for (int s = 0; s < shapes.Length; s++)
        {
            bool fits = _open[shapes[s].Piece] > 0 && Fits(s, i, j);
            best = fits && (best < 0 || _values[shapes[s].Piece] > _values[shapes[best].Piece]) ? s : best;
        }

        return best < 0 ? null : Place(best);
    }

    private bool Fits(int shape, int i, int j)
    {
        var (column, row) = _programme.Grid.Corners[shape];
        return column <= i && row <= j;
    }

    private PieceBlock Place(int shape)
    {
        var (_, _, piece, turned) = _programme.Grid.Shapes[shape];
        _open[piece]--;
        return new PieceBlock(piece, turned);
    }

    private enum StepKind
    {
        None,
        Piece,
        AlongX,
        AlongY,
    }

    /// <summary>What was drawn for a rectangle: a shape, or the far and the near part of a cut; and what it loses.</summary>
    private readonly record struct Step(StepKind Kind, int First, int Second, int Lost);
}
