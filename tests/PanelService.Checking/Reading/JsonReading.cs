using System.Text.Json;

namespace PanelService.Checking.Reading;

/// <summary>Fields that may be absent or null.</summary>
internal static class JsonReading
{
    public static JsonElement? Field(this JsonElement parent, string name) =>
        parent.ValueKind == JsonValueKind.Object && parent.TryGetProperty(name, out var value) && value.ValueKind != JsonValueKind.Null
            ? value
            : null;

    public static string? Text(this JsonElement parent, string name) => parent.Field(name)?.GetString();

    public static bool Flag(this JsonElement parent, string name, bool otherwise) =>
        parent.Field(name)?.GetBoolean() ?? otherwise;

    public static long Count(this JsonElement parent, string name, long otherwise) =>
        parent.Field(name)?.GetInt64() ?? otherwise;

    public static IEnumerable<JsonElement> List(this JsonElement parent, string name) =>
        parent.Field(name)?.EnumerateArray() ?? Enumerable.Empty<JsonElement>();
}
