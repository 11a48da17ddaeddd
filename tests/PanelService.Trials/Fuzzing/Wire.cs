using System.Text.Json.Nodes;

namespace PanelService.Trials.Fuzzing;

/// <summary>One operation of the API, as its own document describes it.</summary>
/// <param name="Method">Such as POST.</param>
/// <param name="Path">With its parameters in braces.</param>
/// <param name="Queries">Names of what the query may hold.</param>
/// <param name="Body">The body's schema; null where it takes none.</param>
internal sealed record Operation(string Method, string Path, string[] Queries, JsonObject? Body);

/// <summary>The OpenAPI document, walked.</summary>
internal sealed class Wire
{
    private const int Deepest = 6;
    private readonly JsonObject _schemas;

    /// <summary>Reads it.</summary>
    /// <param name="document">The document's text.</param>
    internal Wire(string document)
    {
        JsonNode root = JsonNode.Parse(document)!;
        _schemas = root["components"]!["schemas"]!.AsObject();
        Operations = [.. root["paths"]!.AsObject().SelectMany(path => path.Value!.AsObject().Select(one => Read(path.Key, one.Key, one.Value!)))];
    }

    internal Operation[] Operations { get; }

    /// <summary>The one that most of the code stands behind.</summary>
    internal Operation Planning => Operations.Single(one => one is { Method: "POST", Path: "/api/plans" });

    /// <summary>A document such as a schema asks for, with some of the fields that may be left out.</summary>
    internal string Sample(JsonNode? schema, Dice dice, int depth = 0)
    {
        JsonNode? plain = Resolve(schema, dice);
        if (plain is null || depth > Deepest)
        {
            return "1";
        }

        if (plain["enum"] is JsonArray words)
        {
            return dice.One<JsonNode?>([.. words])?.ToJsonString() ?? "null";
        }

        return TypeOf(plain, dice) switch
        {
            "object" => Record(plain, dice, depth),
            "array" => $"[{string.Join(',', Enumerable.Range(0, 1 + dice.Below(2)).Select(_ => Sample(plain["items"], dice, depth + 1)))}]",
            "integer" => dice.One<string>(["1", "2", "12"]),
            "number" => dice.One<string>(["1", "8", "10.5", "24"]),
            "boolean" => dice.One<string>(["true", "false"]),
            _ => dice.One<string>(["\"a\"", "\"8 1/2\"", "\"41 cm\"", "\"hardboard\""]),
        };
    }

    private string Record(JsonNode schema, Dice dice, int depth)
    {
        string[] wanted = [.. schema["required"]?.AsArray().Select(name => (string)name!) ?? []];
        var fields = (schema["properties"]?.AsObject() ?? []).Where(field => wanted.Contains(field.Key) || dice.Once(3));
        return $"{{{string.Join(',', fields.Select(field => $"\"{field.Key}\":{Sample(field.Value, dice, depth + 1)}"))}}}";
    }

    private JsonNode? Resolve(JsonNode? schema, Dice dice)
    {
        for (int i = 0; i < Deepest && schema is not null; i++)
        {
            if ((string?)schema["$ref"] is { } name)
            {
                schema = _schemas[name.Split('/')[^1]];
            }
            else if ((schema["oneOf"] ?? schema["anyOf"] ?? schema["allOf"]) is JsonArray { Count: > 0 } several)
            {
                schema = dice.One<JsonNode?>([.. several]);
            }
            else
            {
                return schema;
            }
        }

        return schema;
    }

    private static string TypeOf(JsonNode schema, Dice dice) => schema["type"] switch
    {
        JsonArray types => (string)dice.One<JsonNode?>([.. types.Where(type => (string?)type != "null")])!,
        JsonValue type => (string)type!,
        _ => schema["properties"] is null ? "string" : "object",
    };

    private static Operation Read(string path, string method, JsonNode operation) => new(
        method.ToUpperInvariant(),
        path,
        [.. (operation["parameters"]?.AsArray() ?? []).Where(one => (string?)one!["in"] == "query").Select(one => (string)one!["name"]!)],
        operation["requestBody"]?["content"]?.AsObject().Select(content => content.Value!["schema"]).OfType<JsonObject>().FirstOrDefault());
}
