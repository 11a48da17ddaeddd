using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using PanelService.Store.Documents;
using PanelService.Store.Model;
using PanelService.Store.Versions;

namespace PanelService.Store.Stock;

/// <summary>What lies in the studio, and the ledger of how it came and went.</summary>
/// <param name="studio">The database.</param>
/// <param name="clock">The time of bookings.</param>
public sealed class StockBook(Studio studio, TimeProvider clock)
{
    /// <summary>Every heap, by letter and number.</summary>
    /// <param name="withEmpty">Whether heaps of which nothing is left are shown too.</param>
    /// <param name="cancellation">Gives up.</param>
    public async Task<ImmutableArray<StockItem>> ListAsync(bool withEmpty, CancellationToken cancellation)
    {
        ImmutableArray<StockItem> all = await studio.ReadAsync(context => StockQuery.ReadAsync(context, context.Stock, cancellation), cancellation);
        return withEmpty ? all : [.. all.Where(item => item.Quantity != 0)];
    }

    /// <summary>One heap; null where that id was never given out.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancellation">Gives up.</param>
    public async Task<StockItem?> FindAsync(string id, CancellationToken cancellation) =>
        (await studio.ReadAsync(context => StockQuery.ReadAsync(context, context.Stock.Where(row => row.Id == id), cancellation), cancellation)).FirstOrDefault();

    /// <summary>Lets heaps in, all or none.</summary>
    /// <param name="drafts">The heaps.</param>
    /// <param name="note">Whatever the painter notes, for the ledger.</param>
    /// <param name="cancellation">Gives up before anything is booked.</param>
    /// <returns>The heaps with their ids.</returns>
    public Task<ImmutableArray<StockItem>> AddAsync(ImmutableArray<StockDraft> drafts, string? note, CancellationToken cancellation) => studio.WriteAsync(
        async context =>
        {
            var ledger = new Ledger(context, cancellation);
            BookingRow booking = await ledger.OpenAsync(New(MovementReason.Added, note));
            List<StockItem> added = [];
            foreach (StockDraft draft in drafts)
            {
                added.Add(StockQuery.Read(await ledger.EnterAsync(booking, draft, MovementReason.Added), draft.Quantity));
            }

            return added.ToImmutableArray();
        },
        cancellation);

    /// <summary>Corrects a heap to what it really is.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="correction">What it really is.</param>
    /// <param name="condition">Under which version.</param>
    /// <param name="cancellation">Gives up before anything is booked.</param>
    public Task<SaveOutcome> CorrectAsync(string id, StockCorrection correction, Precondition condition, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(correction);
        ArgumentNullException.ThrowIfNull(condition);
        return studio.WriteAsync<SaveOutcome>(
            async context =>
            {
                StockRow? row = await context.Stock.FirstOrDefaultAsync(one => one.Id == id, cancellation);
                if (row is null)
                {
                    return new NothingThere();
                }

                return condition.Check(row.Version, isNeeded: false) ?? await CorrectAsync(context, row, correction, cancellation);
            },
            cancellation);
    }

    /// <summary>Lines of the ledger, oldest first.</summary>
    /// <param name="stock">Only those of this heap; null: of all.</param>
    /// <param name="planId">Only those of this plan; null: of all.</param>
    /// <param name="after">Only those with a greater id.</param>
    /// <param name="take">How many at most.</param>
    /// <param name="cancellation">Gives up.</param>
    public Task<ImmutableArray<Movement>> MovementsAsync(string? stock, string? planId, long after, int take, CancellationToken cancellation) => studio.ReadAsync(
        context =>
        {
            IQueryable<MovementRow> found = context.Movements.Where(movement => movement.Id > after);
            found = stock is null ? found : found.Where(movement => movement.StockId == stock);
            found = planId is null
                ? found
                : found.Where(movement => context.Bookings.Any(booking => booking.Id == movement.BookingId && booking.PlanId == planId));
            return MovementQuery.ReadAsync(context, found.OrderBy(movement => movement.Id).Take(take), cancellation);
        },
        cancellation);

    /// <summary>Takes one movement back by its opposite.</summary>
    /// <param name="movement">Its id.</param>
    /// <param name="cancellation">Gives up before anything is booked.</param>
    public Task<UndoOutcome> UndoAsync(long movement, CancellationToken cancellation) => studio.WriteAsync<UndoOutcome>(
        async context =>
        {
            MovementRow? row = await context.Movements.FirstOrDefaultAsync(one => one.Id == movement, cancellation);
            if (row is null)
            {
                return new NothingToUndo();
            }

            if (await context.Movements.AnyAsync(one => one.UndoOf == movement, cancellation))
            {
                return new AlreadyUndone();
            }

            return await Undoing.BookAsync(context, [row], New(MovementReason.Undone, note: null), cancellation);
        },
        cancellation);

    private BookingRow New(MovementReason kind, string? note) =>
        new() { Kind = StoreJson.Word(kind), At = clock.GetUtcNow().ToUnixTimeMilliseconds(), Note = note };

    private async Task<Saved> CorrectAsync(StudioContext context, StockRow row, StockCorrection correction, CancellationToken cancellation)
    {
        var ledger = new Ledger(context, cancellation);
        long there = (await ledger.SumsAsync([row.Id])).GetValueOrDefault(row.Id);
        long quantity = correction.Quantity ?? there;
        var before = StockState.Of(row);
        row.Good = correction.Good is null ? row.Good : StoreJson.Write(correction.Good(StoreJson.Read<StockGood>(row.Good)));
        if (correction.Value is { } value)
        {
            row.ValueMinor = value.Minor;
            row.ValueOf = StockQuantity.IsLiquid(StoreJson.Word<StockSort>(row.Sort)) ? Math.Max(1, quantity) : 1;
        }

        BookingRow booking = await ledger.OpenAsync(New(MovementReason.Corrected, correction.Note));
        var after = StockState.Of(row);
        await ledger.MoveAsync(booking, row.Id, quantity - there, MovementReason.Corrected, change: after == before ? null : new StockChange(before, after));
        return new Saved(row.Version, IsNew: false);
    }
}
