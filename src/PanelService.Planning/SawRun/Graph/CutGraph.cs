// Problem: all ways in which guillotine cuts can part some sheets into given rectangles, so that the best can be chosen.
// Idea:    a workpiece is known by what must come out of it, its bands closed up and sorted (Bands), and by its size;
//          equal ones are one shape. Across an axis with several bands any choice of bands can be cut from the others: equal bands
//          count once, so the choices are few. Room beyond what is needed is waste: it is cut off at once, or
//          left to either part. What holds no panel is never parted: leftovers stay together with the waste beside them.
//          With everything named as needed, kept or not, the ways are those which leave exactly that, or some of it joined so;
//          with waste left unnamed, waste may be divided in any way.
// Cost:    shapes × choices; limited: past the limit a shape keeps one way of cutting, and says that it is partial.
// Not:     cuts at other places than the edges of what is needed; parts of different bands exchanged with one another.
using PanelService.Cutting;

namespace PanelService.Planning.SawRun.Graph;

/// <summary>Every way of cutting some workpieces up.</summary>
/// <param name="rules">What it keeps to.</param>
/// <param name="wasteIsFree">Whether room beyond what is needed may be any waste; else only dust.</param>
/// <param name="limit">How many parts all shapes together may look at.</param>
/// <param name="unwanted">Ends it half-way, with an exception.</param>
internal sealed class CutGraph(GraphRules rules, bool wasteIsFree, long limit, CancellationToken unwanted = default)
{
    private const long MostChoices = 1 << 12;

    // So many times the limit, and a shape gets one way, along whichever axis it is found first: with one along each, a grid of
    // thousands of panels still has thousands of shapes, and each of these thousands of parts.
    private const int FarBeyond = 4;

    private readonly ArrangementBook _arrangements = new();
    private readonly Dictionary<(long Width, long Height, Arrangement Needed), CutShape> _known = [];
    private readonly Dictionary<SawSetting, int> _settingOf = [];
    private long _work;

    /// <summary>The settings that some split can be made at.</summary>
    public List<SawSetting> Settings { get; } = [];

    /// <summary>The shapes; from small to large once <see cref="Finish"/> has been called.</summary>
    public List<CutShape> Shapes { get; } = [];

    /// <summary>What it keeps to.</summary>
    public GraphRules Rules => rules;

    /// <summary>Whether shapes are so many that each gets one way of cutting.</summary>
    public bool IsFarBeyond => _work > limit * FarBeyond;

    /// <summary>The shape of a workpiece; its ways of cutting are in the graph.</summary>
    /// <param name="width">Grown by one kerf.</param>
    /// <param name="height">Grown by one kerf.</param>
    /// <param name="needed">What must come out of it, grown.</param>
    public CutShape Of(long width, long height, NeededPart[] needed) => Of(width, height, _arrangements.Of(needed));

    private CutShape Of(long width, long height, Arrangement needed)
    {
        if (_known.TryGetValue((width, height, needed), out var known))
        {
            return known;
        }

        unwanted.ThrowIfCancellationRequested();
        var shape = new CutShape(width, height, needed, rules.Kerf);
        _known.Add((width, height, needed), shape);
        Shapes.Add(shape);
        _work += needed.Parts.Length;
        if (!shape.IsDone)
        {
            Divide(shape);
        }

        return shape;
    }

    /// <summary>The shape of a sheet, or a part of one, whose factory edges are trimmed first.</summary>
    /// <param name="width">Of all of it, grown by one kerf.</param>
    /// <param name="height">The same.</param>
    /// <param name="trim">The edges to trim, and what is lost at each.</param>
    /// <param name="inner">What is left when they are trimmed.</param>
    public CutShape Trimmed(long width, long height, (SheetEdges Edges, long Lost) trim, CutShape inner)
    {
        var (edges, lost) = trim;
        var shape = inner;
        if (edges.HasFlag(SheetEdges.Top))
        {
            shape = TrimStage(shape.Width, shape.Height + lost, Axis.Y, (shape.Height, shape, null));
        }

        if (edges.HasFlag(SheetEdges.Bottom))
        {
            shape = TrimStage(shape.Width, height, Axis.Y, (lost, null, shape));
        }

        if (edges.HasFlag(SheetEdges.Right))
        {
            shape = TrimStage(shape.Width + lost, height, Axis.X, (shape.Width, shape, null));
        }

        return edges.HasFlag(SheetEdges.Left) ? TrimStage(width, height, Axis.X, (lost, null, shape)) : shape;
    }

