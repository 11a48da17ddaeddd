using Microsoft.EntityFrameworkCore;
using PanelService.Planning.Measures;
using PanelService.Store.Documents;
using PanelService.Store.Model;
using PanelService.Store.Versions;

namespace PanelService.Store.Settings;

/// <summary>The studio's own settings: what an order that does not say is taken to mean.</summary>
/// <param name="studio">The database.</param>
public sealed class SettingsBook(Studio studio)
{
    /// <summary>The settings; null where none are saved.</summary>
    /// <param name="cancellation">Gives up.</param>
    public Task<SavedSettings?> FindAsync(CancellationToken cancellation) =>
        studio.ReadAsync(context => FindAsync(context, cancellation), cancellation);

    /// <summary>Saves them; what is there already is only replaced under a condition.</summary>
    /// <param name="draft">The settings; their version is not looked at.</param>
    /// <param name="condition">Under which version.</param>
    /// <param name="cancellation">Gives up before anything is saved.</param>
    public Task<SaveOutcome> PutAsync(SavedSettings draft, Precondition condition, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentNullException.ThrowIfNull(condition);
        return studio.WriteAsync(
            async context =>
            {
                SettingsRow? row = await context.Settings.FirstOrDefaultAsync(cancellation);
                return condition.Check(row?.Version, isNeeded: true) ?? Put(context, row, draft);
            },
            cancellation);
    }

    /// <summary>Forgets them: the practice table holds again.</summary>
    /// <param name="condition">Under which version.</param>
    /// <param name="cancellation">Gives up before anything is forgotten.</param>
    public Task<SaveOutcome> DeleteAsync(Precondition condition, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(condition);
        return studio.WriteAsync<SaveOutcome>(
            async context =>
            {
                SettingsRow? row = await context.Settings.FirstOrDefaultAsync(cancellation);
                if (condition.Check(row?.Version, isNeeded: false) is { } refusal)
                {
                    return refusal;
                }

                if (row is null)
                {
                    return new NothingThere();
                }

                context.Settings.Remove(row);
                return new Saved(row.Version, IsNew: false);
            },
            cancellation);
    }

    internal static async Task<SavedSettings?> FindAsync(StudioContext context, CancellationToken cancellation)
    {
        SettingsRow? row = await context.Settings.FirstOrDefaultAsync(cancellation);
        return row is null ? null : new SavedSettings(StoreJson.Word<LengthUnit>(row.Units), row.Currency, row.Document, row.Version);
    }

    internal static SettingsRow RowOf(SavedSettings draft) => new()
    {
        Units = StoreJson.Word(draft.Units),
        Currency = draft.Currency,
        Document = draft.Document,
        Version = 1,
    };

    private static Saved Put(StudioContext context, SettingsRow? row, SavedSettings draft)
    {
        if (row is null)
        {
            context.Settings.Add(RowOf(draft));
            return new Saved(1, IsNew: true);
        }

        row.Units = StoreJson.Word(draft.Units);
        row.Currency = draft.Currency;
        row.Document = draft.Document;
        row.Version++;
        return new Saved(row.Version, IsNew: false);
    }
}
