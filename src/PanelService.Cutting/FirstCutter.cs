// Problem: a sheet is too large to carry or to lift; with which first cuts does it fall into parts that are not, so that
//          an arrangement can still be cut from them, and with how few?
// Idea:    a part is either small enough, or it is cut between two members of its stack, or waste is cut off it. Between
//          the least and the most that a cut leaves on the near side, only the two ends matter, these moved by what up to three
//          more first cuts take more or less than the saw's, and the places where one side, cut in so many the other way, is just small
//          enough. Depth first, ways that promise fewest cuts first, with few cuts allowed first and then more; what a part takes at
//          least is known by area.
// Source:  iterative deepening: Korf, Artificial Intelligence 27 (1985); the rest is ours.
// Cost:    bounded by the ways looked at; a sheet in two to six parts takes some hundred.
// Not:     parts of a stack in another order than the arrangement has them.
using System.Collections.Immutable;
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting;

/// <summary>Parts a sheet with as few first cuts as it finds.</summary>
internal sealed class FirstCutter
{
    // With few cuts allowed most ways end soon. Where none is found so, the best of what comes up with any number is taken.
    private const int MostLooks = 2_000;
    private const int LooksForAny = 3_000;
    private const int MostCuts = 400;

    // How many first cuts a part may still take along an axis for the places of the cut before to be just right.
    private const int MostAgain = 3;

    // In how many a part that is too long both ways may be cut the other way afterwards, for a cut to leave it just small enough.
    private const int MostAcross = 6;

    private readonly SheetFrame _frame;
    private readonly FirstCuts _first;
    private readonly ImmutableArray<(long Width, long Height)> _sizes;
    private readonly MeasuredBlocks _blocks;
    private readonly Dictionary<Part, Found> _known = [];
    private readonly Dictionary<Part, bool> _canBeCut = [];
    private int _looks = MostLooks;

    private FirstCutter(SheetFrame frame, FirstCuts first, ImmutableArray<(long Width, long Height)> sizes) =>
        (_frame, _first, _sizes, _blocks) = (frame, first, sizes, new MeasuredBlocks(sizes, frame.Kerf));

    /// <summary>Parts the sheet.</summary>
    /// <param name="block">What is to be cut from it.</param>
    /// <param name="frame">The sheet.</param>
    /// <param name="sizes">Each piece's size as cut.</param>
    /// <returns>The cuts in an order they can be made in, and the parts; null where no way was found.</returns>
    public static SheetParts? Cut(Block block, SheetFrame frame, ImmutableArray<(long Width, long Height)> sizes)
    {
        var whole = new Rectangle(0, 0, frame.Width, frame.Height);
        if (frame.First is not { } first)
        {
            return new SheetParts([], [new SheetPart(block, whole, SheetEdges.All)]);
        }

        var cutter = new FirstCutter(frame, first, sizes);
        var part = new Part(cutter._blocks.Of(block), frame.Width, frame.Height, SheetEdges.All);
        int least = cutter.LeastCuts(part);
        var way = cutter.Solve(part, least);
        for (int more = 1; way is null && cutter._looks > 0 && least + more < MostCuts; more += Math.Max(1, more / 3))
        {
            way = cutter.Solve(part, least + more);
        }

        if (way is null)
        {
            cutter._looks = LooksForAny;
            way = cutter.Solve(part, MostCuts);
        }

        return way is null ? null : new Writer(first.Kerf).Write(way, whole);
    }

    /// <summary>How much wider a first cut is than one at the saw; less than 0: an arrangement takes less room than at the saw's kerf.</summary>
    private long Wider => _first.Kerf - _frame.Kerf;

    private Way? Solve(Part part, int most)
    {
        bool isHeld = _first.Parts.Holds(part.Width, part.Height, part.Block is null ? SheetEdges.None : part.Factory);
        if (part.Block is not null && (isHeld || Wider >= 0) && !HasRoom(part))
        {
            return null;
        }

        if (isHeld)
        {
            return CanBeCut(part) ? new Way(part, 0, null) : null;
        }

        if (LeastCuts(part) > most)
        {
            return null;
        }

        if (_known.TryGetValue(part, out var known) && (known.Way is not null || known.Most >= most))
        {
            return known.Way?.Cuts <= most ? known.Way : null;
        }

        if (--_looks < 0)
        {
            return null;
        }

        var best = BestSplit(part, most);
        _known[part] = new Found(best, most);
        return best;
    }

