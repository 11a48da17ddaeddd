using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using PanelService.Wire.Plans;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace PanelService.Documentation;

/// <summary>What the endpoints' types cannot say: headers, examples, and the two answers of one address.</summary>
internal sealed class NotesFilter : IOperationFilter
{
    /// <inheritdoc/>
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        switch (operation.OperationId)
        {
            case "CreatePlan":
                NoteCreate(operation);
                break;
            case "GetPlan":
                NoteGet(operation, context);
                break;
            case "GetYield":
                Show(operation.RequestBody?.Content, Examples.YieldQuestion);
                break;
            default:
                break;
        }

        Header(operation, "503", "Retry-After", "Seconds to wait before trying again.");
        Show(Content(operation, "400"), operation.RequestBody is null ? null : Examples.Faults);
        Show(Content(operation, "422"), Examples.Impossible);
    }

    private static void NoteCreate(OpenApiOperation operation)
    {
        (operation.Parameters ??= []).Add(new OpenApiParameter
        {
            Name = "Prefer",
            In = ParameterLocation.Header,
            Description = "respond-async (RFC 7240): answer 202 at once and plan in the background; with wait=N (seconds, 30 at most): answer 202 only where there is no plan by then.",
            Schema = new OpenApiSchema { Type = JsonSchemaType.String },
        });
        Header(operation, "201", "Location", "The plan's address.");
        Header(operation, "202", "Location", "The plan's address.");
        Show(operation.RequestBody?.Content, Examples.Order);
        Describe(operation, "200", "Only with keep=false: the plan, of which nothing is kept. Its drawings have no address; drawings=inline brings them.");
        Show(Content(operation, "201"), Examples.Plan);
    }

    private static void NoteGet(OpenApiOperation operation, OperationFilterContext context)
    {
        if (Content(operation, "200") is { } answers)
        {
            answers["application/json"].Schema = new OpenApiSchema
            {
                Description = "The plan, or how far it is where there is none yet or none at all.",
                OneOf =
                [
                    context.SchemaGenerator.GenerateSchema(typeof(PlanResponse), context.SchemaRepository),
                    context.SchemaGenerator.GenerateSchema(typeof(PlanStateResponse), context.SchemaRepository),
                ],
            };
        }
    }

    private static IDictionary<string, OpenApiMediaType>? Content(OpenApiOperation operation, string status) =>
        operation.Responses?.TryGetValue(status, out IOpenApiResponse? response) == true ? response.Content : null;

    private static void Show(IDictionary<string, OpenApiMediaType>? content, JsonNode? example)
    {
        foreach (OpenApiMediaType media in content?.Values ?? [])
        {
            media.Example = example;
        }
    }

    private static void Describe(OpenApiOperation operation, string status, string description)
    {
        if (operation.Responses?.TryGetValue(status, out IOpenApiResponse? response) == true && response is OpenApiResponse plain)
        {
            plain.Description = description;
        }
    }

    private static void Header(OpenApiOperation operation, string status, string name, string description)
    {
        if (operation.Responses?.TryGetValue(status, out IOpenApiResponse? response) == true && response is OpenApiResponse plain)
        {
            (plain.Headers ??= new Dictionary<string, IOpenApiHeader>())[name] =
                new OpenApiHeader { Description = description, Schema = new OpenApiSchema { Type = JsonSchemaType.String } };
        }
    }
}
