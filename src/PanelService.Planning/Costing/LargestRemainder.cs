using System.Collections.Immutable;
using System.Numerics;
using PanelService.Planning.Measures;

namespace PanelService.Planning.Costing;

/// <summary>
/// Parts an amount in whole minor units by weights: everyone gets their share rounded down, and what is left goes
/// one unit each to the largest remainders, the first of equal ones first. The parts add up exactly.
/// Source: the largest-remainder method (Hamilton 1792). Exact integers throughout.
/// </summary>
internal static class LargestRemainder
{
    /// <summary>Parts an amount.</summary>
    /// <param name="total">The amount, 0 or more.</param>
    /// <param name="weights">One weight a part, 0 or more; at least one above 0 where the amount is not zero.</param>
    /// <returns>One part per weight, in the same order.</returns>
    /// <exception cref="ArgumentException">There is an amount and no weight to part it by.</exception>
    public static ImmutableArray<Money> Share(Money total, IReadOnlyList<BigInteger> weights)
    {
        var sum = weights.Aggregate(BigInteger.Zero, (a, b) => a + b);
        if (sum.IsZero)
        {
            return total == Money.Zero
                ? [.. weights.Select(_ => Money.Zero)]
                : throw new ArgumentException("An amount needs a weight to be parted by.", nameof(weights));
        }

        var parts = new long[weights.Count];
        var remainders = new BigInteger[weights.Count];
        for (int i = 0; i < parts.Length; i++)
        {
            parts[i] = (long)BigInteger.DivRem(total.Minor * weights[i], sum, out remainders[i]);
        }

        HandOutRest(total.Minor - parts.Sum(), parts, remainders);
        return [.. parts.Select(part => new Money(part))];
    }

    private static void HandOutRest(long rest, long[] parts, BigInteger[] remainders)
    {
        // OrderBy is stable: equal remainders are served in their order.
        foreach (int i in Enumerable.Range(0, parts.Length).OrderByDescending(i => remainders[i]).Take((int)rest))
        {
            parts[i]++;
        }
    }
}
