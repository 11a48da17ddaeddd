using System.Text.Json;
using PanelService.Planning.Measures;
using PanelService.Store.Settings;
using PanelService.Store.Shelves;
using PanelService.Validation;
using PanelService.Wire.Orders;
using PanelService.Wire.Reading;
using PanelService.Wire.Studio;

namespace PanelService.Shelves;

/// <summary>Orders that leave out settings or goods take the saved settings, the saved supplies and what is in stock.</summary>
internal sealed class OrderFiller(ShelfBook book) : IBodyFiller<OrderRequest>
{
    /// <inheritdoc/>
    public Task<Shelf> LoadAsync(CancellationToken cancellation) => book.ReadAsync(cancellation);

    /// <inheritdoc/>
    public Filled<OrderRequest> Fill(OrderRequest request, OrderMeasures measures, Shelf shelf, Faults faults)
    {
        OrderRequest order = shelf.Settings is { } saved && Read(saved) is { } settings
            ? SettingsMerge.Over(request, In(settings, saved.Units, measures.Units), saved.Currency == measures.Currency.Code) with
            {
                Units = measures.Units,
                Currency = request.Currency ?? saved.Currency,
            }
            : request;
        return new GoodsFiller(shelf, measures, faults).Fill(order);
    }

    // A weight is a bare number, so it changes with the units; lengths know theirs.
    private static StudioSettingsRequest In(StudioSettingsRequest settings, LengthUnit from, LengthUnit to) =>
        settings.Strength?.Load is { } load && from != to
            ? settings with { Strength = settings.Strength with { Load = Weight.From(load, from).In(to) } }
            : settings;

    private static StudioSettingsRequest? Read(SavedSettings saved)
    {
        var faults = new Faults();
        using JsonDocument document = JsonDocument.Parse(saved.Document);
        StudioSettingsRequest? read = new JsonBinder(saved.Units, faults).Read<StudioSettingsRequest>(document.RootElement);
        return faults.Any ? null : read;
    }
}
