// Problem: a plan that is there at once, to hold the engine's against: everything from one cloth.
// Idea:    pieces on shelves, the longest first, each on the first shelf with room; rolls are filled shelf by shelf,
//          a cloth sold by length is bought in one length.
// Source:  first fit by decreasing height: Coffman, Garey, Johnson and Tarjan, SIAM J. Comput. 9, 1980.
// Cost:    pieces × shelves; batches of many pieces are left to the engine.
// Not:     a good plan for mixed sizes; remnants and other cloths are left alone.
using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Cloth;

/// <summary>Lays everything on shelves of one cloth.</summary>
internal static class ShelfPlanner
{
    private const int MostPieces = 3000;

    /// <summary>One plan per cloth for sale that serves every piece and of which there is enough.</summary>
    /// <param name="order">The order.</param>
    /// <param name="pieces">The pieces, numbered as in the patterns.</param>
    public static IEnumerable<ImmutableArray<ClothPattern>> Plans(Order order, ImmutableArray<ClothPieces> pieces) =>
        pieces.Sum(piece => (long)piece.Count) > MostPieces
            ? []
            : order.Cloths.Select(cloth => PlanOn(cloth, pieces)).Where(plan => !plan.IsEmpty);

    private static ImmutableArray<ClothPattern> PlanOn(ClothSupply cloth, ImmutableArray<ClothPieces> pieces)
    {
        long usable = (cloth.Width - (cloth.Selvedge * 2)).Steps;
        if (usable <= 0 || pieces.Any(piece => !piece.WaysOn(cloth, usable).Any()))
        {
            return [];
        }

        var shelves = Shelves(cloth, usable, pieces);
        return cloth.Sale switch
        {
            SaleByLength sale => InOneLength(cloth, sale, shelves),
            SaleByRoll sale => RollByRoll(cloth, sale, shelves),
            _ => [],
        };
    }

    private static List<Shelf> Shelves(ClothSupply cloth, long usable, ImmutableArray<ClothPieces> pieces)
    {
        var shelves = new List<Shelf>();
        var all = pieces
            .Select((piece, number) => (number, piece.Count, piece.Width, Way: piece.WaysOn(cloth, usable).MinBy(way => way.Along)))
            .OrderByDescending(piece => piece.Way.Along);
        foreach (var (number, count, width, way) in all)
        {
            for (int i = 0; i < count; i++)
            {
                var shelf = shelves.Find(shelf => shelf.Left >= way.Across);
                if (shelf is null)
                {
                    shelf = new Shelf(way.Along, usable);
                    shelves.Add(shelf);
                }

                shelf.Left -= way.Across;
                shelf.Pieces.Add(new PieceBlock(number, Turned: way.Across != width));
            }
        }

        return shelves;
    }

    private static ImmutableArray<ClothPattern> InOneLength(ClothSupply cloth, SaleByLength sale, List<Shelf> shelves)
    {
        long steps = (shelves.Sum(shelf => shelf.Along) + sale.Step.Steps - 1) / sale.Step.Steps;
        return steps > (sale.AtMost ?? int.MaxValue)
            ? []
            : [new ClothPattern(ClothStock.Of(cloth, sale, (int)steps), BlockOf(shelves), Copies: 1)];
    }

    private static ImmutableArray<ClothPattern> RollByRoll(ClothSupply cloth, SaleByRoll sale, List<Shelf> shelves)
    {
        var rolls = new List<List<Shelf>>();
        long left = 0;
        foreach (var shelf in shelves)
        {
            if (shelf.Along > sale.Length.Steps)
            {
                return [];
            }

            if (shelf.Along > left)
            {
                rolls.Add([]);
                left = sale.Length.Steps;
            }

            left -= shelf.Along;
            rolls[^1].Add(shelf);
        }

        return rolls.Count > (sale.ForSale ?? int.MaxValue)
            ? []
            : [.. rolls.Select(roll => new ClothPattern(ClothStock.Of(cloth, sale), BlockOf(roll), Copies: 1))];
    }

    private static Block BlockOf(List<Shelf> shelves) =>
        Stacked(Axis.Y, [.. shelves.Select(shelf => Stacked(Axis.X, [.. shelf.Pieces]))]);

    private static Block Stacked(Axis axis, ImmutableArray<Block> parts) =>
        parts.Length == 1 ? parts[0] : new StackBlock(axis, parts);

    private sealed class Shelf(long along, long left)
    {
        public long Along { get; } = along;

        public long Left { get; set; } = left;

        public List<Block> Pieces { get; } = [];
    }
}
