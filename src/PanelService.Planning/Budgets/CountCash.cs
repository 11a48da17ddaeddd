using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Batches;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Prices;

namespace PanelService.Planning.Budgets;

/// <summary>What so many of each line cost in cash, remembered. More panels never cost less: known counts answer for others.</summary>
internal sealed class CountCash(Order order, Search search)
{
    private readonly List<(ImmutableArray<int> Counts, BatchChoice Choice)> _enough = [];
    private readonly List<ImmutableArray<int>> _tooMany = [];

    /// <summary>How often the engine was asked.</summary>
    public int Runs { get; private set; }

    /// <summary>The order with so many of each line, what is on hand at no value, and nothing said of a budget.</summary>
    public static Order Of(Order order, ImmutableArray<int> counts) => order with
    {
        Budget = null,
        Panels = [.. order.Panels.Zip(counts).Where(pair => pair.Second > 0).Select(pair => pair.First with { Quantity = pair.Second })],
    };

    /// <summary>Whether a budget is enough for so many: known, known not to be, or null.</summary>
    /// <param name="counts">Per line.</param>
    /// <param name="budget">The budget.</param>
    /// <param name="ask">Whether the engine may be asked where nothing is known.</param>
    public bool? IsEnough(ImmutableArray<int> counts, Money budget, bool ask = true)
    {
        if (counts.All(count => count == 0) || _enough.Any(known => Covers(known.Counts, counts)))
        {
            return true;
        }

        return _tooMany.Any(known => Covers(counts, known)) ? false : ask ? Ask(counts, budget) : null;
    }

    /// <summary>The plan by which so many are known to be within the budget; null: others say so.</summary>
    public BatchChoice? KnownFor(ImmutableArray<int> counts) => _enough.Find(known => known.Counts.SequenceEqual(counts)).Choice;

    private bool? Ask(ImmutableArray<int> counts, Money budget)
    {
        Runs++;
        var choice = ShopSearch.Cheapest(Of(order, counts) with { Effort = Effort.Quick }, search);
        if (choice.Best.Complete && choice.Spent <= budget)
        {
            _enough.Add((counts, choice));
            return true;
        }

        if (choice.Best.Complete && choice.LeastPossible > budget)
        {
            _tooMany.Add(counts);
            return false;
        }

        return null;
    }

    private static bool Covers(ImmutableArray<int> more, ImmutableArray<int> fewer)
    {
        for (int i = 0; i < more.Length; i++)
        {
            if (more[i] < fewer[i])
            {
                return false;
            }
        }

        return true;
    }
}
