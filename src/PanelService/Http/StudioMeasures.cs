using PanelService.Planning.Measures;
using PanelService.Store.Settings;
using PanelService.Validation;

namespace PanelService.Http;

/// <summary>The units and the currency of a request that names none: the studio's own, else the defaults.</summary>
internal sealed class StudioMeasures(SettingsBook settings)
{
    internal async Task<OrderMeasures> ReadAsync(CancellationToken cancellation) =>
        await settings.FindAsync(cancellation) is { } saved
            ? new OrderMeasures(saved.Units, Currencies.Find(saved.Currency) ?? Defaults.Currency)
            : new OrderMeasures(Defaults.Units, Defaults.Currency);
}
