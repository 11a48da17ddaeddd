namespace PanelService.Store.Model;

/// <summary>An order that waits for a planner, or is being planned, and must not be lost.</summary>
internal sealed class JobRow
{
    public required string Id { get; init; }

    /// <summary>The order as it is to be planned, what was left out filled in.</summary>
    public required string Filled { get; init; }

    /// <summary>Who handed it in; null for one of an older program.</summary>
    public string? Client { get; init; }

    /// <summary>Unix milliseconds.</summary>
    public required long CreatedAt { get; init; }

    /// <summary>waiting, planning, done, failed or dropped.</summary>
    public required string State { get; set; }

    /// <summary>Who plans it.</summary>
    public string? Planner { get; set; }

    /// <summary>
    /// The entry of the queue under which it is planned: that entry comes back to it, whoever is given it again. Where no hosts share a
    /// queue: how often it was begun again after a start.
    /// </summary>
    public string? Ticket { get; set; }

    /// <summary>When it was first taken on, in Unix milliseconds.</summary>
    public long? TakenAt { get; set; }

    public long? SpentMinor { get; set; }

    public long? LeastPossibleMinor { get; set; }

    public bool StopAsked { get; set; }

    /// <summary>Why there is no plan: a problem document.</summary>
    public string? Problem { get; set; }
}
