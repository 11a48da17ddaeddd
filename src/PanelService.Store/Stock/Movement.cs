using PanelService.Planning.Measures;

namespace PanelService.Store.Stock;

/// <summary>A line of the ledger.</summary>
/// <param name="Id">Rising.</param>
/// <param name="Booking">Those of one booking were made together.</param>
/// <param name="At">When.</param>
/// <param name="Stock">The heap's id.</param>
/// <param name="Sort">The heap's sort.</param>
/// <param name="Units">The unit the heap is shown in.</param>
/// <param name="Quantity">Pieces or nanolitres; below 0 where they left.</param>
/// <param name="Reason">Why.</param>
/// <param name="PlanId">The plan that was cut; null for others.</param>
/// <param name="UndoOf">The movement this one takes back.</param>
/// <param name="UndoneBy">The movement that takes this one back.</param>
/// <param name="Note">What the painter noted.</param>
public sealed record Movement(
    long Id,
    long Booking,
    DateTimeOffset At,
    string Stock,
    StockSort Sort,
    LengthUnit Units,
    long Quantity,
    MovementReason Reason,
    string? PlanId,
    long? UndoOf,
    long? UndoneBy,
    string? Note);

/// <summary>Why something moved.</summary>
public enum MovementReason
{
    /// <summary>Entered by the painter.</summary>
    Added,

    /// <summary>Counted or measured again.</summary>
    Corrected,

    /// <summary>An order said that it was there.</summary>
    Declared,

    /// <summary>Used up by a cut.</summary>
    Used,

    /// <summary>Left over from a cut.</summary>
    Kept,

    /// <summary>Finished.</summary>
    Finished,

    /// <summary>Takes another movement back.</summary>
    Undone,
}
