using System.Text.Json;
using PanelService.Store.Model;

namespace PanelService.Store.Stock;

/// <summary>What a correction changed besides the quantity; noted beside its movement, so that it can be taken back and given again.</summary>
/// <param name="Before">What the heap was.</param>
/// <param name="After">What it became.</param>
internal sealed record StockChange(StockState Before, StockState After)
{
    /// <summary>Reads a note; null where there is none.</summary>
    internal static StockChange? Read(string? note)
    {
        if (note is null)
        {
            return null;
        }

        using var change = JsonDocument.Parse(note);
        return new(StockState.Read(change.RootElement, "before"), StockState.Read(change.RootElement, "after"));
    }

    internal string Write() => $"{{{Before.Write("before")},{After.Write("after")}}}";

    internal StockChange Reversed() => new(After, Before);

    /// <summary>Makes it so, part by part, where nobody has corrected that part since.</summary>
    internal void PutOn(StockRow row)
    {
        if (row.Good == Before.Good)
        {
            row.Good = After.Good;
        }

        if (After.ValueMinor is { } minor && row.ValueMinor == Before.ValueMinor && row.ValueOf == Before.ValueOf)
        {
            row.ValueMinor = minor;
            row.ValueOf = After.ValueOf!.Value;
        }
    }
}
