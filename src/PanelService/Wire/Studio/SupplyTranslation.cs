using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json.Nodes;
using PanelService.Store.Supplies;
using PanelService.Wire.Reading;

namespace PanelService.Wire.Studio;

/// <summary>Saved supplies as the wire shows them: as they were sent, with units, currency, the day of the price and the version.</summary>
internal static class SupplyTranslation
{
    internal static JsonObject Write(Supply supply)
    {
        JsonObject good = JsonNode.Parse(supply.Document)!.AsObject();
        good["units"] = JsonPath.Camel(supply.Units.ToString());
        good["currency"] = supply.Currency;
        good["pricedOn"] = supply.PricedOn.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        good["version"] = supply.Version;
        return good;
    }

    internal static JsonObject WriteAll(ImmutableArray<Supply> supplies)
    {
        var all = new JsonObject();
        foreach (SupplySort sort in Enum.GetValues<SupplySort>())
        {
            all[JsonPath.Camel(sort.ToString())] = WriteSort(supplies, sort);
        }

        return all;
    }

    internal static JsonArray WriteSort(ImmutableArray<Supply> supplies, SupplySort sort) =>
        [.. supplies.Where(supply => supply.Sort == sort).Select(Write)];
}
