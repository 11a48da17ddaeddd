namespace PanelService.Store.Model;

/// <summary>One line of the ledger. Never changed, never deleted: the database itself refuses it.</summary>
internal sealed class MovementRow
{
    public long Id { get; init; }

    public required long BookingId { get; init; }

    public required string StockId { get; init; }

    /// <summary>Pieces, or nanolitres of a liquid; below 0 where it leaves.</summary>
    public required long Quantity { get; init; }

    public required string Reason { get; init; }

    /// <summary>The movement this one takes back.</summary>
    public long? UndoOf { get; init; }

    /// <summary>What a correction changed besides the quantity: JSON of before and after.</summary>
    public string? Change { get; init; }
}
