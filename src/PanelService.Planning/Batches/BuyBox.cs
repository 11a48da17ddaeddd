using System.Collections.Immutable;

namespace PanelService.Planning.Batches;

/// <summary>Decisions what is bought: of every line at least so many and at most so many.</summary>
/// <param name="Least">Per line: at least so many are bought.</param>
/// <param name="Most">Per line: at most so many.</param>
internal sealed record BuyBox(ImmutableArray<int> Least, ImmutableArray<int> Most)
{
    /// <summary>Whether it is one decision.</summary>
    public bool IsPoint => Least.SequenceEqual(Most);

    /// <summary>
    /// Two boxes that are this one together. Nothing of a line, or all of it, is parted off first: what bottles and
    /// whole lengths cost makes those the likely decisions.
    /// </summary>
    /// <param name="line">A line of which more than one number is in the box.</param>
    public (BuyBox First, BuyBox Second) Split(int line)
    {
        var (least, most) = (Least[line], Most[line]);
        int firstEnds = least == 0 ? 0 : most - 1;
        return (this with { Most = Most.SetItem(line, firstEnds) }, this with { Least = Least.SetItem(line, firstEnds + 1) });
    }
}
