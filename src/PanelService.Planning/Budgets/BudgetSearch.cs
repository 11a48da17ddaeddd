// Problem: of an order's panels, the ones that are worth most together and whose shop trip stays within a budget.
// Idea:    what is worth most by its area comes first, as many as the budget is enough for: a choice is known early, and all
//          that is wanted is asked about only where half of it is within the budget. Then a panel left out costs a price in
//          proportion to its worth: making and leaving out are weighed inside the batch search, as ready-made panels are, and
//          its bound says that whoever stays within the budget leaves out panels of at least so much (LeaveOut). A few prices
//          give such inequalities and more choices. Then counts are gone through that could be worth more and break none of
//          them; each is asked of the engine, and since more panels never cost less, one answer settles many.
// Source:  Lagrangean relaxation: Geoffrion, Mathematical Programming Study 2, 1974.
// Cost:    a batch search for each price, a quick plan for each count asked about; both limited in number.
// Not:     the best where the limits or the engine's open bounds are in the way; the most possible then is a true bound.
using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Batches;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Prices;

namespace PanelService.Planning.Budgets;

/// <summary>Chooses what is made within a budget.</summary>
internal sealed class BudgetSearch
{
    private const int FirstPart = 64;
    private const int Prices = 6;
    private const int MostNodes = 300_000;

    private readonly Order _order;
    private readonly Search _search;
    private readonly Money _budget;
    private readonly ImmutableArray<int> _wanted;
    private readonly ImmutableArray<long> _worths;
    private readonly CountCash _cash;
    private readonly List<LeaveOut> _leaveOuts = [];
    private ImmutableArray<int> _best;
    private bool _open;
    private int _nodes;

    /// <summary>Starts with nothing made.</summary>
    /// <param name="order">The order, its tax in the prices and its budget set.</param>
    /// <param name="worths">Per line: what one is worth.</param>
    /// <param name="search">When to stop.</param>
    public BudgetSearch(Order order, ImmutableArray<long> worths, Search search)
    {
        (_order, _worths, _search, _budget) = (order, worths, search.Quietly(), order.Budget!.Value);
        _wanted = [.. order.Panels.Select(line => line.Quantity)];
        _best = [.. new int[_wanted.Length]];
        _cash = new CountCash(order, _search);
    }

    /// <summary>Chooses.</summary>
    /// <returns>Per line how many; and the most that any choice can be worth.</returns>
    public (ImmutableArray<int> Made, long MostPossible) Choose()
    {
        AddDensest();
        if (WorthOf(_best) == WorthOf(_wanted))
        {
            return (_best, WorthOf(_best));
        }

        TryPrices();
        AddSingles();
        TryCounts(0, [.. new int[_wanted.Length]], 0);
        long most = _open ? Math.Max(WorthOf(_best), MostByLeavingOut()) : WorthOf(_best);
        return (_best, most);
    }

    /// <summary>The plan by which counts are known to be within the budget, quickly made; null: they are known by others.</summary>
    public BatchChoice? KnownFor(ImmutableArray<int> counts) => _cash.KnownFor(counts);

    private int MostRuns => _order.Effort switch
    {
        Effort.Quick => 60,
        Effort.Steady => 200,
        _ => 800,
    };

    private long WorthOf(ImmutableArray<int> counts) => counts.Zip(_worths, (count, worth) => count * worth).Sum();

    /// <summary>A share of the panels, what is worth most by its area first: doubled while it is within the budget, then halved.</summary>
    private void AddDensest()
    {
        ImmutableArray<int> lines =
        [
            .. Enumerable.Range(0, _wanted.Length)
                .OrderByDescending(i => _worths[i] / _order.Panels[i].Area.SquareMetres)
                .ThenBy(i => i),
        ];
        long all = _wanted.Sum(count => (long)count);
        long enough = 0;
        long tried = Math.Max(1, all / FirstPart);
        long tooMany = all + 1;
        while (enough < all && tooMany - enough > Math.Max(1, all / (2 * FirstPart)) && !Exhausted)
        {
            var counts = FirstOf(lines, tried);
            if (_cash.IsEnough(counts, _budget) == true)
            {
                (_best, enough) = (counts, tried);
            }
            else
            {
                tooMany = tried;
            }

            tried = tooMany > all ? Math.Min(all, 2 * enough) : (enough + tooMany) / 2;
        }
    }

