namespace PanelService.Cutting.Many;

/// <summary>
/// A seeded stream of random numbers that is the same on every machine and in every version of the runtime:
/// xorshift64* (Vigna, ACM Transactions on Mathematical Software 42, 2016).
/// </summary>
/// <param name="seed">The seed; 0 is taken as 1.</param>
internal sealed class SeededRandom(ulong seed)
{
    private ulong _state = seed == 0 ? 1 : seed;

    /// <summary>A whole number from 0 up to, not including, <paramref name="below"/>.</summary>
    /// <param name="below">Above 0.</param>
    public int Below(int below) => (int)(((Next() >> 32) * (ulong)below) >> 32);

    /// <summary>A number from 0 up to, not including, 1.</summary>
    public double Share() => (Next() >> 11) * (1.0 / (1UL << 53));

    private ulong Next()
    {
        unchecked
        {
            _state ^= _state >> 12;
            _state ^= _state << 25;
            _state ^= _state >> 27;
            return _state * 2685821657736338717UL;
        }
    }
}
