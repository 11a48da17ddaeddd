using PanelService.Store.Shelves;
using PanelService.Validation;
using PanelService.Wire.Reading;

namespace PanelService.Shelves;

/// <summary>Fills in what a request leaves out, from what the studio has saved.</summary>
/// <typeparam name="T">The wire record.</typeparam>
internal interface IBodyFiller<T>
    where T : class, IMeasuredRequest
{
    /// <summary>What there is to fill in from.</summary>
    Task<Shelf> LoadAsync(CancellationToken cancellation);

    /// <summary>Fills in.</summary>
    /// <param name="request">As it was read.</param>
    /// <param name="measures">Its units and currency.</param>
    /// <param name="shelf">What there is.</param>
    /// <param name="faults">Told what cannot be filled in.</param>
    Filled<T> Fill(T request, OrderMeasures measures, Shelf shelf, Faults faults);
}
