using PanelService.Store.Settings;
using PanelService.Store.Stock;
using PanelService.Store.Supplies;

namespace PanelService.Store.Shelves;

/// <summary>Reads settings, supplies and stock as they are at one moment.</summary>
/// <param name="studio">The database.</param>
public sealed class ShelfBook(Studio studio)
{
    /// <summary>Reads them: three queries, whatever their number.</summary>
    /// <param name="cancellation">Gives up.</param>
    public Task<Shelf> ReadAsync(CancellationToken cancellation) => studio.ReadAsync(
        async context => new Shelf(
            await SettingsBook.FindAsync(context, cancellation),
            await SupplyBook.AllAsync(context, cancellation),
            [.. (await StockQuery.ReadAsync(context, context.Stock, cancellation)).Where(item => item.Quantity > 0)]),
        cancellation);
}
