using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using PanelService.Store.Documents;
using PanelService.Store.Model;

namespace PanelService.Store.Stock;

/// <summary>Books the opposites of movements, unless what they brought in has been used since.</summary>
internal static class Undoing
{
    internal static async Task<UndoOutcome> BookAsync(
        StudioContext context, IReadOnlyList<MovementRow> movements, BookingRow draft, CancellationToken cancellation)
    {
        var ledger = new Ledger(context, cancellation);
        ImmutableArray<StockLack> missing = await MissingAsync(context, ledger, movements, cancellation);
        if (!missing.IsEmpty)
        {
            return new UsedSince(missing);
        }

        BookingRow booking = await ledger.OpenAsync(draft);
        foreach (MovementRow movement in movements)
        {
            ledger.Move(booking, movement.StockId, -movement.Quantity, MovementReason.Undone, movement.Id);
            await PutBackAsync(context, movement, cancellation);
        }

        await context.SaveChangesAsync(cancellation);
        return new TakenBack(await ledger.OfAsync(booking.Id));
    }

    private static async Task<ImmutableArray<StockLack>> MissingAsync(
        StudioContext context, Ledger ledger, IReadOnlyList<MovementRow> movements, CancellationToken cancellation)
    {
        var taken = movements.GroupBy(movement => movement.StockId, StringComparer.Ordinal)
            .ToDictionary(heap => heap.Key, heap => heap.Sum(movement => movement.Quantity), StringComparer.Ordinal);
        Dictionary<string, long> sums = await ledger.SumsAsync(taken.Keys);
        string[] lacking = [.. taken.Where(heap => sums.GetValueOrDefault(heap.Key) < heap.Value).Select(heap => heap.Key)];
        Dictionary<string, string> sorts = await context.Stock.Where(row => lacking.Contains(row.Id))
            .ToDictionaryAsync(row => row.Id, row => row.Sort, StringComparer.Ordinal, cancellation);
        return [.. lacking.Select(id => new StockLack(id, StoreJson.Word<StockSort>(sorts[id]), taken[id], sums.GetValueOrDefault(id), IsChanged: false))];
    }

    // A correction of what a heap is goes back as well, where nobody has corrected it again.
    private static async Task PutBackAsync(StudioContext context, MovementRow movement, CancellationToken cancellation)
    {
        if (movement.Change is null)
        {
            return;
        }

        using var change = System.Text.Json.JsonDocument.Parse(movement.Change);
        StockRow row = await context.Stock.FirstAsync(one => one.Id == movement.StockId, cancellation);
        if (row.Good == change.RootElement.GetProperty("after").GetRawText())
        {
            row.Good = change.RootElement.GetProperty("before").GetRawText();
        }

        row.Version++;
    }
}
