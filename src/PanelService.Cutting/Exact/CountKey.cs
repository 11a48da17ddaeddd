// Problem: patterns are joined and held against the limits of their pieces' counts some hundred million times.
// Idea:    all counts in one word of 256 bits, a field each: one addition joins, one more tells by the fields' highest bits
//          whether a limit is passed.
// Source:  arithmetic on fields within a word: Lamport, Communications of the ACM 18 (1975).
// Cost:    two additions a join.
// Not:     where the limits together need more bits: what has no field is not counted, and the key says so.
using System.Runtime.Intrinsics;

namespace PanelService.Cutting.Exact;

/// <summary>
/// Packs how many of each piece a pattern holds into 256 bits, so that two patterns are joined by one addition and
/// checked against every limit by one more. A field is wide enough for twice its limit; the bias that is added lifts
/// its highest bit exactly where the limit is passed.
/// </summary>
internal sealed class CountKey
{
    private const int Lanes = 4;

    private readonly int[] _lane;
    private readonly int[] _shift;
    private readonly int[] _mask;

    /// <summary>Lays the fields out.</summary>
    /// <param name="limits">Per piece, its limit; 0 or less: not counted.</param>
    public CountKey(ReadOnlySpan<int> limits)
    {
        _lane = new int[limits.Length];
        _shift = new int[limits.Length];
        _mask = new int[limits.Length];
        ulong[] bias = new ulong[Lanes];
        ulong[] guard = new ulong[Lanes];
        int[] used = new int[Lanes];
        for (int i = 0; i < limits.Length; i++)
        {
            _lane[i] = -1;
            int bits = limits[i] <= 0 ? 0 : 33 - System.Numerics.BitOperations.LeadingZeroCount((uint)limits[i]);
            int lane = Array.FindIndex(used, u => u + bits <= 64);
            if (bits == 0 || bits > 31 || lane < 0)
            {
                Complete &= limits[i] <= 0;
                continue;
            }

            (_lane[i], _shift[i], _mask[i]) = (lane, used[lane], (1 << bits) - 1);
            bias[lane] |= (ulong)((1 << (bits - 1)) - 1 - limits[i]) << used[lane];
            guard[lane] |= 1UL << (used[lane] + bits - 1);
            used[lane] += bits;
        }

        Bias = Vector256.Create(bias);
        Guard = Vector256.Create(guard);
    }

    /// <summary>Whether every limit found room.</summary>
    public bool Complete { get; } = true;

    /// <summary>What lifts the highest bit of every field that is beyond its limit.</summary>
    public Vector256<ulong> Bias { get; }

    /// <summary>The highest bits.</summary>
    public Vector256<ulong> Guard { get; }

    /// <summary>Whether a piece is counted.</summary>
    /// <param name="piece">The piece.</param>
    public bool Counts(int piece) => _lane[piece] >= 0;

    /// <summary>One of a piece; nothing where it is not counted.</summary>
    /// <param name="piece">The piece.</param>
    public Vector256<ulong> One(int piece) => _lane[piece] < 0
        ? Vector256<ulong>.Zero
        : Vector256<ulong>.Zero.WithElement(_lane[piece], 1UL << _shift[piece]);

    /// <summary>How many of a counted piece a key holds.</summary>
    /// <param name="key">The key.</param>
    /// <param name="piece">The piece.</param>
    public int Count(Vector256<ulong> key, int piece) => (int)((key[_lane[piece]] >> _shift[piece]) & (ulong)_mask[piece]);
}
