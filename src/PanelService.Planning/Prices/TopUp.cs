// Problem: the cheapest goods that make up a missing amount, for less than a charge.
// Idea:    which sums below the charge can be reached, sum by sum and good by good: the knapsack with one choice of a number for
//          each good, by dynamic programming. What counts of a good is how much more all of it costs than the cheapest way of
//          buying what is cut: a number from which on the price is lower lowers what those cut cost, too. Within one level of its prices each more costs
//          the same, so a level is one pass over the sums.
// Source:  Martello and Toth, Knapsack Problems, 1990; Kellerer, Pferschy and Pisinger, Knapsack Problems, 2004, on choices.
// Cost:    sums × levels of all goods; charges too large for that are not topped up.
// Not:     liquids are not bought on top.
using System.Collections.Immutable;
using PanelService.Planning.Measures;

namespace PanelService.Planning.Prices;

/// <summary>Makes up a missing amount.</summary>
internal sealed class TopUp
{
    private const long MostSummed = 500_000;
    private const int Unreached = -1;

    private readonly ImmutableArray<TopUpItem> _items;

    // Per sum: the item last added to reach it, how many of it in all, and the sum before.
    private readonly int[] _last;
    private readonly int[] _count;
    private readonly int[] _before;

    private TopUp(ImmutableArray<TopUpItem> items, int below)
    {
        _items = items;
        _last = [.. Enumerable.Repeat(Unreached, below)];
        _count = new int[below];
        _before = new int[below];
        _last[0] = items.Length;
    }

    /// <summary>The cheapest goods; none where the charge is cheaper.</summary>
    /// <param name="items">What there is.</param>
    /// <param name="missing">The amount; above zero.</param>
    /// <param name="below">The goods must cost less than this.</param>
    public static ImmutableArray<OnTop> Cheapest(ImmutableArray<TopUpItem> items, Money missing, Money below) =>
        missing >= below || below.Minor > MostSummed ? [] : new TopUp(items, (int)below.Minor).Cheapest((int)missing.Minor);

    private ImmutableArray<OnTop> Cheapest(int missing)
    {
        for (int item = 0; item < _items.Length; item++)
        {
            foreach (var run in _items[item].Runs())
            {
                Reach(item, run);
            }
        }

        int sum = Array.FindIndex(_last, missing, last => last != Unreached);
        return sum < 0 ? [] : Taken(sum);
    }

    /// <summary>Marks the sums that numbers of an item at one price reach from sums without it.</summary>
    private void Reach(int item, TopUpRun run)
    {
        // Per sum: how many more than the run's first reach it; the fewest there can be.
        var more = new int[_last.Length];
        Array.Fill(more, Unreached);
        for (long sum = run.Cost; sum < _last.Length; sum++)
        {
            long from = sum - run.Cost;
            long one = sum - run.Price;
            if (_last[from] != Unreached && _last[from] != item)
            {
                more[sum] = 0;
            }
            else if (run.Price > 0 && one >= run.Cost && more[one] != Unreached && more[one] < run.More)
            {
                more[sum] = more[one] + 1;
            }
        }

        for (long sum = run.Cost; sum < _last.Length; sum++)
        {
            if (more[sum] != Unreached && _last[sum] == Unreached)
            {
                _last[sum] = item;
                _count[sum] = run.Count + more[sum];
                _before[sum] = (int)(sum - run.Cost - (run.Price * more[sum]));
            }
        }
    }

    private ImmutableArray<OnTop> Taken(int sum)
    {
        var taken = ImmutableArray.CreateBuilder<OnTop>();
        for (int rest = sum; rest > 0; rest = _before[rest])
        {
            var item = _items[_last[rest]];
            taken.Add(new OnTop(item.Id, item.Unit, _count[rest], item.Levels.At(_count[rest]), new Money(rest - _before[rest])));
        }

        taken.Reverse();
        return taken.ToImmutable();
    }
}
