using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Budgets;

/// <summary>
/// Whoever stays within the budget leaves out panels of at least <paramref name="Least"/> at these prices: with them at
/// that price to be had, no batch costs less than the budget and that.
/// </summary>
/// <param name="Prices">Per line: the price of leaving one out.</param>
/// <param name="Least">What is left out comes to this or more.</param>
internal sealed record LeaveOut(ImmutableArray<long> Prices, Money Least)
{
    /// <summary>The order in which every panel may be left out at its price.</summary>
    public static Order Offered(Order order, ImmutableArray<long> prices) => order with
    {
        Budget = null,
        Panels = [.. order.Panels.Zip(prices, (line, price) => line with { ShopPrice = new Money(price), MayBuy = true })],
    };

    /// <summary>Whether counts leave out enough; lines not decided yet count as left out.</summary>
    public bool Allows(ImmutableArray<int> counts, ImmutableArray<int> wanted)
    {
        long left = 0;
        for (int i = 0; i < counts.Length; i++)
        {
            left += Prices[i] * (wanted[i] - counts[i]);
        }

        return left >= Least.Minor;
    }

    /// <summary>The most that counts which leave out enough can be worth: in fractions of panels, rounded down.</summary>
    public long MostWorth(ImmutableArray<long> worths, ImmutableArray<int> wanted)
    {
        decimal missing = Least.Minor;
        decimal lost = 0;
        foreach (int i in Enumerable.Range(0, wanted.Length).Where(i => Prices[i] > 0).OrderBy(i => (decimal)worths[i] / Prices[i]))
        {
            decimal left = Math.Min(wanted[i], Math.Max(0, missing) / Prices[i]);
            lost += left * worths[i];
            missing -= left * Prices[i];
        }

        decimal all = worths.Zip(wanted, (worth, count) => (decimal)worth * count).Sum();
        return (long)Math.Floor(all - lost + 0.000_001m);
    }
}
