using System.Numerics;

namespace PanelService.Cutting.Patterns;

/// <summary>A row of bits that can be joined with shifted copies of itself: reachable sums.</summary>
internal sealed class BitRow(int length)
{
    private readonly ulong[] _words = new ulong[(length + 63) / 64];
    private readonly ulong[] _before = new ulong[(length + 63) / 64];

    /// <summary>Sets one bit.</summary>
    /// <param name="at">Its place, from 0.</param>
    public void Set(int at) => _words[at >> 6] |= 1UL << (at & 63);

    /// <summary>Joins the row with itself moved up by <paramref name="first"/> and, where given, by <paramref name="second"/>.</summary>
    /// <param name="first">A shift, above 0.</param>
    /// <param name="second">Another, or null.</param>
    /// <returns>Whether any bit was new.</returns>
    public bool OrShifted(long first, long? second)
    {
        _words.CopyTo(_before, 0);
        bool changed = Or(first);
        return (second is { } other && other != first && Or(other)) || changed;
    }

    /// <summary>The places of the set bits, rising.</summary>
    public IEnumerable<long> Ones()
    {
        for (int word = 0; word < _words.Length; word++)
        {
            ulong bits = _words[word];
            while (bits != 0)
            {
                int place = (word << 6) + BitOperations.TrailingZeroCount(bits);
                if (place < length)
                {
                    yield return place;
                }

                bits &= bits - 1;
            }
        }
    }

    private bool Or(long shift)
    {
        if (shift >= length)
        {
            return false;
        }

        int words = (int)(shift >> 6);
        int bits = (int)(shift & 63);
        bool changed = false;
        for (int to = words; to < _words.Length; to++)
        {
            ulong moved = _before[to - words] << bits;
            if (bits > 0 && to > words)
            {
                moved |= _before[to - words - 1] >> (64 - bits);
            }

            changed |= (moved & ~_words[to]) != 0;
            _words[to] |= moved;
        }

        return changed;
    }
}
