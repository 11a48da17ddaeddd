using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Boards;
using PanelService.Planning.Cloth;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Refusals;

/// <summary>
/// Finds lines that no board, or no cloth, of the order can serve, whatever the number. Where all of them could be served by goods
/// of which nothing is there, there is too little.
/// </summary>
internal static class Unfitting
{
    /// <summary>The refusal; null where every line has something it can be made of.</summary>
    public static CannotBeMade? Check(Order order)
    {
        var boards = Lines(order, line => line.NeedsBoard && !BoardRoom.HasAny(line, order));
        var cloths = Lines(order, line => line.NeedsCloth && !FitsAnyCloth(line, order));
        var plenty = WithAnyNumber(order);
        return (boards, cloths) switch
        {
            ({ IsEmpty: false }, _) when boards.All(line => BoardRoom.HasAny(line, plenty)) => Shortage.OfNone(boards, "boards"),
            ({ IsEmpty: false }, _) => Refusal(CannotReason.NoBoardFits, boards, line => RefusalText.NoBoard(line, order)),
            (_, { IsEmpty: false }) when cloths.All(line => FitsAnyCloth(line, plenty)) => Shortage.OfNone(cloths, "cloth"),
            (_, { IsEmpty: false }) => Refusal(CannotReason.NoClothFits, cloths, line => RefusalText.NoCloth(line, order)),
            _ => null,
        };
    }

    private static ImmutableArray<PanelLine> Lines(Order order, Func<PanelLine, bool> isUnfitting) =>
        [.. order.Panels.Where(line => !CanBeBought(line) && isUnfitting(line))];

    // Where some lines fit on nothing, the others are named by what they would need, too.
    private static CannotBeMade Refusal(CannotReason reason, ImmutableArray<PanelLine> lines, Func<PanelLine, string> text)
    {
        ImmutableArray<UnmakeableLine> marks = [.. lines.Select(line => new UnmakeableLine(line.Mark, text(line), line.Wanted))];
        return new CannotBeMade(reason, Detail(marks), marks);
    }

    /// <summary>The order, were there any number of what there is none of.</summary>
    private static Order WithAnyNumber(Order order) => order with
    {
        Boards = [.. order.Boards.Select(board => board is { ForSale: 0, OnHand: 0 } ? board with { ForSale = null } : board)],
        Cloths = [.. order.Cloths.Select(cloth => cloth with
        {
            Sale = cloth.Sale switch
            {
                SaleByRoll { ForSale: 0 } sale => sale with { ForSale = null },
                SaleByLength { AtMost: 0 } sale => sale with { AtMost = null },
                var sale => sale,
            },
        })],
    };

    private static bool CanBeBought(PanelLine line) => line is { MayBuy: true, ShopPrice: not null };

    private static string Detail(ImmutableArray<UnmakeableLine> lines) =>
        string.Join("; ", lines.Take(5).Select(line => $"{line.Mark}: {line.Missing}"))
        + (lines.Length > 5 ? $"; and {lines.Length - 5} more lines." : ".");

    private static bool FitsAnyCloth(PanelLine line, Order order)
    {
        var size = ClothFit.WithMargins(CutSizes.Smallest(line, order.Saw.Undersize), order.Bench);
        return order.Cloths.Any(cloth =>
        {
            var turning = ClothFit.TurningOn(line, cloth);
            return turning != Turning.None && ClothFit.Longest(cloth).Any(usable =>
                BoardFit.Fits(turning, (size.Width, size.Height), usable));
        });
    }
}