    /// <summary>
    /// Adds the way that is known from a layout: under a fence that reaches less far than the sheet, single ways
    /// (<see cref="IsFarBeyond"/>) may lead to a shape that cannot be cut at all.
    /// </summary>
    /// <param name="sheet">What is cut, its factory edges gone, grown by one kerf.</param>
    /// <param name="needed">What must come out of it, grown.</param>
    /// <param name="cuts">The layout's cuts by their workpieces, grown: across which axis, and where the near part ends.</param>
    public void Follow(Rectangle sheet, NeededPart[] needed, IReadOnlyDictionary<Rectangle, (Axis Axis, long End)> cuts)
    {
        var open = new Stack<(Rectangle Workpiece, NeededPart[] Needed)>([(sheet, needed)]);
        while (open.TryPop(out var one))
        {
            if (!cuts.TryGetValue(one.Workpiece, out var cut))
            {
                continue;
            }

            var (near, far) = Parted(one.Workpiece, cut.Axis, cut.End);
            NeededPart[] inNear = [.. one.Needed.Where(part => cut.Axis == Axis.X ? part.X < cut.End : part.Y < cut.End)];
            NeededPart[] inFar = [.. one.Needed.Except(inNear)];
            var shape = Of(one.Workpiece.Width, one.Workpiece.Height, one.Needed);
            if (!shape.IsDone)
            {
                Add(shape, cut.Axis, cut.Axis == Axis.X ? near.Width : near.Height, ShapeOf(near, inNear), ShapeOf(far, inFar));
            }

            open.Push((near, inNear));
            open.Push((far, inFar));
        }
    }

    /// <summary>The two parts of a workpiece, grown.</summary>
    /// <param name="workpiece">Grown by one kerf.</param>
    /// <param name="axis">The axis cut across.</param>
    /// <param name="end">Where the near part ends, grown.</param>
    public static (Rectangle Near, Rectangle Far) Parted(Rectangle workpiece, Axis axis, long end) => axis == Axis.X
        ? (workpiece with { Width = end - workpiece.X }, workpiece with { X = end, Width = workpiece.X + workpiece.Width - end })
        : (workpiece with { Height = end - workpiece.Y }, workpiece with { Y = end, Height = workpiece.Y + workpiece.Height - end });

    private CutShape? ShapeOf(Rectangle part, NeededPart[] needed) => needed.Length == 0 ? null : Of(part.Width, part.Height, needed);

    /// <summary>Puts the shapes in order: every shape after those that its splits leave.</summary>
    public void Finish()
    {
        var order = Shapes.OrderBy(shape => (Int128)shape.Width * shape.Height).ToList();
        Shapes.Clear();
        Shapes.AddRange(order);
        for (int i = 0; i < Shapes.Count; i++)
        {
            Shapes[i].Index = i;
        }
    }

    private CutShape TrimStage(long width, long height, Axis axis, (long NearSize, CutShape? Near, CutShape? Far) parts)
    {
        var shape = new CutShape(width, height, (parts.Near ?? parts.Far)!.Arrangement, rules.Kerf);
        Shapes.Add(shape);
        long kept = parts.Near is null ? (axis == Axis.X ? width : height) - parts.NearSize : parts.NearSize;
        bool keptAtFence = kept - rules.Kerf <= rules.FenceReach;
        long strip = (axis == Axis.X ? width : height) - kept;
        int setting = SettingOf(shape, axis, (keptAtFence ? kept : strip) - rules.Kerf);
        bool nearAtFence = keptAtFence == parts.Near is not null;
        shape.Splits.Add(new CutSplit(
            axis, parts.NearSize, parts.Near, parts.Far, nearAtFence ? setting : -1, nearAtFence ? -1 : setting, IsTrim: true));
        return shape;
    }

    private void Divide(CutShape shape)
    {
        CutOffRoom(shape, Axis.X);
        CutOffRoom(shape, Axis.Y);
        foreach (var axis in new[] { Axis.X, Axis.Y })
        {
            var sorts = _arrangements.Sorts(shape.Arrangement, axis);
            if (sorts.Length > 1 || sorts[0].Count > 1)
            {
                Part(shape, axis, sorts);
            }
        }
    }

    private void CutOffRoom(CutShape shape, Axis axis)
    {
        var (room, need) = axis == Axis.X ? (shape.Width, shape.NeededWidth) : (shape.Height, shape.NeededHeight);
        if (room > need && (wasteIsFree || room - need <= rules.Kerf))
        {
            long keep = rules.KeptOf(room, need);
            var rest = axis == Axis.X ? Of(keep, shape.Height, shape.Arrangement) : Of(shape.Width, keep, shape.Arrangement);
            Add(shape, axis, keep, rest, null);
        }
    }