    private ImmutableArray<int> FirstOf(ImmutableArray<int> lines, long panels)
    {
        int[] counts = new int[_wanted.Length];
        foreach (int line in lines)
        {
            counts[line] = (int)Math.Min(_wanted[line], panels);
            panels -= counts[line];
        }

        return [.. counts];
    }

    /// <summary>Prices for what is left out, halving between too low (all is left out) and too high.</summary>
    private void TryPrices()
    {
        var all = ShopSearch.Cheapest(CountCash.Of(_order, _wanted) with { Effort = Effort.Quick }, _search);
        double low = 0;
        double high = all.Best.Complete ? 8.0 * all.Spent.Minor / Math.Max(1, WorthOf(_wanted)) : 8.0 * _budget.Minor / Math.Max(1, _worths.Max());
        for (int i = 0; i < Prices && !_search.Cancellation.IsCancellationRequested; i++)
        {
            double rate = (low + high) / (i == 0 ? 8 : 2);
            ImmutableArray<long> prices = [.. _worths.Select(worth => (long)Math.Round(worth * rate))];
            var choice = ShopSearch.Cheapest(LeaveOut.Offered(_order, prices), _search);
            if (!choice.Best.Complete)
            {
                return;
            }

            _leaveOuts.Add(new LeaveOut(prices, choice.LeastPossible - _budget));
            bool within = _cash.IsEnough(choice.Best.Made, _budget) == true;
            Take(within ? choice.Best.Made : _best);
            (low, high) = within ? (rate, high) : (low, rate);
        }
    }

    /// <summary>One more of a line as long as that is within the budget, what is worth most first.</summary>
    private void AddSingles()
    {
        bool better = true;
        while (better && !Exhausted)
        {
            better = false;
            foreach (int line in Enumerable.Range(0, _wanted.Length).OrderByDescending(i => _worths[i]))
            {
                while (_best[line] < _wanted[line] && !Exhausted && IsWithin(_best.SetItem(line, _best[line] + 1)))
                {
                    Take(_best.SetItem(line, _best[line] + 1));
                    better = true;
                }
            }
        }
    }

    private bool Exhausted => _cash.Runs >= MostRuns || _search.Cancellation.IsCancellationRequested;

    private bool IsWithin(ImmutableArray<int> counts) =>
        _leaveOuts.All(one => one.Allows(counts, _wanted)) && _cash.IsEnough(counts, _budget) == true;

    private void Take(ImmutableArray<int> counts) => _best = WorthOf(counts) > WorthOf(_best) ? counts : _best;

    /// <summary>Goes through all counts that may be worth more than the best, line after line.</summary>
    private void TryCounts(int line, ImmutableArray<int> counts, long worth)
    {
        if (_open && (Exhausted || _nodes > MostNodes))
        {
            return;
        }

        long rest = 0;
        for (int i = line; i < _wanted.Length; i++)
        {
            rest += _worths[i] * _wanted[i];
        }

        if (worth + rest <= WorthOf(_best) || _leaveOuts.Any(one => !one.Allows(counts, _wanted)))
        {
            return;
        }

        _nodes++;
        _open |= Exhausted || _nodes > MostNodes;
        if (line == _wanted.Length)
        {
            TryOne(counts);
            return;
        }

        for (int count = _wanted[line]; count >= 0; count--)
        {
            TryCounts(line + 1, counts.SetItem(line, count), worth + (count * _worths[line]));
        }
    }

    private void TryOne(ImmutableArray<int> counts)
    {
        switch (_cash.IsEnough(counts, _budget, ask: !Exhausted))
        {
            case true:
                Take(counts);
                break;
            case null:
                _open = true;
                break;
        }
    }

    private long MostByLeavingOut() => _leaveOuts
        .Select(one => one.MostWorth(_worths, _wanted))
        .Append(WorthOf(_wanted))
        .Min();
}
