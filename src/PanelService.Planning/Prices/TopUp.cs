// Problem: the cheapest goods that make up a missing amount, for less than a charge.
// Idea:    which sums below the charge can be reached, sum by sum: the bounded knapsack by dynamic programming.
// Source:  Martello and Toth, Knapsack Problems, 1990.
// Cost:    sums × goods; charges too large for that are not topped up.
using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Prices;

/// <summary>Makes up a missing amount.</summary>
internal static class TopUp
{
    private const long MostSummed = 500_000;

    /// <summary>The cheapest goods; none where the charge is cheaper.</summary>
    /// <param name="items">What there is.</param>
    /// <param name="missing">The amount; above zero.</param>
    /// <param name="below">The goods must cost less than this.</param>
    public static ImmutableArray<Surplus> Cheapest(ImmutableArray<TopUpItem> items, Money missing, Money below)
    {
        if (missing >= below || below.Minor > MostSummed)
        {
            return [];
        }

        int[] last = Reach(items, below.Minor);
        long sum = missing.Minor;
        while (sum < below.Minor && last[sum] < 0)
        {
            sum++;
        }

        return sum == below.Minor ? [] : Taken(items, last, sum);
    }

    /// <summary>Per sum: the item last added to reach it; -1 where it cannot be reached.</summary>
    private static int[] Reach(ImmutableArray<TopUpItem> items, long below)
    {
        int[] last = [.. Enumerable.Repeat(-1, (int)below)];
        int[] used = new int[below];
        last[0] = items.Length;
        for (int item = 0; item < items.Length; item++)
        {
            long price = items[item].Price.Minor;
            for (long sum = price; sum < below; sum++)
            {
                int before = last[sum - price] == item ? used[sum - price] : 0;
                if (last[sum] < 0 && last[sum - price] >= 0 && before < (items[item].Most ?? int.MaxValue))
                {
                    (last[sum], used[sum]) = (item, before + 1);
                }
            }
        }

        return last;
    }

    private static ImmutableArray<Surplus> Taken(ImmutableArray<TopUpItem> items, int[] last, long sum)
    {
        var counts = new int[items.Length];
        for (long rest = sum; rest > 0; rest -= items[last[rest]].Price.Minor)
        {
            counts[last[rest]]++;
        }

        return
        [
            .. items.Select((item, i) => new Surplus(item.Id, item.Unit, counts[i], item.Price, SurplusReason.FreeDelivery))
                .Where(surplus => surplus.Quantity > 0),
        ];
    }
}

/// <summary>A good that can be bought on top.</summary>
/// <param name="Id">The board or cloth.</param>
/// <param name="Unit">What it is counted in.</param>
/// <param name="Price">The price of one; above zero.</param>
/// <param name="Most">How many more can be bought; null: any number.</param>
internal sealed record TopUpItem(string Id, SaleUnit Unit, Money Price, int? Most);
