using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using PanelService.Planning.Measures;
using PanelService.Store.Documents;
using PanelService.Store.Model;

namespace PanelService.Store.Stock;

/// <summary>Reads heaps with the sums of their movements, in one query.</summary>
internal static class StockQuery
{
    internal static async Task<ImmutableArray<StockItem>> ReadAsync(
        StudioContext context, IQueryable<StockRow> heaps, CancellationToken cancellation)
    {
        var rows = await heaps
            .OrderBy(row => row.Letter).ThenBy(row => row.Number)
            .Select(row => new
            {
                Row = row,
                Quantity = context.Movements.Where(movement => movement.StockId == row.Id).Sum(movement => movement.Quantity),
            })
            .AsNoTracking().ToArrayAsync(cancellation);
        return [.. rows.Select(row => Read(row.Row, row.Quantity))];
    }

    internal static StockItem Read(StockRow row, long quantity)
    {
        StockSort sort = StoreJson.Word<StockSort>(row.Sort);
        return new StockItem(
            row.Id,
            sort,
            StoreJson.Read<StockGood>(row.Good),
            quantity,
            ValueOf(row, sort, quantity),
            StoreJson.Word<LengthUnit>(row.Units),
            row.Currency,
            DateTimeOffset.FromUnixTimeMilliseconds(row.AddedAt),
            row.Version);
    }

    // What is left of a liquid counts as its share of what all of it did.
    private static Money ValueOf(StockRow row, StockSort sort, long quantity) => StockQuantity.IsLiquid(sort)
        ? new Money((long)Math.Round((decimal)row.ValueMinor * quantity / row.ValueOf, MidpointRounding.AwayFromZero))
        : new Money(row.ValueMinor);
}
