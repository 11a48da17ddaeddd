using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using PanelService.Store.Documents;
using PanelService.Store.Model;

namespace PanelService.Store.Plans;

/// <summary>The stored plans.</summary>
/// <param name="studio">The database.</param>
/// <param name="clock">The time they are stored at.</param>
public sealed class PlanBook(Studio studio, TimeProvider clock)
{
    /// <summary>Stores a plan; once this returns, it survives whatever happens. Storing it again changes nothing.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="cancellation">Gives up before it is stored.</param>
    /// <exception cref="Faults.StoreUnavailableException">It was not stored.</exception>
    public Task SaveAsync(FinishedPlan plan, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(plan);
        PlanRow row = RowOf(plan);
        return studio.WriteAsync(
            async context =>
            {
                bool isThere = await context.Plans.AnyAsync(one => one.Id == row.Id, cancellation);
                if (!isThere)
                {
                    context.Plans.Add(row);
                }

                return !isThere;
            },
            cancellation);
    }

    /// <summary>Looks a plan up.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancellation">Gives up.</param>
    public async Task<PlanFinding> FindAsync(string id, CancellationToken cancellation)
    {
        PlanRow? row = await studio.ReadAsync(context => context.Plans.FirstOrDefaultAsync(one => one.Id == id, cancellation), cancellation);
        return row is null ? new PlanNotFound() : Read(row);
    }

    /// <summary>The order as it was sent; null where there is no such plan.</summary>
    /// <param name="id">The plan's id.</param>
    /// <param name="cancellation">Gives up.</param>
    public Task<string?> OrderOfAsync(string id, CancellationToken cancellation) => studio.ReadAsync(
        context => context.Plans.Where(one => one.Id == id).Select(one => one.Order).FirstOrDefaultAsync(cancellation), cancellation);

    /// <summary>Lists plans, the newest first; their documents are not read.</summary>
    /// <param name="search">Which.</param>
    /// <param name="cancellation">Gives up.</param>
    public Task<PlanList> ListAsync(PlanSearch search, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(search);
        return studio.ReadAsync(
            async context =>
            {
                IQueryable<PlanRow> found = Matching(context.Plans, search);
                int total = await found.CountAsync(cancellation);
                PlanSummary[] page = await found
                    .OrderByDescending(row => row.CreatedAt).ThenBy(row => row.Id)
                    .Skip(search.Skip).Take(search.Take)
                    .Select(row => new PlanSummary(
                        row.Id, row.Title, DateTimeOffset.FromUnixTimeMilliseconds(row.CreatedAt), row.Currency,
                        row.SpentMinor, row.LeastPossibleMinor, row.Panels, row.CutBooking != null))
                    .ToArrayAsync(cancellation);
                return new PlanList([.. page], total);
            },
            cancellation);
    }

    /// <summary>Deletes a plan, unless it is cut.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancellation">Gives up before anything is deleted.</param>
    public Task<PlanRemoval> RemoveAsync(string id, CancellationToken cancellation) => studio.WriteAsync(
        async context =>
        {
            var found = await context.Plans.Where(row => row.Id == id).Select(row => new { row.CutBooking }).FirstOrDefaultAsync(cancellation);
            if (found is { CutBooking: null })
            {
                await context.Plans.Where(row => row.Id == id).ExecuteDeleteAsync(cancellation);
            }

            return found switch
            {
                null => PlanRemoval.NotFound,
                { CutBooking: null } => PlanRemoval.Removed,
                _ => PlanRemoval.IsCut,
            };
        },
        cancellation);

    /// <summary>Text as it is compared: without regard to case.</summary>
    internal static string Fold(string text) => text.ToUpperInvariant();

    internal static PlanFinding Read(PlanRow row) => PlanDocument.Read(row.Document, row.DocumentVersion) is { } plan
        ? new PlanFound(new FinishedPlan(row.Id, plan, row.Stopped, row.Order, StoreJson.Read<ImmutableArray<StockLink>>(row.Links)))
        : new PlanTooNew(row.DocumentVersion);

    private static IQueryable<PlanRow> Matching(IQueryable<PlanRow> plans, PlanSearch search)
    {
        if (!string.IsNullOrEmpty(search.Title))
        {
            string part = Fold(search.Title);
            plans = plans.Where(row => row.TitleKey.Contains(part));
        }

        long from = search.From?.ToUnixTimeMilliseconds() ?? long.MinValue;
        long before = search.Before?.ToUnixTimeMilliseconds() ?? long.MaxValue;
        return plans.Where(row => row.CreatedAt >= from && row.CreatedAt < before);
    }

    private PlanRow RowOf(FinishedPlan finished) => new()
    {
        Id = finished.Id,
        Title = finished.Plan.Order.Title,
        TitleKey = Fold(finished.Plan.Order.Title),
        CreatedAt = clock.GetUtcNow().ToUnixTimeMilliseconds(),
        Stopped = finished.Stopped,
        DocumentVersion = PlanDocument.Version,
        Document = PlanDocument.Write(finished.Plan),
        Order = finished.OrderDocument,
        Links = StoreJson.Write(finished.Links),
        Units = StoreJson.Word(finished.Plan.Order.Units),
        Currency = finished.Plan.Order.Currency.Code,
        SpentMinor = finished.Plan.Proof.Spent.Minor,
        LeastPossibleMinor = finished.Plan.Proof.LeastPossible.Minor,
        Panels = finished.Plan.Panels.Sum(panel => panel.Made + panel.Bought),
    };
}
