using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using PanelService.Planning.Measures;
using PanelService.Store.Documents;
using PanelService.Store.Model;

namespace PanelService.Store.Stock;

/// <summary>Reads lines of the ledger with what belongs to them, in one query.</summary>
internal static class MovementQuery
{
    internal static async Task<ImmutableArray<Movement>> ReadAsync(
        StudioContext context, IQueryable<MovementRow> movements, CancellationToken cancellation)
    {
        var rows = await (
            from movement in movements
            join booking in context.Bookings on movement.BookingId equals booking.Id
            join stock in context.Stock on movement.StockId equals stock.Id
            orderby movement.Id
            select new
            {
                Movement = movement,
                booking.At,
                booking.PlanId,
                booking.Note,
                stock.Sort,
                stock.Units,
                UndoneBy = context.Movements.Where(other => other.UndoOf == movement.Id).Select(other => (long?)other.Id).FirstOrDefault(),
            }).AsNoTracking().ToArrayAsync(cancellation);
        return
        [
            .. rows.Select(row => new Movement(
                row.Movement.Id,
                row.Movement.BookingId,
                DateTimeOffset.FromUnixTimeMilliseconds(row.At),
                row.Movement.StockId,
                StoreJson.Word<StockSort>(row.Sort),
                StoreJson.Word<LengthUnit>(row.Units),
                row.Movement.Quantity,
                StoreJson.Word<MovementReason>(row.Movement.Reason),
                row.PlanId,
                row.Movement.UndoOf,
                row.UndoneBy,
                row.Note)),
        ];
    }
}
