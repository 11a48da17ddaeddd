using System.Text.Json.Nodes;

namespace PanelService.Documentation;

/// <summary>Examples for the document, embedded; tests send the requests and hold the answers to their shape.</summary>
internal static class Examples
{
    internal static JsonNode Order => Read("order");

    internal static JsonNode Plan => Read("plan");

    internal static JsonNode YieldQuestion => Read("yield-question");

    internal static JsonNode Faults => Read("faults");

    internal static JsonNode Impossible => Read("impossible");

    private static JsonNode Read(string name)
    {
        string resource = $"{typeof(Examples).Namespace}.Examples.{name}.json";
        using Stream stream = typeof(Examples).Assembly.GetManifestResourceStream(resource)
            ?? throw new InvalidOperationException($"The example {resource} is not embedded.");
        return JsonNode.Parse(stream)!;
    }
}
