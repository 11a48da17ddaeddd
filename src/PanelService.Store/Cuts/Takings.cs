using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using PanelService.Planning.Measures;
using PanelService.Store.Documents;
using PanelService.Store.Model;
using PanelService.Store.Stock;

namespace PanelService.Store.Cuts;

/// <summary>What is taken from which heap, weighed against what is there.</summary>
/// <param name="Quantities">Per heap, how much is taken.</param>
/// <param name="Goods">Per heap, what it is.</param>
/// <param name="Missing">What is not there.</param>
internal sealed record Takings(Dictionary<string, long> Quantities, Dictionary<string, StockGood> Goods, ImmutableArray<StockLack> Missing)
{
    internal static async Task<Takings> WeighAsync(
        StudioContext context, Ledger ledger, ImmutableArray<ImmutableArray<Taking>> taken, CancellationToken cancellation)
    {
        string[] ids = [.. taken.SelectMany(choice => choice).Select(taking => taking.Stock).Distinct(StringComparer.Ordinal)];
        Dictionary<string, long> there = await ledger.SumsAsync(ids);
        Dictionary<string, StockRow> rows = await context.Stock.AsNoTracking().Where(row => ids.Contains(row.Id))
            .ToDictionaryAsync(row => row.Id, StringComparer.Ordinal, cancellation);
        var goods = rows.ToDictionary(row => row.Key, row => StoreJson.Read<StockGood>(row.Value.Good), StringComparer.Ordinal);
        var quantities = new Dictionary<string, long>(StringComparer.Ordinal);
        var missing = ImmutableArray.CreateBuilder<StockLack>();
        foreach (ImmutableArray<Taking> choice in taken)
        {
            long wanted = choice[0].Quantity;
            foreach (Taking taking in choice)
            {
                long part = Math.Min(wanted, there.GetValueOrDefault(taking.Stock) - quantities.GetValueOrDefault(taking.Stock));
                quantities[taking.Stock] = quantities.GetValueOrDefault(taking.Stock) + part;
                wanted -= part;
            }

            bool isChanged = !Measures(choice[0], goods.GetValueOrDefault(choice[0].Stock));
            if (wanted > 0 || isChanged)
            {
                Taking first = choice[0];
                StockSort sort = StoreJson.Word<StockSort>(rows[first.Stock].Sort);
                missing.Add(new StockLack(first.Stock, sort, first.Quantity, first.Quantity - wanted, isChanged));
            }
        }

        return new Takings(quantities, goods, missing.ToImmutable());
    }

    private static bool Measures(Taking taking, StockGood? good)
    {
        if (taking.Length is null || good is null)
        {
            return good is not null;
        }

        if (taking.Width is null)
        {
            return good.Length == taking.Length;
        }

        Length usable = (good.Width ?? default) - ((good.Selvedge ?? default) * 2);
        return usable == taking.Width && (good.Height ?? good.Length) == taking.Length;
    }
}
