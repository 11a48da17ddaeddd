using System.ComponentModel.DataAnnotations;
using System.Reflection;
using Microsoft.OpenApi;
using PanelService.Wire.Reading;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace PanelService.Documentation;

/// <summary>
/// Says which fields are always there. Answers: all that cannot be null, and more may be added. Requests: those marked
/// <see cref="RequiredAttribute"/>; all others may be null, and unknown ones are refused.
/// </summary>
internal sealed class FieldsFilter : ISchemaFilter
{
    private readonly NullabilityInfoContext _nullability = new();

    /// <inheritdoc/>
    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is not OpenApiSchema { Properties: { } } record || context.Type.Namespace?.StartsWith(nameof(PanelService), StringComparison.Ordinal) != true)
        {
            return;
        }

        if (context.Type.Name.EndsWith("Request", StringComparison.Ordinal))
        {
            Request(record, context.Type);
        }
        else
        {
            Answer(record, context.Type);
        }
    }

    private static void Request(OpenApiSchema record, Type type)
    {
        record.Required = new HashSet<string>(Fields(type).Where(f => f.Member.IsDefined(typeof(RequiredAttribute))).Select(f => f.Name));
        foreach (string name in record.Properties!.Keys.ToArray())
        {
            bool required = record.Required.Contains(name);
            if (record.Properties[name] is OpenApiSchema plain && plain.Type is { } kind)
            {
                plain.Type = required ? kind & ~JsonSchemaType.Null : kind | JsonSchemaType.Null;
            }
            else if (!required && !AllowsNull(record.Properties[name]))
            {
                record.Properties[name] = new OpenApiSchema { OneOf = [record.Properties[name], new OpenApiSchema { Type = JsonSchemaType.Null }] };
            }
        }
    }

    private static bool AllowsNull(IOpenApiSchema schema) =>
        schema is OpenApiSchema { OneOf: { } ways } && ways.Any(way => way.Type == JsonSchemaType.Null);

    private void Answer(OpenApiSchema record, Type type)
    {
        record.AdditionalPropertiesAllowed = true;
        record.Required = new HashSet<string>(Fields(type)
            .Where(f => _nullability.Create(f.Member).ReadState == NullabilityState.NotNull)
            .Select(f => f.Name)
            .Where(record.Properties!.ContainsKey));
    }

    private static IEnumerable<(string Name, PropertyInfo Member)> Fields(Type type) =>
        type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Select(member => (JsonPath.Camel(member.Name), member));
}