    /// <summary>Whether the saw's fence can do the rest: a part may be small enough to lift and yet hold a size that the fence does not reach.</summary>
    private bool CanBeCut(Part part)
    {
        if (part.Block is null || _frame.Fence is null)
        {
            return true;
        }

        if (!_canBeCut.TryGetValue(part, out bool can))
        {
            can = SheetCutter.CanCut(new SheetPart(part.Block.Block, new Rectangle(0, 0, part.Width, part.Height), part.Factory), _frame, _sizes);
            _canBeCut.Add(part, can);
        }

        return can;
    }

    private Way? BestSplit(Part part, int most)
    {
        Way? best = null;
        foreach (var split in SplitsOf(part).OrderBy(split => LeastCuts(split.Near) + LeastCuts(split.Far)))
        {
            int left = (best is null ? most : best.Cuts - 1) - 1;
            int farLeast = LeastCuts(split.Far);
            if (left - farLeast < 0
                || Solve(split.Near, left - farLeast) is not { } near
                || SolveFar(split.Far, left - near.Cuts) is not { } far)
            {
                continue;
            }

            best = new Way(part, 1 + near.Cuts + far.Cuts, new Division(split.Axis, split.Near.Along(split.Axis), near, far));
        }

        return best;
    }

    private Way? SolveFar(Part far, int most) => far.IsDust ? new Way(far, 0, null) : Solve(far, most);

    private IEnumerable<Split> SplitsOf(Part part)
    {
        foreach (var axis in new[] { Axis.X, Axis.Y })
        {
            if (part.Block is { Block: StackBlock stack } && stack.Axis == axis)
            {
                for (int k = 1; k < stack.Parts.Length; k++)
                {
                    foreach (var split in SplitsAt(part, axis, _blocks.Of(part.Block, 0, k), _blocks.Of(part.Block, k, stack.Parts.Length)))
                    {
                        yield return split;
                    }
                }
            }

            foreach (var split in SplitsAt(part, axis, part.Block, null))
            {
                yield return split;
            }

            if (part.Block is not null && (part.Factory & NearEdge(axis)) != 0)
            {
                foreach (var split in SplitsAt(part, axis, null, part.Block))
                {
                    yield return split;
                }
            }
        }
    }

    private IEnumerable<Split> SplitsAt(Part part, Axis axis, MeasuredBlock? near, MeasuredBlock? far)
    {
        long extent = part.Along(axis);
        long across = part.Along(Other(axis));
        var nearEdges = part.Factory & ~FarEdge(axis);
        var farEdges = part.Factory & ~NearEdge(axis);
        // Waste beside a block takes the factory edge with it.
        long least = near is not null ? Need(near, axis, nearEdges)
            : far is null ? 1 : Math.Max(1, _frame.EdgeTrim - _first.Kerf);
        long most = far is not null ? extent - _first.Kerf - Need(far, axis, farEdges)
            : (part.Factory & FarEdge(axis)) != 0 && near is not null ? extent - _frame.EdgeTrim
            : Math.Max(extent - _first.Kerf, least);
        // A side that is cut again by first cuts takes so much more, or less, than at the saw; waste takes what is left.
        bool isWaste = near is null && far is null;
        long[] again = isWaste ? [] : Wider == 0 ? [0] : [.. Enumerable.Range(0, MostAgain + 1).Select(cuts => cuts * Wider)];
        long[] places =
        [
            .. again.Select(more => near is null ? least : least + more),
            .. again.Select(more => far is null ? most : most - more),
            .. Longest(axis, across, near is null ? SheetEdges.None : nearEdges),
            .. isWaste ? [] : Longest(axis, across, far is null ? SheetEdges.None : farEdges).Select(longest => extent - _first.Kerf - longest),
        ];
        if (Wider < 0)
        {
            least = near is null ? least : Math.Max(1, least + (MostAgain * Wider));
            most = far is null ? most : most - (MostAgain * Wider);
        }

        return places.Where(at => at >= least && at <= most && at > 0 && at < extent).Distinct().Select(at => new Split(
            axis,
            part.With(axis, at, near, nearEdges),
            part.With(axis, extent - at - _first.Kerf, far, farEdges)));
    }

    /// <summary>How long a part may be that is cut in so many the other way.</summary>
    private IEnumerable<long> Longest(Axis axis, long across, SheetEdges edges) => Enumerable.Range(1, MostAcross)
        .Select(parts => _first.Parts.LongestAlong(axis, (across - ((parts - 1) * _first.Kerf) + parts - 1) / parts, edges))
        .Distinct();

