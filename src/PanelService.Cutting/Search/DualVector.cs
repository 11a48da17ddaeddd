// Problem: a lower bound that survives floating point.
// Idea:    any values p ≥ 0 of the pieces give one. If no pattern of stock s is worth more than z(s), a plan that uses
//          n(s) of it and covers the demand d has Σ z(s) n(s) ≥ Σ d p, so it costs at least
//          Σ d p + Σ min over allowed n(s) of n(s) (c(s) − z(s)). Where an unlimited stock has z(s) > c(s), the values
//          are scaled down until it has not. Everything is whole numbers: the values are duals rounded down to
//          multiples of a power of two, z(s) comes from the exact programme.
// Source:  Farley, Operations Research 38 (1990); Lagrangian relaxation of the covering rows.
// Cost:    linear in stocks and pieces once z is known.
using System.Numerics;

namespace PanelService.Cutting.Search;

/// <summary>Values of the pieces with the best pattern value of every stock under them: one valid inequality.</summary>
/// <param name="Values">Value of one of each type in units of 2^−<paramref name="Shift"/> price units, 0 or more.</param>
/// <param name="Shift">The power of two; may be negative for very large prices.</param>
/// <param name="Best">Per stock: no pattern of it is worth more than this, in the same units.</param>
internal sealed record DualVector(int[] Values, int Shift, long[] Best)
{
    /// <summary>The demand's value in the vector's units.</summary>
    /// <param name="demand">Demand per type.</param>
    public Int128 Covered(ReadOnlySpan<int> demand)
    {
        Int128 sum = 0;
        for (int i = 0; i < Values.Length; i++)
        {
            sum += (Int128)Values[i] * demand[i];
        }

        return sum;
    }

    /// <summary>How much less a column is worth than the most that its stock can be.</summary>
    /// <param name="column">The column.</param>
    public long Loss(Column column)
    {
        long loss = Best[column.Stock];
        for (int t = 0; t < Values.Length; t++)
        {
            loss -= (long)column.Counts[t] * Values[t];
        }

        return loss;
    }

    /// <summary>How much stocks can be worth more than a demand: what a plan within them may waste.</summary>
    /// <param name="demand">Demand per type.</param>
    /// <param name="counts">How many of each stock there are.</param>
    /// <returns>Below 0 where there is no such plan.</returns>
    public Int128 Spare(ReadOnlySpan<int> demand, ReadOnlySpan<int> counts)
    {
        var spare = -Covered(demand);
        for (int s = 0; s < counts.Length; s++)
        {
            spare += (Int128)counts[s] * Best[s];
        }

        return spare;
    }

    /// <summary>What a plan within stocks may waste, as a part of the demand's value.</summary>
    /// <param name="demand">Demand per type.</param>
    /// <param name="counts">How many of each stock there are.</param>
    public double Share(ReadOnlySpan<int> demand, ReadOnlySpan<int> counts) => (double)Spare(demand, counts) / (double)Covered(demand);

    /// <summary>The least price of any plan within a box, rounded up to whole price units.</summary>
    /// <param name="model">The model.</param>
    /// <param name="demand">What is to be covered.</param>
    /// <param name="box">How many of each stock may be used.</param>
    public long Bound(Model model, ReadOnlySpan<int> demand, StockBox box)
    {
        var (shrinkTo, shrinkFrom) = Shrink(model, box);
        var sum = (BigInteger)Covered(demand) * Unit * shrinkTo;
        for (int s = 0; s < Best.Length; s++)
        {
            var gain = (Priced(model.Stock(s).Price) * shrinkFrom) - ((BigInteger)Best[s] * Unit * shrinkTo);
            sum += gain * (gain.Sign < 0 ? box.Most[s] : box.Least[s]);
        }

        return (long)CeilingOfQuotient(sum, shrinkFrom << Math.Max(0, Shift));
    }

    /// <summary>One unit's weight beside prices raised by <see cref="Priced"/>: above 1 only where the shift is negative.</summary>
    private BigInteger Unit => BigInteger.One << Math.Max(0, -Shift);

    private BigInteger Priced(long price) => (BigInteger)price << Math.Max(0, Shift);

    /// <summary>The factor, as a fraction, that brings every unlimited stock's best value down to its price.</summary>
    private (BigInteger To, BigInteger From) Shrink(Model model, StockBox box)
    {
        BigInteger to = 1;
        BigInteger from = 1;
        for (int s = 0; s < Best.Length; s++)
        {
            var price = Priced(model.Stock(s).Price);
            var best = Best[s] * Unit;
            if (box.Most[s] == StockBox.Unlimited && price * from < best * to)
            {
                (to, from) = (price, best);
            }
        }

        return (to, from);
    }

    private static BigInteger CeilingOfQuotient(BigInteger a, BigInteger b)
    {
        var quotient = BigInteger.DivRem(a, b, out var rest);
        return rest.Sign > 0 ? quotient + 1 : quotient;
    }
}
