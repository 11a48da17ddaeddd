using System.Text.Json;

namespace PanelService.Wire.Reading;

/// <summary>JSON values in words, and their text where it is text at all.</summary>
internal static class JsonKind
{
    /// <summary>What a value is, for a sentence.</summary>
    internal static string Name(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "an array",
        JsonValueKind.String => "text",
        JsonValueKind.Number => "a number",
        JsonValueKind.True or JsonValueKind.False => "true or false",
        _ => "null",
    };

    /// <summary>A string's text; null where an escape names half a character (a lone surrogate).</summary>
    internal static string? TextOf(JsonElement element)
    {
        try
        {
            return element.GetString();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    /// <summary>A field's name; null where an escape names half a character.</summary>
    internal static string? NameOf(JsonProperty property)
    {
        try
        {
            return property.Name;
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }
}
