using PanelService.Store.Shelves;
using PanelService.Validation;
using PanelService.Wire.Reading;

namespace PanelService.Shelves;

/// <summary>Requests of which nothing is filled in but the studio's units and currency.</summary>
/// <typeparam name="T">The wire record.</typeparam>
internal sealed class MeasuresFiller<T>(ShelfBook book) : IBodyFiller<T>
    where T : class, IMeasuredRequest
{
    /// <inheritdoc/>
    public Task<Shelf> LoadAsync(CancellationToken cancellation) => book.ReadAsync(cancellation);

    /// <inheritdoc/>
    public Filled<T> Fill(T request, OrderMeasures measures, Shelf shelf, Faults faults) => new(request, [], []);
}
