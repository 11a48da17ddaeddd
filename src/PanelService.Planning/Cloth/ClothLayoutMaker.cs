using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Cloth;

/// <summary>Writes laid-out cloth as the plan shows it, selvedges included.</summary>
internal static class ClothLayoutMaker
{
    /// <summary>Writes.</summary>
    /// <param name="order">The order.</param>
    /// <param name="cloths">The cloths, in the order they are to be numbered in.</param>
    /// <param name="marks">Per piece number: its mark.</param>
    public static ImmutableArray<ClothLayout> Make(
        Order order, ImmutableArray<LaidOut<ClothStock>> cloths, ImmutableArray<string> marks) =>
        [.. cloths.Select((cloth, i) => Make(order.Bench, cloth, marks, i + 1))];

    private static ClothLayout Make(BenchSettings bench, LaidOut<ClothStock> cloth, ImmutableArray<string> marks, int number)
    {
        var stock = cloth.Stock;
        var pieces = cloth.Cuts.Pieces
            .Select(piece => Shapes.Placed(piece, marks))
            .Select(piece => piece with { X = piece.X + stock.Selvedge })
            .ToImmutableArray();
        var offcuts = cloth.Cuts.Leftovers
            .Select(leftover => WithSelvedges(Shapes.Offcut(leftover.At), stock))
            .Select(offcut => offcut with { Kept = Shapes.Holds(offcut, bench.SmallestClothWidth, bench.SmallestClothHeight) })
            .ToImmutableArray();
        return new ClothLayout
        {
            Number = number,
            Copies = cloth.Copies,
            Cloth = stock.Cloth,
            Source = stock.Source,
            Remnant = stock.Remnant,
            Width = stock.Width,
            Length = stock.Length,
            Selvedge = stock.Selvedge,
            CostEach = stock.Price,
            Steps = stock.Steps,
            Pieces = pieces,
            Offcuts = offcuts,
            CutLength = CutLengthOf(cloth),
            Waste = (stock.Width * stock.Length)
                - Shapes.Sum(pieces.Select(piece => piece.Width * piece.Height))
                - Shapes.Sum(offcuts.Where(offcut => offcut.Kept).Select(offcut => offcut.Area)),
        };
    }

    // Every straight cut adds its length twice to what all parts together measure round about.
    private static Length CutLengthOf(LaidOut<ClothStock> cloth) => Length.FromSteps(
        cloth.Cuts.Pieces.Select(piece => piece.At).Concat(cloth.Cuts.Leftovers.Select(leftover => leftover.At))
            .Sum(part => part.Width + part.Height)
        - (cloth.Stock.UsableWidth + cloth.Stock.Length).Steps);

    /// <summary>A leftover across the whole width keeps its selvedges; one beside pieces loses them.</summary>
    private static Offcut WithSelvedges(Offcut offcut, ClothStock stock) => offcut.Width == stock.UsableWidth
        ? offcut with { Width = stock.Width }
        : offcut with { X = offcut.X + stock.Selvedge };
}
