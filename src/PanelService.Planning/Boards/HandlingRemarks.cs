using System.Collections.Immutable;
using System.Globalization;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Boards;

/// <summary>What the painter should know of a plan under limits, before the saw run begins.</summary>
internal static class HandlingRemarks
{
    /// <summary>Sheets to be cut where they are bought, and boards in the studio that nobody can handle.</summary>
    /// <param name="order">The order.</param>
    /// <param name="sheets">The sheets of the plan.</param>
    public static IEnumerable<Warning> Of(Order order, ImmutableArray<SheetLayout> sheets)
    {
        var first = sheets.Where(sheet => sheet.Cuts.Any(cut => cut.BySupplier)).ToList();
        if (first.Count > 0)
        {
            int cuts = first.Sum(sheet => sheet.Copies * sheet.Cuts.Count(cut => cut.BySupplier));
            yield return new Warning("supplier-cuts", string.Create(
                CultureInfo.InvariantCulture,
                $"Have these cuts made where you buy it: {cuts} on {first.Sum(sheet => sheet.Copies)} sheets, as the supplier's slip shows them. Ask what a cut costs; the plan does not count it."));
        }

        foreach (var board in order.Boards.Where(board => board.OnHand > 0 && BoardStock.Of(order.Saw, board, Source.OnHand).First is not null))
        {
            yield return new Warning("on-hand-too-large", $"Board {board.Id} in the studio is larger or heavier than one person handles, or cannot be trimmed at this fence: the plan leaves it alone.");
        }
    }
}
