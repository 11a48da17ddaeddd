using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using FluentValidation;
using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Http;
using PanelService.Shelves;
using PanelService.Store.Shelves;
using PanelService.Store.Stock;
using PanelService.Store.Supplies;
using PanelService.Validation;
using PanelService.Wire.Reading;
using PanelService.Wire.Studio;

namespace PanelService.Endpoints;

/// <summary>Supplies and stock as tables for a spreadsheet, out and in.</summary>
internal static class CsvEndpoints
{
    private const string Csv = "text/csv";
    private const int MostBytes = 10 * 1024 * 1024;

    internal static void MapCsv(this IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder tables = routes.MapGroup("/api").WithTags("Tables")
            .ProducesProblem(StatusCodes.Status500InternalServerError)
            .ProducesProblem(StatusCodes.Status503ServiceUnavailable);

        tables.MapGet("supplies.csv", SuppliesOutAsync).WithName("ExportSupplies")
            .WithSummary("What can be bought, as comma-separated values (RFC 4180): a column per field, by its path.")
            .Produces<string>(StatusCodes.Status200OK, Csv);
        Takes(tables.MapPost("supplies.csv", SuppliesInAsync)).WithName("ImportSupplies")
            .WithSummary("Saves every good of such a table over what there is, all or none; faulty lines are named.");
        tables.MapGet("stock.csv", StockOutAsync).WithName("ExportStock")
            .WithSummary("What is in the studio, as comma-separated values (RFC 4180).")
            .Produces<string>(StatusCodes.Status200OK, Csv);
        Takes(tables.MapPost("stock.csv", StockInAsync)).WithName("ImportStock")
            .WithSummary("Adds every heap of such a table, all or none; faulty lines are named. The id stays empty: it is given out.");
    }

    private static RouteHandlerBuilder Takes(RouteHandlerBuilder endpoint) => endpoint
        .Accepts<string>(Csv)
        .Produces<FaultsProblem>(StatusCodes.Status400BadRequest, "application/problem+json")
        .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
        .ProducesProblem(StatusCodes.Status507InsufficientStorage);

    private static async Task<ContentHttpResult> SuppliesOutAsync(SupplyBook book, CancellationToken cancellation)
    {
        JsonObject[] goods = [.. (await book.ListAsync(cancellation)).Select(WithSort)];
        return TypedResults.Text(CsvTable.Write(goods, ["sort", "id"]), $"{Csv}; header=present", Encoding.UTF8);
    }

    private static async Task<Results<Ok<CsvImportResponse>, ProblemHttpResult>> SuppliesInAsync(
        SupplyBook book, StudioMeasures measures, HttpRequest request, CancellationToken cancellation)
    {
        (string? text, ProblemHttpResult? problem) = await ReadAsync(request, cancellation);
        if (text is null)
        {
            return problem!;
        }

        var faults = new Faults();
        OrderMeasures usual = await measures.ReadAsync(cancellation);
        List<(Supply, DateOnly?)> goods = [];
        foreach ((long line, JsonObject record) in CsvTable.Read(text, faults))
        {
            if (SupplyOf(line, record, usual, faults) is { } good)
            {
                goods.Add(good);
            }
        }

        if (faults.Any)
        {
            return Problems.Invalid(faults);
        }

        await book.PutAllAsync([.. goods], cancellation);
        return TypedResults.Ok(new CsvImportResponse(goods.Count, []));
    }

    private static async Task<ContentHttpResult> StockOutAsync(StockBook book, CancellationToken cancellation)
    {
        JsonSerializerOptions plain = new(JsonSerializerDefaults.Web)
        {
            DefaultIgnoreCondition = System.Text.Json.Serialization.JsonIgnoreCondition.WhenWritingNull,
            Converters = { new System.Text.Json.Serialization.JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
        };
        JsonObject[] heaps = [.. (await book.ListAsync(false, cancellation)).Select(item => JsonSerializer.SerializeToNode(StockTranslation.Write(item), plain)!.AsObject())];
        return TypedResults.Text(CsvTable.Write(heaps, ["id", "sort"]), $"{Csv}; header=present", Encoding.UTF8);
    }

    private static async Task<Results<Ok<CsvImportResponse>, ProblemHttpResult>> StockInAsync(
        StockBook book, ShelfBook shelf, StudioMeasures measures, IValidator<StockRequest> rules, HttpRequest request, CancellationToken cancellation)
    {
        (string? text, ProblemHttpResult? problem) = await ReadAsync(request, cancellation);
        if (text is null)
        {
            return problem!;
        }

        var faults = new Faults();
        OrderMeasures usual = await measures.ReadAsync(cancellation);
        ImmutableArray<Supply> supplies = (await shelf.ReadAsync(cancellation)).Supplies;
        var reader = new StockLineReader(rules, supplies, usual, faults);
        ImmutableArray<StockDraft> heaps = [.. CsvTable.Read(text, faults).Select(line => reader.Read(line.Line, line.Record)).OfType<StockDraft>()];
        if (faults.Any)
        {
            return Problems.Invalid(faults);
        }

        ImmutableArray<StockItem> added = await book.AddAsync(heaps, null, cancellation);
        return TypedResults.Ok(new CsvImportResponse(added.Length, [.. added.Select(item => item.Id)]));
    }

    private static JsonObject WithSort(Supply supply)
    {
        JsonObject good = SupplyTranslation.Write(supply);
        good.Remove("version");
        good["sort"] = JsonPath.Camel(supply.Sort.ToString());
        return good;
    }

    private static (Supply, DateOnly?)? SupplyOf(long line, JsonObject record, OrderMeasures usual, Faults faults)
    {
        record.Remove("sort", out JsonNode? sort);
        if (!Enum.TryParse(sort?.ToString(), ignoreCase: true, out SupplySort known) || !Enum.IsDefined(known))
        {
            faults.Add($"{CsvTable.At(line)}, sort", "Expected boards, cloths, adhesives, primers or strips.");
            return null;
        }

        string? id = record["id"]?.ToString();
        if (string.IsNullOrWhiteSpace(id))
        {
            faults.Add($"{CsvTable.At(line)}, id", "Required: the good's id.");
            return null;
        }

        using JsonDocument document = JsonDocument.Parse(record.ToJsonString());
        SupplyBody body = SupplyBody.Read(known, id, document.RootElement, usual);
        foreach ((string field, string[] texts) in body.Faults.ToDictionary())
        {
            faults.Add($"{CsvTable.At(line)}, {field}", string.Join(" ", texts));
        }

        return body.Supply is { } supply ? (supply, body.PricedOn) : null;
    }

    private static async Task<(string? Text, ProblemHttpResult? Problem)> ReadAsync(HttpRequest request, CancellationToken cancellation)
    {
        using var bytes = new MemoryStream();
        byte[] buffer = new byte[64 * 1024];
        int read;
        while ((read = await request.Body.ReadAsync(buffer, cancellation)) > 0)
        {
            bytes.Write(buffer, 0, read);
            if (bytes.Length > MostBytes)
            {
                return (null, Problems.TooLarge(MostBytes));
            }
        }

        return (Encoding.UTF8.GetString(bytes.ToArray()).TrimStart('\uFEFF'), null);
    }
}
