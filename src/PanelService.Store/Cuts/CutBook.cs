using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using PanelService.Planning.Plans;
using PanelService.Store.Documents;
using PanelService.Store.Model;
using PanelService.Store.Plans;
using PanelService.Store.Stock;

namespace PanelService.Store.Cuts;

/// <summary>Plans that were cut: one booking each, all of it or nothing.</summary>
/// <param name="studio">The database.</param>
/// <param name="clock">The time of bookings.</param>
public sealed class CutBook(Studio studio, TimeProvider clock)
{
    private const string Cut = "cut";

    /// <summary>Books a plan as cut: goods leave the stock; offcuts, remnants, leftovers and panels enter it.</summary>
    /// <param name="planId">The plan.</param>
    /// <param name="spoiled">What was spoiled.</param>
    /// <param name="cancellation">Gives up before anything is booked.</param>
    public Task<CutOutcome> CutAsync(string planId, Spoilage spoiled, CancellationToken cancellation) => studio.WriteAsync(
        async context =>
        {
            PlanRow? row = await context.Plans.FirstOrDefaultAsync(plan => plan.Id == planId, cancellation);
            if (row is null)
            {
                return new NoPlanToCut();
            }

            if (row.CutBooking is { } earlier)
            {
                return new AlreadyCut(await AtAsync(context, earlier, cancellation));
            }

            return PlanBook.Read(row) is PlanFound { Plan: var plan }
                ? await BookAsync(context, row, plan, spoiled, cancellation)
                : new PlanNotRead();
        },
        cancellation);

    /// <summary>What was booked for a plan; null where it is not cut.</summary>
    /// <param name="planId">The plan.</param>
    /// <param name="cancellation">Gives up.</param>
    public Task<CutRecord?> FindAsync(string planId, CancellationToken cancellation) => studio.ReadAsync(
        async context =>
        {
            long? booking = await context.Plans.Where(plan => plan.Id == planId).Select(plan => plan.CutBooking).FirstOrDefaultAsync(cancellation);
            return booking is { } id ? await RecordAsync(context, id, cancellation) : null;
        },
        cancellation);

    /// <summary>Takes a whole cut back; the plan can be cut again.</summary>
    /// <param name="planId">The plan.</param>
    /// <param name="cancellation">Gives up before anything is booked.</param>
    public Task<UndoOutcome> UndoAsync(string planId, CancellationToken cancellation) => studio.WriteAsync<UndoOutcome>(
        async context =>
        {
            PlanRow? row = await context.Plans.FirstOrDefaultAsync(plan => plan.Id == planId, cancellation);
            if (row?.CutBooking is not { } booking)
            {
                return new NothingToUndo();
            }

            MovementRow[] movements = await context.Movements.Where(movement => movement.BookingId == booking)
                .OrderBy(movement => movement.Id).ToArrayAsync(cancellation);
            UndoOutcome outcome = await Undoing.BookAsync(
                context, await Undoing.StandingAsync(context, movements, cancellation), new BookingRow { Kind = StoreJson.Word(MovementReason.Undone), At = Now(), PlanId = planId, UndoOf = booking }, cancellation);
            if (outcome is TakenBack)
            {
                row.CutBooking = null;
            }

            return outcome;
        },
        cancellation);

    private async Task<CutOutcome> BookAsync(
        StudioContext context, PlanRow row, FinishedPlan plan, Spoilage spoiled, CancellationToken cancellation)
    {
        if (spoiled.Faults(plan.Plan) is { IsEmpty: false } faults)
        {
            return new SpoilingWrong(faults);
        }

        CutDraft draft = new CutDrafter(plan, spoiled).Draft();
        var ledger = new Ledger(context, cancellation);
        Takings takings = await Takings.WeighAsync(context, ledger, draft.Taken, cancellation);
        if (!takings.Missing.IsEmpty)
        {
            return new GoodsGone(takings.Missing);
        }

        ImmutableArray<Spoiling> panels = spoiled.AllPanels(plan.Plan);
        BookingRow booking = await ledger.OpenAsync(new BookingRow
        {
            Kind = Cut,
            At = Now(),
            PlanId = row.Id,
            Spoiled = panels.IsEmpty ? null : StoreJson.Write(panels),
        });
        await new CutWriter(ledger, booking, takings).WriteAsync(draft);
        row.CutBooking = booking.Id;
        await context.SaveChangesAsync(cancellation);
        return new CutBooked(await RecordAsync(context, booking.Id, cancellation), plan);
    }

    private static async Task<CutRecord> RecordAsync(StudioContext context, long id, CancellationToken cancellation)
    {
        BookingRow booking = await context.Bookings.AsNoTracking().FirstAsync(one => one.Id == id, cancellation);
        ImmutableArray<Movement> movements = await new Ledger(context, cancellation).OfAsync(id);
        string[] entered = [.. movements.Where(movement => movement.Quantity > 0).Select(movement => movement.Stock)];
        return new CutRecord(
            id,
            DateTimeOffset.FromUnixTimeMilliseconds(booking.At),
            booking.Spoiled is null ? [] : StoreJson.Read<ImmutableArray<Spoiling>>(booking.Spoiled),
            movements,
            await StockQuery.ReadAsync(context, context.Stock.Where(stock => entered.Contains(stock.Id)), cancellation));
    }

    private static async Task<DateTimeOffset> AtAsync(StudioContext context, long booking, CancellationToken cancellation) =>
        DateTimeOffset.FromUnixTimeMilliseconds(await context.Bookings.Where(one => one.Id == booking).Select(one => one.At).FirstAsync(cancellation));

    private long Now() => clock.GetUtcNow().ToUnixTimeMilliseconds();
}
