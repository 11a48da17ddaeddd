using System.Text.Json;
using PanelService.Store.Model;

namespace PanelService.Store.Stock;

/// <summary>What a heap is and counts as, apart from how much of it there is.</summary>
/// <param name="Good">What it is, as stored.</param>
/// <param name="ValueMinor">Minor units that <paramref name="ValueOf"/> of it counts as; null where an older program did not note it.</param>
/// <param name="ValueOf">1 for pieces; for a liquid the nanolitres that the value was said of.</param>
internal sealed record StockState(string Good, long? ValueMinor, long? ValueOf)
{
    internal static StockState Of(StockRow row) => new(row.Good, row.ValueMinor, row.ValueOf);

    /// <summary>Reads the state under a name of a noted change.</summary>
    internal static StockState Read(JsonElement change, string name)
    {
        bool isValued = change.TryGetProperty(name + "Value", out JsonElement value);
        return new(
            change.GetProperty(name).GetRawText(),
            isValued ? value.GetProperty("minor").GetInt64() : null,
            isValued ? value.GetProperty("of").GetInt64() : null);
    }

    /// <summary>Writes the state under a name of a change to be noted.</summary>
    internal string Write(string name) =>
        $"\"{name}\":{Good}" + (ValueMinor is null ? "" : FormattableString.Invariant($",\"{name}Value\":{{\"minor\":{ValueMinor},\"of\":{ValueOf}}}"));
}
