// Problem: the most valuable pattern within the limits of its pieces' counts, when penalties (CountPenalty) have brought
//          a bound close to it.
// Idea:    go through the rectangles from small to large and keep for each the patterns of it that differ in their
//          counts: labels. A label loses something against the rectangle's best value under the penalties, and what it
//          loses is never won back; so those are dropped that lose more than what lies between the bound and the best
//          pattern known, taking into account what the rest of the sheet can be worth (Completion). Few remain where the
//          bound is close. Counting only some of the pieces keeps fewer still and gives a lower bound; pieces that
//          its best pattern holds too often are counted in the next round.
// Source:  labels and completion bounds as in resource-constrained shortest paths; counting more and more resources:
//          Righini and Salani, Networks 51 (2008); penalties: see CountPenalty. Stacks are built smallest part first.
// Cost:    joins of labels; unbounded in the worst case, so it stops at a given number of labels.
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Exact;

/// <summary>One round of the programme over labels.</summary>
internal sealed class LabelProgramme
{
    private const int StepsAtOnce = 10_000;
    private const int StepsOfUnit = 30;

    private readonly Grid _grid;
    private readonly ValueProgramme _programme;
    private readonly Completion _completion;
    private readonly CountKey _key;
    private readonly int[] _net;
    private readonly long _atLeast;
    private readonly WorkMeter _work;
    private readonly List<Label> _labels = [];
    private readonly int[] _start;
    private readonly int[] _end;
    private readonly LabelSet _found = new();
    private readonly ILookup<(int Column, int Row), int> _shapes;
    private int _most;
    private long _steps;

    /// <summary>Prepares a round.</summary>
    /// <param name="programme">Filled with the net values.</param>
    /// <param name="net">Value of one of each piece after its penalty.</param>
    /// <param name="key">Which pieces are counted.</param>
    /// <param name="atLeast">Only patterns of this net value or more are of interest.</param>
    /// <param name="work">Where work is counted.</param>
    public LabelProgramme(ValueProgramme programme, int[] net, CountKey key, long atLeast, WorkMeter work)
    {
        (_grid, _programme, _net, _key, _atLeast, _work) = (programme.Grid, programme, net, key, atLeast, work);
        _completion = new Completion(programme, atLeast, work.Cancellation);
        _start = new int[_grid.X.Count * _grid.Y.Count];
        _end = new int[_start.Length];
        _shapes = Enumerable.Range(0, _grid.Shapes.Length).ToLookup(s => _grid.Corners[s]);
    }

