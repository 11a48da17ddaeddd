using System.Text.Json;

namespace PanelService.Store.Supplies;

/// <summary>The prices that stand in a good's document, in their order: whether they changed decides the day they were set on.</summary>
internal static class Prices
{
    private const string Field = "price";

    internal static bool AreTheSame(string before, string after) => Of(before).SequenceEqual(Of(after));

    private static List<decimal> Of(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        List<decimal> found = [];
        Collect(document.RootElement, found);
        return found;
    }

    private static void Collect(JsonElement element, List<decimal> found)
    {
        if (element.ValueKind == JsonValueKind.Array)
        {
            foreach (JsonElement item in element.EnumerateArray())
            {
                Collect(item, found);
            }
        }
        else if (element.ValueKind == JsonValueKind.Object)
        {
            foreach (JsonProperty property in element.EnumerateObject())
            {
                if (property.Name == Field && property.Value.ValueKind == JsonValueKind.Number)
                {
                    found.Add(property.Value.GetDecimal());
                }

                Collect(property.Value, found);
            }
        }
    }
}
