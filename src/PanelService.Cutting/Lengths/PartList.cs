// Problem: out of thousands of blocks that hold a piece, one whose pieces are all still there.
// Idea:    mixed once, then looked through from anywhere, one after another: their sets lie beside one another in memory. Drawn
//          one by one by chance they took most of a search's time, waiting for memory.
// Source:  the mixing: Durstenfeld, Communications of the ACM 7 (1964).
// Cost:    a nanosecond or two a look.
using PanelService.Cutting.Many;

namespace PanelService.Cutting.Lengths;

/// <summary>Parts of a strip to draw from.</summary>
internal sealed class PartList
{
    private readonly StripPart[] _parts;
    private readonly UInt128[] _sets;

    /// <summary>Mixes parts.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="random">Where chance comes from.</param>
    public PartList(IEnumerable<StripPart> parts, SeededRandom random)
    {
        _parts = [.. parts];
        for (int i = _parts.Length - 1; i > 0; i--)
        {
            int j = random.Below(i + 1);
            (_parts[i], _parts[j]) = (_parts[j], _parts[i]);
        }

        _sets = [.. _parts.Select(part => part.Set)];
    }

    /// <summary>Looks from anywhere for a part whose pieces are all there.</summary>
    /// <param name="open">The pieces that are there.</param>
    /// <param name="most">At most so many parts are looked at.</param>
    /// <param name="random">Where chance comes from.</param>
    /// <returns>Null where none was come by.</returns>
    public StripPart? Draw(UInt128 open, int most, SeededRandom random)
    {
        int at = _sets.Length == 0 ? 0 : random.Below(_sets.Length);
        for (int left = Math.Min(most, _sets.Length); left > 0; left--)
        {
            if ((_sets[at] & ~open) == 0)
            {
                return _parts[at];
            }

            at = at + 1 == _sets.Length ? 0 : at + 1;
        }

        return null;
    }
}
