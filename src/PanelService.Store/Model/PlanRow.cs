namespace PanelService.Store.Model;

/// <summary>A stored plan: the document, the order as it was sent, and what a list shows of them.</summary>
internal sealed class PlanRow
{
    public required string Id { get; init; }

    public required string Title { get; init; }

    /// <summary>The title folded for searching.</summary>
    public required string TitleKey { get; init; }

    /// <summary>Unix milliseconds.</summary>
    public required long CreatedAt { get; init; }

    public required bool Stopped { get; init; }

    public required int DocumentVersion { get; init; }

    /// <summary>The plan as PlanDocument writes it.</summary>
    public required string Document { get; init; }

    /// <summary>The order as it was sent.</summary>
    public required string Order { get; init; }

    /// <summary>Which goods of the order are pieces in stock.</summary>
    public required string Links { get; init; }

    public required string Units { get; init; }

    public required string Currency { get; init; }

    /// <summary>What the list shows without reading the document.</summary>
    public required long SpentMinor { get; init; }

    public required long LeastPossibleMinor { get; init; }

    public required int Panels { get; init; }

    /// <summary>The booking that cut it; null while it is not cut.</summary>
    public long? CutBooking { get; set; }
}
