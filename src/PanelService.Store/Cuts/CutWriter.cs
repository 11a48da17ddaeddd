using PanelService.Store.Model;
using PanelService.Store.Stock;

namespace PanelService.Store.Cuts;

/// <summary>Writes the movements of a cut that has been found possible.</summary>
internal sealed class CutWriter(Ledger ledger, BookingRow booking, Takings takings)
{
    internal async Task WriteAsync(CutDraft draft)
    {
        foreach (Declaration declared in draft.Declared)
        {
            StockRow heap = await ledger.EnterAsync(booking, declared.Draft, MovementReason.Declared);
            await UseAsync(heap.Id, declared.Used);
        }

        foreach ((string stock, long quantity) in takings.Quantities)
        {
            await UseAsync(stock, quantity);
        }

        foreach (StockDraft kept in draft.Kept)
        {
            _ = await ledger.EnterAsync(booking, Known(kept), MovementReason.Kept);
        }

        foreach (StockDraft panels in draft.Finished)
        {
            _ = await ledger.EnterAsync(booking, panels, MovementReason.Finished);
        }
    }

    private async Task UseAsync(string stock, long quantity)
    {
        if (quantity > 0)
        {
            await ledger.MoveAsync(booking, stock, -quantity, MovementReason.Used);
        }
    }

    // A leftover of a heap in stock is named as that heap is, and comes from the same supply.
    private StockDraft Known(StockDraft kept) => kept.Good.Supply is { } id && takings.Goods.GetValueOrDefault(id) is { } parent
        ? kept with { Good = kept.Good with { Name = parent.Name, Supply = parent.Supply } }
        : kept;
}
