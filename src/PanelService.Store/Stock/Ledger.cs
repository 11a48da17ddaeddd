using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using PanelService.Planning.Measures;
using PanelService.Store.Documents;
using PanelService.Store.Model;

namespace PanelService.Store.Stock;

/// <summary>Writes one booking: heaps get their pencil ids, movements are added. Only used where writers follow one another.</summary>
internal sealed class Ledger(StudioContext context, CancellationToken cancellation)
{
    private Dictionary<string, int>? _last;
    private HashSet<string>? _supplies;

    /// <summary>Opens a booking; its id is known afterwards.</summary>
    internal async Task<BookingRow> OpenAsync(BookingRow booking)
    {
        context.Bookings.Add(booking);
        await context.SaveChangesAsync(cancellation);
        return booking;
    }

    /// <summary>Lets a heap in.</summary>
    internal async Task<StockRow> EnterAsync(BookingRow booking, StockDraft draft, MovementReason reason)
    {
        StockRow row = await NewRowAsync(draft, booking.At);
        context.Stock.Add(row);
        Add(booking, row.Id, draft.Quantity, reason, undoOf: null, change: null);
        return row;
    }

    /// <summary>Moves something. The heap is another one then: whoever has seen it as it was must look again.</summary>
    /// <returns>The heap.</returns>
    internal async Task<StockRow> MoveAsync(BookingRow booking, string stock, long quantity, MovementReason reason, long? undoOf = null, StockChange? change = null)
    {
        StockRow row = await context.Stock.FindAsync([stock], cancellation)
            ?? throw new InvalidOperationException($"No heap \"{stock}\" to move anything of.");
        row.Version++;
        Add(booking, stock, quantity, reason, undoOf, change);
        return row;
    }

    /// <summary>How much there is of some heaps: the sums of their movements, in one query.</summary>
    internal async Task<Dictionary<string, long>> SumsAsync(IReadOnlyCollection<string> stock) =>
        await context.Movements.Where(movement => stock.Contains(movement.StockId))
            .GroupBy(movement => movement.StockId)
            .Select(heap => new { heap.Key, Sum = heap.Sum(movement => movement.Quantity) })
            .ToDictionaryAsync(heap => heap.Key, heap => heap.Sum, StringComparer.Ordinal, cancellation);

    /// <summary>The movements of a booking, as the ledger shows them.</summary>
    internal Task<ImmutableArray<Movement>> OfAsync(long booking) =>
        MovementQuery.ReadAsync(context, context.Movements.Where(movement => movement.BookingId == booking), cancellation);

    private void Add(BookingRow booking, string stock, long quantity, MovementReason reason, long? undoOf, StockChange? change) =>
        context.Movements.Add(new MovementRow
        {
            BookingId = booking.Id,
            StockId = stock,
            Quantity = quantity,
            Reason = StoreJson.Word(reason),
            UndoOf = undoOf,
            Change = change?.Write(),
        });

    // Numbers are never given out twice, since no heap is ever deleted.
    private async Task<StockRow> NewRowAsync(StockDraft draft, long at)
    {
        _last ??= await context.Stock.GroupBy(row => row.Letter)
            .Select(letter => new { letter.Key, Last = letter.Max(row => row.Number) })
            .ToDictionaryAsync(letter => letter.Key, letter => letter.Last, StringComparer.Ordinal, cancellation);

        // A plan speaks of supplies and of heaps by their ids alone.
        _supplies ??= [.. await context.Supplies.Select(supply => supply.Id).ToArrayAsync(cancellation)];
        string letter = PencilLetter.Of(draft.Sort);
        int number;
        do
        {
            number = _last[letter] = _last.GetValueOrDefault(letter) + 1;
        }
        while (_supplies.Contains(PencilLetter.Write(letter, number)));

        return new StockRow
        {
            Id = PencilLetter.Write(letter, number),
            Letter = letter,
            Number = number,
            Sort = StoreJson.Word(draft.Sort),
            Good = StoreJson.Write(draft.Good),
            Units = StoreJson.Word(draft.Units),
            Currency = draft.Currency,
            ValueMinor = draft.Value.Minor,
            ValueOf = StockQuantity.IsLiquid(draft.Sort) ? Math.Max(1, draft.Quantity) : 1,
            AddedAt = at,
            Version = 1,
        };
    }
}
