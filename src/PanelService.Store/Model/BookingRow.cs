namespace PanelService.Store.Model;

/// <summary>Movements that were booked together, all or none.</summary>
internal sealed class BookingRow
{
    public long Id { get; init; }

    public required string Kind { get; init; }

    /// <summary>Unix milliseconds.</summary>
    public required long At { get; init; }

    public string? PlanId { get; init; }

    /// <summary>The booking this one takes back as a whole.</summary>
    public long? UndoOf { get; init; }

    public string? Note { get; init; }

    /// <summary>What was spoiled, for a cut: JSON of marks and counts.</summary>
    public string? Spoiled { get; init; }
}