    /// <summary>Runs.</summary>
    /// <param name="most">At most so many labels.</param>
    /// <returns>Whether the round came to its end.</returns>
    public bool Run(int most)
    {
        int rows = _grid.Y.Count;
        for (int i = 0; i < _grid.X.Count; i++)
        {
            for (int j = 0; j < rows; j++)
            {
                int cell = (i * rows) + j;
                _start[cell] = _end[cell] = _labels.Count;
                int rest = _completion.Rest(i, j);
                if (rest < 0)
                {
                    continue;
                }

                _found.Clear();
                long room = rest + (long)_programme.At(i, j) - _atLeast;
                _most = most - _labels.Count;
                Collect(i, j, room);
                _found.AppendTo(_labels);
                _end[cell] = _labels.Count;
                if (_labels.Count > most || !Spend())
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>The labels of the whole sheet: net value and key.</summary>
    public IEnumerable<(int Index, long Net, Vector256<ulong> Key)> Whole()
    {
        long best = _programme.At(_grid.X.Count - 1, _grid.Y.Count - 1);
        for (int at = _start[^1]; at < _end[^1]; at++)
        {
            yield return (at, best - _labels[at].Loss, _labels[at].Key);
        }
    }

    /// <summary>A label's pattern.</summary>
    /// <param name="index">The label.</param>
    public Block Trace(int index)
    {
        var label = _labels[index];
        return label.Kind switch
        {
            LabelKind.Shape => new PieceBlock(_grid.Shapes[label.First].Piece, _grid.Shapes[label.First].Turned),
            LabelKind.AlongX => BlockMath.Join(Axis.X, Trace(label.Second), Trace(label.First)),
            _ => BlockMath.Join(Axis.Y, Trace(label.Second), Trace(label.First)),
        };
    }

    private bool Spend()
    {
        _steps += 10;
        if (_steps > StepsAtOnce)
        {
            _work.Spend(_steps / StepsOfUnit);
            _steps = 0;
        }

        return !_work.Exhausted;
    }

    /// <summary>Whether a single rectangle's labels grow too many, or the work is done: one alone may take seconds.</summary>
    private bool IsOver => _steps > StepsAtOnce && (_found.Count > _most || !Spend());

    private ReadOnlySpan<Label> Of(int i, int j)
    {
        int cell = (i * _grid.Y.Count) + j;
        return CollectionsMarshal.AsSpan(_labels)[_start[cell].._end[cell]];
    }

    private void Collect(int i, int j, long room)
    {
        int best = _programme.At(i, j);
        Inherit(i - 1, j, best, room);
        Inherit(i, j - 1, best, room);
        foreach (int s in _shapes[(i, j)])
        {
            int piece = _grid.Shapes[s].Piece;
            long loss = best - _net[piece];
            if (loss <= room)
            {
                _found.Add(new Label(_key.One(piece), (int)loss, s, -1, LabelKind.Shape, Ends.Either));
            }
        }

        var near = _grid.CutsX.Near(i);
        var far = _grid.CutsX.Far(i);
        for (int cut = 0; cut < near.Length; cut++)
        {
            int lost = best - _programme.At(near[cut], j) - _programme.At(far[cut], j);
            if (lost <= room)
            {
                Join((near[cut], j), (far[cut], j), lost, room, LabelKind.AlongX);
            }
        }

        near = _grid.CutsY.Near(j);
        far = _grid.CutsY.Far(j);
        for (int cut = 0; cut < near.Length; cut++)
        {
            int lost = best - _programme.At(i, near[cut]) - _programme.At(i, far[cut]);
            if (lost <= room)
            {
                Join((i, near[cut]), (i, far[cut]), lost, room, LabelKind.AlongY);
            }
        }
    }

    private void Inherit(int i, int j, int best, long room)
    {
        if (i < 0 || j < 0)
        {
            return;
        }

        int lost = best - _programme.At(i, j);
        foreach (ref readonly var label in Of(i, j))
        {
            if ((long)lost + label.Loss > room)
            {
                return;
            }

            _found.Add(label with { Loss = lost + label.Loss });
        }
    }

    private void Join((int I, int J) near, (int I, int J) far, int lost, long room, LabelKind kind)
    {
        var some = Of(near.I, near.J);
        var others = Of(far.I, far.J);
        int a = _start[(near.I * _grid.Y.Count) + near.J];
        int b = _start[(far.I * _grid.Y.Count) + far.J];
        var needed = kind == LabelKind.AlongX ? Ends.X : Ends.Y;
        var ends = kind == LabelKind.AlongX ? Ends.Y : Ends.X;
        for (int x = 0; x < some.Length; x++)
        {
            ref readonly var one = ref some[x];
            if ((one.Ends & needed) == 0)
            {
                continue;
            }

            if (IsOver)
            {
                return;
            }

            var lifted = one.Key + _key.Bias;
            for (int y = 0; y < others.Length; y++)
            {
                ref readonly var other = ref others[y];
                long loss = (long)lost + one.Loss + other.Loss;
                if (loss > room)
                {
                    break;
                }

                _steps++;
                if (((lifted + other.Key) & _key.Guard) == Vector256<ulong>.Zero)
                {
                    _found.Add(new Label(one.Key + other.Key, (int)loss, a + x, b + y, kind, ends));
                }
            }
        }
    }
}
