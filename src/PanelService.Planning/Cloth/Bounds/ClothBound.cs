// Problem: a lower bound of what cloth costs that holds for lengths of any number of steps.
// Idea:    give every piece a worth such that no length, roll or remnant holds more than a known worth: seen from one
//          cloth, a piece is worth the cost of the length of it that it takes up at the least (DualFeasible). That gives
//          an inequality over the counts of all goods, each cloth and some groups of cloths give their own, and the
//          cheapest whole counts that meet them all cost no more than any plan (CoverSearch).
// Source:  surrogate constraints (Glover 1975) over the bar relaxation of strip packing (Scheithauer 1999).
// Cost:    a knapsack per good and inequality; an exact pattern per remnant once.
// Not:     the best worths there are: they come from a family of functions, not from a linear programme.
using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Cloth.Bounds;

/// <summary>What cloth costs at the least, whatever the lengths bought.</summary>
internal static class ClothBound
{
    private const int MostGoodsApart = 8;
    private const int MostParts = 6;

    /// <summary>The bound.</summary>
    /// <param name="order">The order.</param>
    /// <param name="request">How many of each line at what size; ready-made ones at their prices.</param>
    /// <param name="below">A plan of this price is known; the bound does not pass it.</param>
    /// <param name="cancellation">Ends what takes long; the bound stays true, and is lower.</param>
    public static Money Of(Order order, CutRequest request, Money below, CancellationToken cancellation = default)
    {
        var pieces = ClothPieces.Of(order, request);
        var goods = ClothGood.AllOf(order);
        ImmutableArray<int> forSale = [.. Enumerable.Range(0, goods.Length).Where(g => !goods[g].IsRemnant)];
        if (pieces.IsEmpty || forSale.IsEmpty)
        {
            return Money.Zero;
        }

        ImmutableArray<long?> ready = [.. pieces.Select(piece => request.ReadyFor(piece.LineNumber)?.Price.Minor)];
        var worths = new ClothWorths(pieces, goods, ready, cancellation);
        var everything = Enumerable.Range(0, pieces.Length).ToImmutableHashSet();
        var first = worths.Inequality(forSale, everything, exactRemnants: true);
        var others = Groups(goods, forSale).Select(group => worths.Inequality(group, everything, exactRemnants: false));
        var parts = PartsOf(pieces, goods).SelectMany(part =>
            Groups(goods, forSale).Prepend(forSale).Select(group => worths.Inequality(group, part, exactRemnants: false)));
        bool mayPay = ready.Any(price => price is not null);
        long least = CoverSearch.LeastPrice(goods, [first, .. others, .. parts], mayPay, below.Minor);
        return new Money(Math.Min(below.Minor, Math.Max(least, ByOneInequality(goods, first))));
    }

    /// <summary>
    /// Pieces that the same goods serve, where not all pieces are alike in that: what serves only some of them may
    /// not make up for the others.
    /// </summary>
    private static List<ImmutableHashSet<int>> PartsOf(ImmutableArray<ClothPieces> pieces, ImmutableArray<ClothGood> goods)
    {
        var parts = Enumerable.Range(0, pieces.Length)
            .GroupBy(i => string.Concat(goods.Select(good => pieces[i].WaysOn(good.Cloth, good.Usable).Any() ? '1' : '0')), StringComparer.Ordinal)
            .Select(group => group.ToImmutableHashSet())
            .ToList();
        return parts.Count is > 1 and <= MostParts ? parts : [];
    }

    /// <summary>Groups of goods to see the pieces from, besides all of them together.</summary>
    private static IEnumerable<ImmutableArray<int>> Groups(ImmutableArray<ClothGood> goods, ImmutableArray<int> forSale)
    {
        if (forSale.Length is 1 or > MostGoodsApart)
        {
            return [];
        }

        var singles = forSale.Select(g => ImmutableArray.Create(g));
        var allButOne = forSale.Length > 2 ? forSale.Select(g => forSale.Remove(g)) : [];
        ImmutableArray<int> byLength = [.. forSale.Where(g => goods[g].IsStep)];
        return singles.Concat(allButOne).Concat(byLength.Length > 1 ? [byLength] : []);
    }

    // Seen from all goods for sale, none holds more than it costs: what the remnants do not hold is paid for.
    private static long ByOneInequality(ImmutableArray<ClothGood> goods, CoverInequality seenFromAll)
    {
        double free = 0;
        for (int g = 0; g < goods.Length; g++)
        {
            free += goods[g].IsRemnant ? Math.Max(0, seenFromAll.Holds[g] - goods[g].Price) * goods[g].Most!.Value : 0;
        }

        return (long)Math.Max(0, Math.Ceiling(seenFromAll.Needs - free));
    }
}
