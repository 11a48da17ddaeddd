namespace PanelService.Benchmarks;

/// <summary>
/// The generator behind every drawn suite: xorshift64* (Vigna, "An experimental exploration of Marsaglia's xorshift
/// generators, scrambled", ACM TOMS 42, 2016; shifts 12, 25, 27, multiplier 0x2545F4914F6CDD1D). Our own, so that
/// the suites stay the same on every runtime; the seed is spread by one SplitMix64 step.
/// </summary>
public sealed class Xorshift
{
    private ulong state;

    /// <summary>Starts a sequence.</summary>
    /// <param name="seed">Any number; the same seed gives the same sequence for ever.</param>
    public Xorshift(ulong seed) => state = Spread(seed);

    /// <summary>The sequence behind one case of a drawn suite.</summary>
    /// <param name="number">The case's own, 0 to 9,999, over all suites.</param>
    /// <param name="draw">Which draw; another gives every case another seed.</param>
    public static Xorshift Drawn(int number, int draw) => new((ulong)number + (10_000 * (ulong)draw));

    /// <summary>A whole number, both ends included.</summary>
    /// <param name="low">Least.</param>
    /// <param name="high">Greatest; not below <paramref name="low"/>.</param>
    public int Between(int low, int high) => low + (int)(Next() % (ulong)(high - low + 1));

    /// <summary>One of a list, all equally likely.</summary>
    /// <param name="list">At least one thing.</param>
    public T Pick<T>(IReadOnlyList<T> list) => list[Between(0, list.Count - 1)];

    /// <summary>Different things of a list, in drawn order.</summary>
    /// <param name="list">What to draw from.</param>
    /// <param name="count">How many; at most all of them are drawn.</param>
    public T[] Draw<T>(IReadOnlyList<T> list, int count)
    {
        T[] shuffled = [.. list];
        int drawn = Math.Min(count, shuffled.Length);
        for (int i = 0; i < drawn; i++)
        {
            int j = Between(i, shuffled.Length - 1);
            (shuffled[i], shuffled[j]) = (shuffled[j], shuffled[i]);
        }

        return shuffled[..drawn];
    }

    private ulong Next()
    {
        unchecked
        {
            state ^= state >> 12;
            state ^= state << 25;
            state ^= state >> 27;
            return (state * 0x2545F4914F6CDD1DUL) >> 1;
        }
    }

    private static ulong Spread(ulong seed)
    {
        unchecked
        {
            ulong z = seed + 0x9E3779B97F4A7C15UL;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            z ^= z >> 31;
            return z == 0 ? 1 : z;
        }
    }
}