    private void Part(CutShape shape, Axis axis, BandSort[] sorts)
    {
        if (_work > limit || sorts.Aggregate(1L, (product, sort) => Math.Min(MostChoices + 1, product * (sort.Count + 1))) > MostChoices)
        {
            shape.IsPartial = true;
            int before = IsFarBeyond ? 0 : shape.Splits.Count;
            foreach (int sort in Enumerable.Range(0, sorts.Length).TakeWhile(_ => _work <= limit || shape.Splits.Count == before))
            {
                int ways = shape.Splits.Count;
                Part(shape, axis, sorts, Taking(sort, 1));
                int others = sorts.Length == 1 ? 1 : 0;
                int atFence = (int)Math.Min(sorts[sort].Count - others, rules.FenceReach / sorts[sort].Extent);
                if (shape.Splits.Count == ways && atFence > 1)
                {
                    // A band too narrow to lie at the fence falls off a stack that it reaches.
                    Part(shape, axis, sorts, Taking(sort, atFence));
                }
            }

            return;
        }

        int known = shape.Splits.Count;
        foreach (int[] taken in BandChoices.Of([.. sorts.Select(sort => sort.Count)]))
        {
            if (IsFarBeyond && shape.Splits.Count > known)
            {
                shape.IsPartial = true;
                return;
            }

            Part(shape, axis, sorts, taken);
        }

        int[] Taking(int sort, int count) => [.. sorts.Select((_, i) => i == sort ? count : 0)];
    }

    /// <summary>Parts a shape into the bands taken and the others; room beyond the need goes to either.</summary>
    private void Part(CutShape shape, Axis axis, BandSort[] sorts, int[] taken)
    {
        int[] others = [.. sorts.Select((sort, i) => sort.Count - taken[i])];
        var parts = (_arrangements.Joined(axis, sorts, taken), _arrangements.Joined(axis, sorts, others));
        long room = axis == Axis.X ? shape.Width : shape.Height;
        long nearNeed = Extent(sorts, taken);
        long farNeed = Extent(sorts, others);
        PartAt(shape, axis, nearNeed, parts);
        if (nearNeed + farNeed < room)
        {
            PartAt(shape, axis, room - farNeed, parts);
        }
    }

    private static long Extent(BandSort[] sorts, int[] taken)
    {
        long extent = 0;
        for (int i = 0; i < sorts.Length; i++)
        {
            extent += sorts[i].Extent * taken[i];
        }

        return extent;
    }

    private void PartAt(CutShape shape, Axis axis, long nearSize, (Arrangement Near, Arrangement Far) parts)
    {
        if (SidesFor(shape, axis, nearSize) is (false, false))
        {
            return;
        }

        var near = axis == Axis.X ? Of(nearSize, shape.Height, parts.Near) : Of(shape.Width, nearSize, parts.Near);
        var far = axis == Axis.X
            ? Of(shape.Width - nearSize, shape.Height, parts.Far)
            : Of(shape.Width, shape.Height - nearSize, parts.Far);
        Add(shape, axis, nearSize, near, far);
    }

    private void Add(CutShape shape, Axis axis, long nearSize, CutShape? near, CutShape? far)
    {
        long farSize = (axis == Axis.X ? shape.Width : shape.Height) - nearSize;
        var (nearMay, farMay) = SidesFor(shape, axis, nearSize);
        if (!nearMay && !farMay)
        {
            return;
        }

        shape.Splits.Add(new CutSplit(
            axis,
            nearSize,
            near,
            far,
            nearMay ? SettingOf(shape, axis, nearSize - rules.Kerf) : -1,
            farMay ? SettingOf(shape, axis, farSize - rules.Kerf) : -1));
    }

    /// <summary>Which of the two parts may lie at the fence; neither: the cut cannot be made.</summary>
    private (bool Near, bool Far) SidesFor(CutShape shape, Axis axis, long nearSize) =>
        rules.SidesFor(nearSize - rules.Kerf, (axis == Axis.X ? shape.Width : shape.Height) - nearSize - rules.Kerf);

    private int SettingOf(CutShape shape, Axis axis, long size)
    {
        long along = (axis == Axis.X ? shape.Height : shape.Width) - rules.Kerf;
        var setting = new SawSetting(rules.ToolFor(along), size);
        if (!_settingOf.TryGetValue(setting, out int number))
        {
            number = Settings.Count;
            Settings.Add(setting);
            _settingOf.Add(setting, number);
        }

        return number;
    }
}
