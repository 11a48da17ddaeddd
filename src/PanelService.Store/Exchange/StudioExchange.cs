using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using PanelService.Store.Documents;
using PanelService.Store.Model;

namespace PanelService.Store.Exchange;

/// <summary>A whole studio out as a document and in again, also from one sort of database to the other.</summary>
/// <param name="studio">The database.</param>
public sealed class StudioExchange(Studio studio)
{
    /// <summary>Everything that is kept, at one moment, as JSON.</summary>
    /// <param name="cancellation">Gives up.</param>
    public async Task<string> ExportAsync(CancellationToken cancellation)
    {
        StudioDocument document = await studio.ReadAsync(
            async context => new StudioDocument
            {
                Format = StudioDocument.FormatName,
                Version = StudioDocument.FormatVersion,
                Settings = [.. await context.Settings.ToArrayAsync(cancellation)],
                Supplies = [.. await context.Supplies.OrderBy(row => row.Sort).ThenBy(row => row.Id).ToArrayAsync(cancellation)],
                Stock = [.. await context.Stock.OrderBy(row => row.Letter).ThenBy(row => row.Number).ToArrayAsync(cancellation)],
                Bookings = [.. await context.Bookings.OrderBy(row => row.Id).ToArrayAsync(cancellation)],
                Movements = [.. await context.Movements.OrderBy(row => row.Id).ToArrayAsync(cancellation)],
                Plans = [.. await context.Plans.OrderBy(row => row.CreatedAt).ThenBy(row => row.Id).ToArrayAsync(cancellation)],
            },
            cancellation);
        return StoreJson.Write(document);
    }

    /// <summary>Takes a whole studio in, into one that is empty; all of it or nothing.</summary>
    /// <param name="json">What <see cref="ExportAsync"/> gave.</param>
    /// <param name="cancellation">Gives up before anything is stored.</param>
    public Task<ImportOutcome> ImportAsync(string json, CancellationToken cancellation)
    {
        (StudioDocument? document, NotAStudio? fault) = Read(json);
        return document is null ? Task.FromResult<ImportOutcome>(fault!) : studio.WriteAsync(context => StoreAsync(context, document, cancellation), cancellation);
    }

    private static (StudioDocument? Document, NotAStudio? Fault) Read(string json)
    {
        try
        {
            StudioDocument document = StoreJson.Parse<StudioDocument>(json);
            string? fault = Fault(document);
            return fault is null ? (document, null) : (null, new NotAStudio(fault));
        }
        catch (JsonException fault)
        {
            return (null, new NotAStudio($"It is no studio's export: {fault.Message}"));
        }
    }

    private static string? Fault(StudioDocument document)
    {
        if (document.Format != StudioDocument.FormatName)
        {
            return $"It is no studio's export: its format should be \"{StudioDocument.FormatName}\".";
        }

        if (document.Version > StudioDocument.FormatVersion)
        {
            return $"It was written by a newer program, in version {document.Version}; this one reads {StudioDocument.FormatVersion}.";
        }

        HashSet<string> stock = [.. document.Stock.Select(row => row.Id)];
        HashSet<long> bookings = [.. document.Bookings.Select(row => row.Id)];
        if (stock.Count != document.Stock.Length || bookings.Count != document.Bookings.Length)
        {
            return "An id stands in it twice.";
        }

        MovementRow? stray = document.Movements.FirstOrDefault(row => !stock.Contains(row.StockId) || !bookings.Contains(row.BookingId));
        if (stray is not null)
        {
            return $"Movement {stray.Id} speaks of a piece or a booking that is not in it.";
        }

        IGrouping<string, MovementRow>? below = document.Movements.GroupBy(row => row.StockId).FirstOrDefault(heap => heap.Sum(row => row.Quantity) < 0);
        return below is null ? null : $"The movements of {below.Key} come to less than nothing.";
    }

    private static async Task<ImportOutcome> StoreAsync(StudioContext context, StudioDocument document, CancellationToken cancellation)
    {
        bool isEmpty = !await context.Settings.AnyAsync(cancellation) && !await context.Supplies.AnyAsync(cancellation)
            && !await context.Bookings.AnyAsync(cancellation) && !await context.Stock.AnyAsync(cancellation) && !await context.Plans.AnyAsync(cancellation);
        if (!isEmpty)
        {
            return new StudioNotEmpty();
        }

        context.AddRange(document.Settings);
        context.AddRange(document.Supplies);
        context.AddRange(document.Stock);
        context.AddRange(document.Bookings);
        context.AddRange(document.Movements);
        context.AddRange(document.Plans);
        await context.SaveChangesAsync(cancellation);
        await CountOnAsync(context, cancellation);
        return new Imported(document.Supplies.Length, document.Stock.Length, document.Movements.Length, document.Plans.Length);
    }

    // PostgreSQL counts apart from the rows: the next number must follow those that came with the document.
    private static async Task CountOnAsync(StudioContext context, CancellationToken cancellation)
    {
        foreach (string table in context is PostgresStudioContext ? new[] { "bookings", "movements" } : [])
        {
            string statement = $"SELECT setval(pg_get_serial_sequence('\"{table}\"', 'Id'), (SELECT COALESCE(MAX(\"Id\"), 0) + 1 FROM \"{table}\"), false)";
            await context.Database.ExecuteSqlRawAsync(statement, cancellation);
        }
    }
}