    private bool HasRoom(Part part) =>
        Need(part.Block!, Axis.X, part.Factory) <= part.Width && Need(part.Block!, Axis.Y, part.Factory) <= part.Height;

    private long Need(MeasuredBlock block, Axis axis, SheetEdges factory)
    {
        int edges = ((factory & NearEdge(axis)) != 0 ? 1 : 0) + ((factory & FarEdge(axis)) != 0 ? 1 : 0);
        return block.Along(axis) + (edges * _frame.EdgeTrim);
    }

    /// <summary>No way parts it with fewer: so many of the largest parts, and the dust between them, make up its area.</summary>
    private int LeastCuts(Part part)
    {
        if (part.IsDust || _first.Parts.Holds(part.Width, part.Height, part.Block is null ? SheetEdges.None : part.Factory))
        {
            return 0;
        }

        Int128 dust = (Int128)_first.Kerf * Math.Max(part.Width, part.Height);
        Int128 area = ((Int128)part.Width * part.Height) + dust;
        Int128 each = Int128.Min(_first.Parts.LargestArea, area) + dust;
        return Math.Max(1, (int)Int128.Min(MostCuts, (area + each - 1) / each) - 1);
    }

    private static Axis Other(Axis axis) => axis == Axis.X ? Axis.Y : Axis.X;

    private static SheetEdges NearEdge(Axis axis) => axis == Axis.X ? SheetEdges.Left : SheetEdges.Bottom;

    private static SheetEdges FarEdge(Axis axis) => axis == Axis.X ? SheetEdges.Right : SheetEdges.Top;

    /// <summary>A part with what is to be cut from it; null: it is waste.</summary>
    private readonly record struct Part(MeasuredBlock? Block, long Width, long Height, SheetEdges Factory)
    {
        public bool IsDust => Width <= 0 || Height <= 0;

        public long Along(Axis axis) => axis == Axis.X ? Width : Height;

        public Part With(Axis axis, long extent, MeasuredBlock? block, SheetEdges factory) => axis == Axis.X
            ? new Part(block, extent, Height, factory)
            : new Part(block, Width, extent, factory);
    }

    private readonly record struct Split(Axis Axis, Part Near, Part Far);

    private readonly record struct Found(Way? Way, int Most);

    /// <summary>How a part is cut up; no cut: it stays as it is.</summary>
    private sealed record Way(Part Part, int Cuts, Division? Division);

    private sealed record Division(Axis Axis, long Near, Way First, Way Second);

    private sealed class Writer(long kerf)
    {
        private readonly ImmutableArray<CutLine>.Builder _cuts = ImmutableArray.CreateBuilder<CutLine>();
        private readonly ImmutableArray<SheetPart>.Builder _parts = ImmutableArray.CreateBuilder<SheetPart>();

        public SheetParts Write(Way way, Rectangle at)
        {
            Add(way, at);
            return new SheetParts(_cuts.ToImmutable(), _parts.ToImmutable());
        }

        private void Add(Way way, Rectangle at)
        {
            if (way.Part.IsDust)
            {
                return;
            }

            if (way.Division is not { } cut)
            {
                _parts.Add(new SheetPart(way.Part.Block?.Block, at, way.Part.Factory));
                return;
            }

            bool x = cut.Axis == Axis.X;
            _cuts.Add(new CutLine(at, cut.Axis, (x ? at.X : at.Y) + cut.Near, IsTrim: false, IsFirst: true));
            Add(cut.First, x ? at with { Width = cut.Near } : at with { Height = cut.Near });
            Add(cut.Second, x
                ? at with { X = at.X + cut.Near + kerf, Width = at.Width - cut.Near - kerf }
                : at with { Y = at.Y + cut.Near + kerf, Height = at.Height - cut.Near - kerf });
        }
    }
}

/// <summary>A sheet in parts.</summary>
/// <param name="Cuts">The first cuts.</param>
/// <param name="Parts">What they leave.</param>
internal sealed record SheetParts(ImmutableArray<CutLine> Cuts, ImmutableArray<SheetPart> Parts);

/// <summary>A part of a sheet.</summary>
/// <param name="Block">What is cut from it; null: nothing.</param>
/// <param name="At">Where it lay.</param>
/// <param name="Factory">Which of its edges are the sheet's.</param>
internal sealed record SheetPart(Block? Block, Rectangle At, SheetEdges Factory);
