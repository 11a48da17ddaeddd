using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using PanelService.Http;
using PanelService.Store.Exchange;

namespace PanelService.Endpoints;

/// <summary>The whole studio: backed up, exported, imported.</summary>
internal static class ExchangeEndpoints
{
    private const long MostImported = 256L * 1024 * 1024;

    internal static void MapExchange(this IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder studio = routes.MapGroup("/api").WithTags("The whole studio")
            .ProducesProblem(StatusCodes.Status500InternalServerError)
            .ProducesProblem(StatusCodes.Status503ServiceUnavailable);

        studio.MapGet("backup", BackupAsync).WithName("BackUp")
            .WithSummary("A consistent copy of the live database, as one SQLite file; 409 on PostgreSQL, which has pg_dump.")
            .Produces<Stream>(StatusCodes.Status200OK, "application/vnd.sqlite3")
            .ProducesProblem(StatusCodes.Status409Conflict);
        studio.MapGet("export", ExportAsync).WithName("ExportStudio")
            .WithSummary("Everything that is kept, at one moment, as one JSON document.")
            .Produces<string>(StatusCodes.Status200OK, "application/json");
        studio.MapPost("import", ImportAsync).WithName("ImportStudio")
            .WithSummary("Takes a whole studio in, into one that is empty: all of it or nothing.")
            .Accepts<string>("application/json")
            .WithMetadata(new RequestSizeLimitAttribute(MostImported))
            .ProducesProblem(StatusCodes.Status400BadRequest)
            .ProducesProblem(StatusCodes.Status409Conflict)
            .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
            .ProducesProblem(StatusCodes.Status507InsufficientStorage);
    }

    private static async Task<Results<FileStreamHttpResult, ProblemHttpResult>> BackupAsync(StudioBackup backup, CancellationToken cancellation)
    {
        if (!backup.IsPossible)
        {
            return TypedResults.Problem(
                type: "/problems/no-file-to-copy",
                statusCode: StatusCodes.Status409Conflict,
                title: "This studio's memory is no file.",
                detail: "It is kept in PostgreSQL: back it up with pg_dump, or take GET /api/export, which works with either database.");
        }

        string folder = Directory.CreateTempSubdirectory("panel-service-backup-").FullName;
        try
        {
            string path = Path.Combine(folder, "studio.db");
            await backup.WriteAsync(path, cancellation);
            FileStream copy = new(path, FileMode.Open, FileAccess.Read, FileShare.Delete);
            return TypedResults.File(copy, "application/vnd.sqlite3", "studio.db");
        }
        finally
        {
            // Already unlinked while it is sent: nothing stays behind, whatever becomes of the client or of the copy.
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task<ContentHttpResult> ExportAsync(StudioExchange exchange, HttpResponse response, CancellationToken cancellation)
    {
        string document = await exchange.ExportAsync(cancellation);
        response.Headers.ContentDisposition = "attachment; filename=\"studio.json\"";
        return TypedResults.Text(document, "application/json", Encoding.UTF8);
    }

    private static async Task<Results<Ok<Imported>, ProblemHttpResult>> ImportAsync(StudioExchange exchange, HttpRequest request, CancellationToken cancellation)
    {
        using var reader = new StreamReader(request.Body, Encoding.UTF8);
        return await exchange.ImportAsync(await reader.ReadToEndAsync(cancellation), cancellation) switch
        {
            Imported done => TypedResults.Ok(done),
            NotAStudio wrong => TypedResults.Problem(
                type: "/problems/no-studio", statusCode: StatusCodes.Status400BadRequest, title: "It cannot be imported.", detail: $"{wrong.Text} Nothing was stored."),
            _ => TypedResults.Problem(
                type: "/problems/studio-not-empty",
                statusCode: StatusCodes.Status409Conflict,
                title: "This studio is not empty.",
                detail: "A whole studio is only taken into an empty one, so that nothing is overwritten. Start the service with another data folder, and import there."),
        };
    }
}
