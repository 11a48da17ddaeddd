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
            // Taken back in its turn, it gives again what it takes.
            StockChange? back = StockChange.Read(movement.Change)?.Reversed();
            StockRow heap = await ledger.MoveAsync(booking, movement.StockId, -movement.Quantity, MovementReason.Undone, movement.Id, back);
            back?.PutOn(heap);
        }

        await context.SaveChangesAsync(cancellation);
        return new TakenBack(await ledger.OfAsync(booking.Id));
    }

    /// <summary>
    /// What stands of movements that may have been taken back one by one, and given again since, over and over: each itself
    /// where nothing came after it, the last that gave it again, or nothing where it is taken back.
    /// </summary>
    internal static async Task<IReadOnlyList<MovementRow>> StandingAsync(
        StudioContext context, IReadOnlyList<MovementRow> movements, CancellationToken cancellation)
    {
        MovementRow[] last = [.. movements];
        bool[] stands = [.. movements.Select(_ => true)];
        while (await NextAsync(context, last, cancellation) is { Count: > 0 } next)
        {
            for (int i = 0; i < last.Length; i++)
            {
                if (next.TryGetValue(last[i].Id, out MovementRow? other))
                {
                    (last[i], stands[i]) = (other, !stands[i]);
                }
            }
        }

        return [.. last.Where((_, i) => stands[i])];
    }

    /// <summary>What takes some movements back, by what it takes back; one query for all of them.</summary>
    private static Task<Dictionary<long, MovementRow>> NextAsync(StudioContext context, MovementRow[] movements, CancellationToken cancellation)
    {
        long[] ids = [.. movements.Select(movement => movement.Id)];
        return context.Movements.Where(other => other.UndoOf != null && ids.Contains(other.UndoOf.Value))
            .ToDictionaryAsync(other => other.UndoOf!.Value, cancellation);
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
}
