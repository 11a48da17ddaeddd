using Microsoft.OpenApi;
using PanelService.Planning.Measures;
using PanelService.Wire.Orders;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace PanelService.Documentation;

/// <summary>The OpenAPI 3.1 document at /openapi/panel-service.json, and a page to read and try it at /docs.</summary>
internal static class ApiDocument
{
    internal const string Name = "panel-service";

    private const string About =
        "A batch of painting supports in, the cheapest plan out: what to buy, how to cut board and cloth, what each panel "
        + "costs against the shop, with the proof that no cheaper plan exists. Every error is a problem document (RFC 9457); "
        + "a wrong order is told all its faults at once. Answers may gain fields; requests with unknown fields are refused.";

    internal static void AddDocumentation(this IServiceCollection services)
    {
        services.AddEndpointsApiExplorer();
        services.AddSwaggerGen(options =>
        {
            options.SwaggerDoc(Name, new OpenApiInfo { Title = "Panel Service", Version = "1", Description = About });
            options.IncludeXmlComments(typeof(ApiDocument).Assembly);
            options.SupportNonNullableReferenceTypes();
            options.SchemaFilter<FieldsFilter>();
            options.OperationFilter<NotesFilter>();
            MapMeasures(options);
        });
    }

    internal static void UseDocumentation(this WebApplication app)
    {
        app.UseSwagger(options =>
        {
            options.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1;
            options.RouteTemplate = "openapi/{documentName}.json";
        });
        app.UseSwaggerUI(options =>
        {
            options.RoutePrefix = "docs";
            options.DocumentTitle = "Panel Service: the wire";
            options.SwaggerEndpoint($"/openapi/{Name}.json", "Panel Service");
        });
    }

    // Lengths are numbers or text on the wire, whatever they are inside.
    private static void MapMeasures(SwaggerGenOptions options)
    {
        options.MapType<Length>(OneLength);
        options.MapType<LengthPair>(TwoLengths);
        options.MapType<Weight>(() => new OpenApiSchema
        {
            Description = "A number of lb where the order is in inches, else of g, or text: \"20 lb\", \"9 kg\", \"9000 g\".",
            OneOf = [new OpenApiSchema { Type = JsonSchemaType.Number }, new OpenApiSchema { Type = JsonSchemaType.String }],
        });
        options.MapType<Margin>(() => new OpenApiSchema
        {
            Description = "One length for all sides, or two: [left-right, top-bottom], or four: [top, right, bottom, left].",
            OneOf = [OneLength(), TwoLengths(), FourLengths()],
        });
        options.MapType<Percents>(() => new OpenApiSchema
        {
            Description = "One percentage, or two: [along the width, along the height].",
            OneOf =
            [
                new OpenApiSchema { Type = JsonSchemaType.Number },
                new OpenApiSchema { Type = JsonSchemaType.Array, Items = new OpenApiSchema { Type = JsonSchemaType.Number }, MinItems = 2, MaxItems = 2 },
            ],
        });
    }

    private static OpenApiSchema OneLength() => new()
    {
        Description = "A number in the order's units, or text: \"16 1/2\", \"16-1/2\", \"3/16\", \"41 cm\", \"410 mm\", \"8 in\", \"2 ft\", \"3 yd\", \"2' 6\\\"\", \"20,5 cm\".",
        OneOf = [new OpenApiSchema { Type = JsonSchemaType.Number }, new OpenApiSchema { Type = JsonSchemaType.String }],
    };

    private static OpenApiSchema FourLengths() => new()
    {
        Description = "Four lengths.",
        Type = JsonSchemaType.Array,
        Items = OneLength(),
        MinItems = 4,
        MaxItems = 4,
    };

    private static OpenApiSchema TwoLengths() => new()
    {
        Description = "Two lengths.",
        Type = JsonSchemaType.Array,
        Items = OneLength(),
        MinItems = 2,
        MaxItems = 2,
    };
}
