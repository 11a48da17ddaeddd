// Problem: a shop charges once where anything is bought there; in which shops is the whole batch cheapest?
// Idea:    every set of charging shops is tried, the goods of the others not for sale. A plan that buys in just these shops
//          costs no less than the goods' bound and their charges, so the least over all sets bounds every plan. Where a shop
//          charges nothing from some amount on, such a plan either pays the charge or spends that amount there, and elsewhere
//          at least what everything costs with that shop's goods for nothing: the lower of the two bounds it; a plan that
//          falls short is topped up where that costs less than the charge.
// Cost:    one batch for each set whose charges, with the bound of all shops open, do not already cost more than the best.
// Not:     plans whose goods cost a little more so that they just reach the amount, but for goods bought on top; the bound
//          says by how much at most that is missed. Past a number of shops or sets the rest is bounded without them.
using System.Collections.Immutable;
using PanelService.Planning.Batches;
using PanelService.Planning.Boards;
using PanelService.Planning.Cloth;
using PanelService.Planning.Liquids;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Refusals;
using PanelService.Planning.Strips;

namespace PanelService.Planning.Prices;

/// <summary>Chooses the shops.</summary>
internal sealed class ShopSearch
{
    private const int MostShops = 8;

    private readonly Order _order;
    private readonly Search _search;
    private readonly ImmutableArray<Shop> _charging;
    private readonly BatchChoice _open;
    private BatchChoice _best;
    private Money _least = new(long.MaxValue);
    private readonly Dictionary<string, Money> _elsewhere = [];
    private readonly Dictionary<string, Money> _leastSums = [];
    private bool _untried;

    private ShopSearch(Order order, ImmutableArray<Shop> charging, BatchChoice open, Search search)
    {
        (_order, _charging, _open, _search) = (order, charging, open, search);
        _best = ShopBill.WithCharges(order, charging, open);
    }

    /// <summary>Chooses.</summary>
    public static BatchChoice Cheapest(Order order, Search search)
    {
        ImmutableArray<Shop> charging = [.. order.Shops.Where(shop => shop.Charge > Money.Zero && ShopGoods.Any(order, shop))];
        if (charging.IsEmpty)
        {
            return BatchPlanner.Cheapest(order, search);
        }

        var open = BatchPlanner.Cheapest(order, search.Quietly());
        return open.Best.Complete ? new ShopSearch(order, charging, open, search.Quietly()).Choose() : open;
    }

    private BatchChoice Choose()
    {
        int runs = 0;
        foreach (var set in Sets().OrderBy(set => Bound(set, _open.LeastPossible)))
        {
            Look(set, ref runs);
        }

        var floor = _untried || _least < _open.LeastPossible ? _open.LeastPossible : _least;
        return WithBoundsOfAllShops(_best with
        {
            LeastPossible = floor < _best.Spent ? floor : _best.Spent,
            ShopsOpen = _untried && floor < _best.Spent,
        });
    }

    private void Look(ImmutableArray<Shop> set, ref int runs)
    {
        var before = Bound(set, _open.LeastPossible);
        if (before >= _best.Spent)
        {
            return;
        }

        if (set.Length == _charging.Length)
        {
            Lower(before);
            return;
        }

        var order = ShopGoods.OnlyFrom(_order, _charging, set);
        if (Unfitting.Check(order) is not null || !CoversAsMuch(order))
        {
            return;
        }

        if (runs++ >= MostRuns.Of(_order.Effort) || _search.Cancellation.IsCancellationRequested)
        {
            _untried = true;
            return;
        }

        var choice = BatchPlanner.Cheapest(order, _search);
        Lower(choice.Best.Complete ? Bound(set, choice.LeastPossible) : before);
        if (choice.Best.Complete && ShopBill.WithCharges(_order, _charging, choice) is var real && real.Spent < _best.Spent)
        {
            _best = real;
        }
    }

    private void Lower(Money bound) => _least = bound < _least ? bound : _least;

