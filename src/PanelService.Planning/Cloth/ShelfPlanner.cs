// Problem: a plan that is there at once, to hold the engine's against: everything from one cloth.
// Idea:    pieces on shelves (Shelves), shelves on rolls (ShelfRoll); a cloth sold by length is bought in one length, unless
//          that would hold too many pieces to be drawn. The last roll is mostly not full: what is on it may come from
//          another cloth, where that costs less.
// Source:  first fit by decreasing height: Coffman, Garey, Johnson and Tarjan, SIAM J. Comput. 9, 1980.
// Cost:    lines × sorts of shelves, twice a cloth: millions of pieces are as quick as the lines they stand in.
// Not:     a good plan for mixed sizes; remnants are left alone.
using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Cloth;

/// <summary>Lays everything on shelves of one cloth.</summary>
internal static class ShelfPlanner
{
    // Every cloth with every other is tens of thousands of plans where there are hundreds of cloths.
    private const int MostOthers = 16;

    // Pieces lying, pieces standing.
    private static readonly bool[] _ways = [false, true];

    /// <summary>Plans for each cloth for sale that serves every piece and of which there is enough.</summary>
    /// <param name="order">The order.</param>
    /// <param name="pieces">The pieces, numbered as in the patterns.</param>
    public static IEnumerable<ImmutableArray<ClothPattern>> Plans(Order order, ImmutableArray<ClothPieces> pieces) =>
        order.Cloths.SelectMany(cloth => PlansOn(cloth, pieces).Select(plan => WithOtherEnd(order, cloth, plan, pieces)));

    private static IEnumerable<ImmutableArray<ClothPattern>> PlansOn(ClothSupply cloth, ImmutableArray<ClothPieces> pieces)
    {
        long usable = (cloth.Width - (cloth.Selvedge * 2)).Steps;
        return usable <= 0
            ? []
            : _ways
                .Select(upright => Shelves.Of(pieces, cloth, usable, upright))
                .OfType<List<Shelf>>()
                .Select(shelves => PlanOn(cloth, shelves))
                .Where(plan => !plan.IsEmpty);
    }

    private static ImmutableArray<ClothPattern> PlanOn(ClothSupply cloth, List<Shelf> shelves) => cloth.Sale switch
    {
        SaleByLength sale => InLengths(cloth, sale, shelves),
        SaleByRoll sale => RollByRoll(cloth, sale, shelves),
        _ => [],
    };

    private static ImmutableArray<ClothPattern> InLengths(ClothSupply cloth, SaleByLength sale, List<Shelf> shelves)
    {
        ImmutableArray<(ShelfRoll Roll, long Steps)> lengths =
            [.. ShelfRoll.Fill(shelves, long.MaxValue).Select(roll => (roll, (roll.Along + sale.Step.Steps - 1) / sale.Step.Steps))];
        return lengths.Sum(length => length.Steps * length.Roll.Copies) > (sale.AtMost ?? int.MaxValue)
            ? []
            : [.. lengths.Select(length => new ClothPattern(ClothStock.Of(cloth, sale, (int)length.Steps), length.Roll.ToBlock(), length.Roll.Copies))];
    }

    private static ImmutableArray<ClothPattern> RollByRoll(ClothSupply cloth, SaleByRoll sale, List<Shelf> shelves)
    {
        if (shelves.Any(shelf => shelf.Along > sale.Length.Steps))
        {
            return [];
        }

        ImmutableArray<ShelfRoll> rolls = [.. ShelfRoll.Fill(shelves, sale.Length.Steps)];
        return rolls.Sum(roll => (long)roll.Copies) > (sale.ForSale ?? int.MaxValue)
            ? []
            : [.. rolls.Select(roll => new ClothPattern(ClothStock.Of(cloth, sale), roll.ToBlock(), roll.Copies))];
    }

    private static ImmutableArray<ClothPattern> WithOtherEnd(
        Order order, ClothSupply cloth, ImmutableArray<ClothPattern> plan, ImmutableArray<ClothPieces> pieces)
    {
        var last = plan[^1];
        if (cloth.Sale is not SaleByRoll || last.Copies > 1)
        {
            return plan;
        }

        var held = PiecesOf(last.Block).CountBy(piece => piece.Piece).ToDictionary();
        ImmutableArray<ClothPieces> rest = [.. pieces.Select((piece, number) => piece with { Count = held.GetValueOrDefault(number) })];
        var cheapest = OthersOf(order, cloth)
            .SelectMany(other => PlansOn(other, rest))
            .Take(MostOthers * _ways.Length)
            .OrderBy(PriceOf).FirstOrDefault();
        return cheapest.IsDefault || PriceOf(cheapest) >= PriceOf([last]) ? plan : [.. plan[..^1], .. cheapest];
    }

    // Of very many the cheapest for their size come first.
    private static IEnumerable<ClothSupply> OthersOf(Order order, ClothSupply cloth)
    {
        var others = order.Cloths.Where(other => other.Id != cloth.Id);
        return order.Cloths.Length <= MostOthers + 1 ? others : others.OrderBy(PriceBySize);
    }

    private static double PriceBySize(ClothSupply cloth) => cloth.Sale switch
    {
        SaleByLength sale => sale.Price.Minor / ((double)cloth.Width.Steps * sale.Step.Steps),
        SaleByRoll sale => sale.Price.Minor / ((double)cloth.Width.Steps * sale.Length.Steps),
        _ => double.PositiveInfinity,
    };

    private static IEnumerable<PieceBlock> PiecesOf(Block block) =>
        block is StackBlock stack ? stack.Parts.SelectMany(PiecesOf) : [(PieceBlock)block];

    private static long PriceOf(ImmutableArray<ClothPattern> patterns) =>
        patterns.Sum(pattern => pattern.Stock.Price.Minor * pattern.Copies);
}
