using System.Collections.Immutable;
using System.Linq.Expressions;
using Microsoft.EntityFrameworkCore;
using PanelService.Planning.Measures;
using PanelService.Store.Documents;
using PanelService.Store.Model;
using PanelService.Store.Versions;

namespace PanelService.Store.Supplies;

/// <summary>What can be bought.</summary>
/// <param name="studio">The database.</param>
/// <param name="clock">The day a price is set on.</param>
public sealed class SupplyBook(Studio studio, TimeProvider clock)
{
    /// <summary>Everything that can be bought, by sort and id.</summary>
    /// <param name="cancellation">Gives up.</param>
    public Task<ImmutableArray<Supply>> ListAsync(CancellationToken cancellation) =>
        studio.ReadAsync(context => AllAsync(context, cancellation), cancellation);

    /// <summary>One good; null where there is none.</summary>
    /// <param name="sort">Of what sort.</param>
    /// <param name="id">Its id.</param>
    /// <param name="cancellation">Gives up.</param>
    public async Task<Supply?> FindAsync(SupplySort sort, string id, CancellationToken cancellation)
    {
        SupplyRow? row = await studio.ReadAsync(context => context.Supplies.FirstOrDefaultAsync(Is(sort, id), cancellation), cancellation);
        return row is null ? null : Read(row);
    }

    /// <summary>Saves one; what is there already is only replaced under a condition.</summary>
    /// <param name="draft">The good; its version is not looked at.</param>
    /// <param name="pricedOn">The day its price was set; null: today where a price is new, else the day there was.</param>
    /// <param name="condition">Under which version.</param>
    /// <param name="cancellation">Gives up before anything is saved.</param>
    public Task<SaveOutcome> PutAsync(Supply draft, DateOnly? pricedOn, Precondition condition, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentNullException.ThrowIfNull(condition);
        return studio.WriteAsync(
            async context =>
            {
                if (await context.Stock.AnyAsync(item => item.Id == draft.Id, cancellation))
                {
                    return new NameTaken($"\"{draft.Id}\" is written in pencil on a piece in stock; a plan could not tell the two apart. Choose another id.");
                }

                SupplyRow? row = await context.Supplies.FirstOrDefaultAsync(Is(draft.Sort, draft.Id), cancellation);
                return condition.Check(row?.Version, isNeeded: true) ?? Put(context, row, draft, pricedOn);
            },
            cancellation);
    }

    /// <summary>Saves many over what there is, all or none.</summary>
    /// <param name="drafts">The goods, each with the day its price was set (null: as <see cref="PutAsync"/> has it).</param>
    /// <param name="cancellation">Gives up before anything is saved.</param>
    public Task PutAllAsync(ImmutableArray<(Supply Good, DateOnly? PricedOn)> drafts, CancellationToken cancellation) => studio.WriteAsync(
        async context =>
        {
            Dictionary<(string, string), SupplyRow> rows = await context.Supplies.ToDictionaryAsync(row => (row.Sort, row.Id), cancellation);
            foreach ((Supply good, DateOnly? pricedOn) in drafts)
            {
                (string, string) key = (StoreJson.Word(good.Sort), good.Id);
                _ = Put(context, rows.GetValueOrDefault(key), good, pricedOn);
                rows.TryAdd(key, context.Supplies.Local.First(row => row.Sort == key.Item1 && row.Id == key.Item2));
            }

            return drafts.Length;
        },
        cancellation);

    /// <summary>Takes one out of what can be bought.</summary>
    /// <param name="sort">Of what sort.</param>
    /// <param name="id">Its id.</param>
    /// <param name="condition">Under which version.</param>
    /// <param name="cancellation">Gives up before it is taken out.</param>
    public Task<SaveOutcome> DeleteAsync(SupplySort sort, string id, Precondition condition, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(condition);
        return studio.WriteAsync<SaveOutcome>(
            async context =>
            {
                SupplyRow? row = await context.Supplies.FirstOrDefaultAsync(Is(sort, id), cancellation);
                if (condition.Check(row?.Version, isNeeded: false) is { } refusal)
                {
                    return refusal;
                }

                if (row is null)
                {
                    return new NothingThere();
                }

                context.Supplies.Remove(row);
                return new Saved(row.Version, IsNew: false);
            },
            cancellation);
    }

    internal static async Task<ImmutableArray<Supply>> AllAsync(StudioContext context, CancellationToken cancellation)
    {
        SupplyRow[] rows = await context.Supplies.OrderBy(row => row.Sort).ThenBy(row => row.Id).ToArrayAsync(cancellation);
        return [.. rows.Select(Read)];
    }

    internal static SupplyRow RowOf(Supply draft, DateOnly pricedOn) => new()
    {
        Sort = StoreJson.Word(draft.Sort),
        Id = draft.Id,
        Units = StoreJson.Word(draft.Units),
        Currency = draft.Currency,
        Document = draft.Document,
        PricedOn = pricedOn,
        Version = 1,
    };

    private Saved Put(StudioContext context, SupplyRow? row, Supply draft, DateOnly? pricedOn)
    {
        DateOnly today = DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime);
        if (row is null)
        {
            context.Supplies.Add(RowOf(draft, pricedOn ?? today));
            return new Saved(1, IsNew: true);
        }

        bool samePrice = row.Currency == draft.Currency && Prices.AreTheSame(row.Document, draft.Document);
        row.PricedOn = pricedOn ?? (samePrice ? row.PricedOn : today);
        row.Units = StoreJson.Word(draft.Units);
        row.Currency = draft.Currency;
        row.Document = draft.Document;
        row.Version++;
        return new Saved(row.Version, IsNew: false);
    }

    private static Expression<Func<SupplyRow, bool>> Is(SupplySort sort, string id)
    {
        string word = StoreJson.Word(sort);
        return row => row.Sort == word && row.Id == id;
    }

    private static Supply Read(SupplyRow row) => new(
        StoreJson.Word<SupplySort>(row.Sort), row.Id, StoreJson.Word<LengthUnit>(row.Units), row.Currency, row.Document, row.PricedOn, row.Version);
}