    /// <summary>Whether the liquids there are without the other shops cover all that all shops' do.</summary>
    private bool CoversAsMuch(Order order)
    {
        ImmutableArray<int> all = [.. order.Panels.Select(line => line.Wanted)];
        return LiquidPlanner.Plan(order, all).Warnings.Length <= LiquidPlanner.Plan(_order, all).Warnings.Length;
    }

    private List<ImmutableArray<Shop>> Sets()
    {
        if (_charging.Length > MostShops)
        {
            _untried = true;
            return [[], .. _charging.Select(shop => ImmutableArray.Create(shop))];
        }

        return
        [
            .. Enumerable.Range(0, 1 << _charging.Length)
                .Select(bits => _charging.Where((_, i) => (bits & (1 << i)) != 0).ToImmutableArray()),
        ];
    }

    /// <summary>
    /// What no plan that buys in all of these shops, and in no other that charges, can spend less than: each shop that may
    /// charge nothing is looked at both ways.
    /// </summary>
    private Money Bound(ImmutableArray<Shop> set, Money goods)
    {
        ImmutableArray<Shop> mayBeFree = [.. set.Where(shop => shop.FreeFrom is not null)];
        var always = set.Except(mayBeFree).Aggregate(Money.Zero, (sum, shop) => sum + shop.Charge);
        var least = new Money(long.MaxValue);
        for (int bits = 0; bits < 1 << mayBeFree.Length; bits++)
        {
            var paid = Money.Zero;
            var spentThere = Money.Zero;
            for (int i = 0; i < mayBeFree.Length; i++)
            {
                bool free = (bits & (1 << i)) != 0;
                paid += free ? Money.Zero : mayBeFree[i].Charge;
                spentThere += free ? LeastSum(mayBeFree[i]) : Money.Zero;
            }

            var bound = (goods > spentThere ? goods : spentThere) + paid;
            if (bits > 0 && bound + always < _best.Spent)
            {
                spentThere += Elsewhere([.. mayBeFree.Where((_, i) => (bits & (1 << i)) != 0)]);
                bound = (goods > spentThere ? goods : spentThere) + paid;
            }

            least = bound < least ? bound : least;
        }

        return least + always;
    }

    // Eight shops ask for it some ten thousand times.
    private Money LeastSum(Shop shop)
    {
        if (!_leastSums.TryGetValue(shop.Id, out var least))
        {
            least = ShopGoods.LeastSum(_order, shop);
            _leastSums.Add(shop.Id, least);
        }

        return least;
    }

    /// <summary>What any plan spends at the least on what it does not buy in these shops; nothing where too many were asked about.</summary>
    private Money Elsewhere(ImmutableArray<Shop> shops)
    {
        string key = string.Join('\n', shops.Select(shop => shop.Id));
        if (!_elsewhere.TryGetValue(key, out var least))
        {
            if (_elsewhere.Count >= MostRuns.Of(_order.Effort) || _search.Cancellation.IsCancellationRequested)
            {
                return Money.Zero;
            }

            var choice = BatchPlanner.Cheapest(ShopGoods.ForNothing(_order, shops), _search);
            least = choice.Best.Complete ? choice.LeastPossible : Money.Zero;
            _elsewhere.Add(key, least);
        }

        return least;
    }

    /// <summary>What boards, cloth and strips can cost at the least is said of all goods there are, not of these shops' alone.</summary>
    private BatchChoice WithBoundsOfAllShops(BatchChoice choice)
    {
        if (ReferenceEquals(choice.Best, _open.Best))
        {
            return choice;
        }

        var made = choice.Best.Made;
        var boards = BoardPlanner.Plan(_order, made, ready: [], _search).Outcome;
        var cloth = ClothPlanner.Plan(_order, made, ready: [], _search).Outcome;
        var strips = StripPlanner.Plan(_order, made, _search.Cancellation).Outcome;
        return choice with
        {
            Best = choice.Best with
            {
                Strips = choice.Best.Strips with { Outcome = choice.Best.Strips.Outcome.BoundedBy(strips) },
                Boards = choice.Best.Boards with { Outcome = choice.Best.Boards.Outcome.BoundedBy(boards) },
                Cloth = choice.Best.Cloth with { Outcome = choice.Best.Cloth.Outcome.BoundedBy(cloth) },
            },
        };
    }
}
