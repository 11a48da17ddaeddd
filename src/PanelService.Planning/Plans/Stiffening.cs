using System.Collections.Immutable;
using PanelService.Planning.Measures;

namespace PanelService.Planning.Plans;

/// <summary>Two ways to stiffen panels that sag too much, each planned: what it adds to what the batch costs.</summary>
/// <param name="Marks">The lines that sag too much and have no cradle.</param>
/// <param name="Strips">What the strips of their cradles add; null: there are none, or too few.</param>
/// <param name="Thicker">What boards thick enough add, less than nothing where they save; null: there are none, or too few.</param>
public sealed record Stiffening(ImmutableArray<string> Marks, Money? Strips, Money? Thicker)
{
    /// <summary>The strips that cradles for all of these panels take, line by line in the order of <see cref="Marks"/>; a line too small for one has none.</summary>
    public ImmutableArray<CradleStrips> Pieces { get; init; } = [];

    /// <summary>Whether a thicker board is the cheaper way; null where only one way is there, or both cost the same.</summary>
    public bool? ThickerIsCheaper => Strips is { } strips && Thicker is { } thicker && strips != thicker ? thicker < strips : null;
}

/// <summary>Strips of one length for one line's cradles.</summary>
/// <param name="Mark">The line.</param>
/// <param name="Length">The length of each.</param>
/// <param name="Each">How many on one panel.</param>
/// <param name="Count">How many on all of them.</param>
public sealed record CradleStrips(string Mark, Length Length, int Each, long Count);
