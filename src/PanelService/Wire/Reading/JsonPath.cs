using System.Globalization;

namespace PanelService.Wire.Reading;

/// <summary>Paths of fields as error keys: <c>panels[2].width</c>; <c>$</c> is the whole document.</summary>
internal static class JsonPath
{
    internal const string Root = "$";

    private const int LongestName = 60;

    /// <summary>A field's path. A name that is no plain word is quoted, a long one cut short.</summary>
    internal static string Field(string path, string name)
    {
        string shown = name.Length > LongestName ? string.Concat(name.AsSpan(0, LongestName), "…") : name;
        bool plain = shown.Length > 0 && shown.All(c => char.IsAsciiLetterOrDigit(c) || c is '_' or '-' or '$' or '…');
        return (path, plain) switch
        {
            (Root, true) => shown,
            (_, true) => $"{path}.{shown}",
            _ => $"{path}['{shown}']",
        };
    }

    /// <summary>An element's path.</summary>
    internal static string Element(string path, int index) =>
        string.Create(CultureInfo.InvariantCulture, $"{path}[{index}]");

    /// <summary>A validator's property name ("Panels[2].Width") in the client's casing.</summary>
    internal static string FromProperty(string property) =>
        property.Length == 0 ? Root : string.Join('.', property.Split('.').Select(Camel));

    /// <summary>A member's name in the client's casing.</summary>
    internal static string Camel(string name) =>
        name.Length == 0 ? name : char.ToLowerInvariant(name[0]) + name[1..];
}
