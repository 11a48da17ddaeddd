// Problem: out of thousands of blocks that hold a piece, one whose pieces are all still there.
// Idea:    mixed once, then looked through from anywhere, one after another: their sets lie beside one another in memory. Drawn
//          one by one by chance they took most of a search's time, waiting for memory.
// Source:  the mixing: Durstenfeld, Communications of the ACM 7 (1964).
// Cost:    a nanosecond or two a look.
using PanelService.Cutting.Many;

namespace PanelService.Cutting.Lengths;

/// <summary>Parts of a strip to draw from.</summary>
/// <typeparam name="T">What a part is.</typeparam>
internal sealed class PartList<T>
{
    private readonly T[] _parts;
    private readonly UInt128[] _sets;

    /// <summary>Mixes parts.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="set">A part's pieces: one bit for each.</param>
    /// <param name="random">Where chance comes from.</param>
    public PartList(IEnumerable<T> parts, Func<T, UInt128> set, SeededRandom random)
    {
        _parts = [.. parts];
        for (int i = _parts.Length - 1; i > 0; i--)
        {
            int j = random.Below(i + 1);
            (_parts[i], _parts[j]) = (_parts[j], _parts[i]);
        }

        _sets = [.. _parts.Select(set)];
    }

    /// <summary>How many parts there are.</summary>
    public int Count => _parts.Length;

    /// <summary>A look through the list from anywhere.</summary>
    /// <param name="most">At most so many parts are looked at.</param>
    /// <param name="random">Where chance comes from.</param>
    public Look Begin(int most, SeededRandom random) => new(this, Count == 0 ? 0 : random.Below(Count), Math.Min(most, Count));

    /// <summary>A look through a list.</summary>
    /// <param name="list">The list.</param>
    /// <param name="at">Where it goes on.</param>
    /// <param name="left">How many parts it may still look at.</param>
    public struct Look(PartList<T> list, int at, int left)
    {
        /// <summary>Goes on to the next part whose pieces are all there.</summary>
        /// <param name="open">The pieces that are there.</param>
        /// <param name="part">The part.</param>
        /// <returns>Whether there is one.</returns>
        public bool Next(UInt128 open, [System.Diagnostics.CodeAnalysis.MaybeNullWhen(false)] out T part)
        {
            var sets = list._sets;
            while (left > 0)
            {
                int looked = at;
                at = at + 1 == sets.Length ? 0 : at + 1;
                left--;
                if ((sets[looked] & ~open) == 0)
                {
                    part = list._parts[looked];
                    return true;
                }
            }

            part = default;
            return false;
        }
    }
}
