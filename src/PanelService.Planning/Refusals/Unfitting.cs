using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Boards;
using PanelService.Planning.Cloth;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Refusals;

/// <summary>Finds lines that no board, or no cloth, of the order can serve, whatever the number.</summary>
internal static class Unfitting
{
    /// <summary>The refusal; null where every line has something it can be made of.</summary>
    public static CannotBeMade? Check(Order order)
    {
        var boards = Lines(order, line => line.NeedsBoard && !BoardRoom.HasAny(line, order), line => RefusalText.NoBoard(line, order));
        if (!boards.IsEmpty)
        {
            return new CannotBeMade(CannotReason.NoBoardFits, Detail(boards), boards);
        }

        var cloths = Lines(order, line => line.NeedsCloth && !FitsAnyCloth(line, order), line => RefusalText.NoCloth(line, order));
        return cloths.IsEmpty ? null : new CannotBeMade(CannotReason.NoClothFits, Detail(cloths), cloths);
    }

    private static ImmutableArray<UnmakeableLine> Lines(
        Order order, Func<PanelLine, bool> isUnfitting, Func<PanelLine, string> text) =>
        [
            .. order.Panels
                .Where(line => !CanBeBought(line) && isUnfitting(line))
                .Select(line => new UnmakeableLine(line.Mark, text(line), line.Wanted)),
        ];

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
