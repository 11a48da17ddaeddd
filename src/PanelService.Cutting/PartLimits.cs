using System.Collections.Immutable;

namespace PanelService.Cutting;

/// <summary>How large a part may be that a sheet is cut into before it comes to the saw.</summary>
/// <param name="Sizes">It fits into each of these, either way round.</param>
/// <param name="MostArea">And is no larger than this; null: whatever the sizes allow.</param>
public sealed record PartLimits(ImmutableArray<(long First, long Second)> Sizes, Int128? MostArea)
{
    /// <summary>What is lost at a factory edge the part still has.</summary>
    public long EdgeTrim { get; init; }

    /// <summary>The widest part that is left when a factory edge is trimmed off at the saw.</summary>
    public long TrimReach { get; init; } = long.MaxValue / 4;

    /// <summary>No part is larger in area.</summary>
    public Int128 LargestArea => Sizes.Select(size => (Int128)size.First * size.Second)
        .Append(MostArea ?? Int128.MaxValue)
        .Min();

    /// <summary>Whether a part is small enough.</summary>
    /// <param name="width">Its width.</param>
    /// <param name="height">Its height.</param>
    /// <param name="factory">The factory edges it has.</param>
    public bool Holds(long width, long height, SheetEdges factory) => width <= LongestAlong(Axis.X, height, factory);

    /// <summary>The longest that a part may be along an axis; 0: it is too long across it.</summary>
    /// <param name="axis">The axis.</param>
    /// <param name="across">Its extent along the other axis.</param>
    /// <param name="factory">The factory edges it has.</param>
    public long LongestAlong(Axis axis, long across, SheetEdges factory)
    {
        var (along, other) = axis == Axis.X
            ? (SheetEdges.Left | SheetEdges.Right, SheetEdges.Bottom | SheetEdges.Top)
            : (SheetEdges.Bottom | SheetEdges.Top, SheetEdges.Left | SheetEdges.Right);
        long trimmed = TrimReach + EdgeTrim;
        if (EdgeTrim > 0 && (factory & other) != 0 && across > trimmed)
        {
            return 0;
        }

        long longest = EdgeTrim > 0 && (factory & along) != 0 ? trimmed : long.MaxValue / 2;
        foreach (var (first, second) in Sizes)
        {
            longest = Math.Min(longest, Math.Max(across <= second ? first : 0, across <= first ? second : 0));
        }

        return MostArea is { } most ? (long)Int128.Min(longest, most / Math.Max(1, across)) : longest;
    }
}
