using PanelService.Planning.Measures;

namespace PanelService.Http;

/// <summary>What an order that does not say is taken to mean; the plan then says so in a warning.</summary>
internal static class Defaults
{
    internal const LengthUnit Units = LengthUnit.Inch;

    internal static readonly Currency Currency = Currencies.Find("EUR")!;
}
