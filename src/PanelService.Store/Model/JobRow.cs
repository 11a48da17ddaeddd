namespace PanelService.Store.Model;

/// <summary>An order that waits for a planner, or is being planned, where several hosts share one database.</summary>
internal sealed class JobRow
{
    public required string Id { get; init; }

    /// <summary>The order as it is to be planned, what was left out filled in.</summary>
    public required string Filled { get; init; }

    /// <summary>Unix milliseconds.</summary>
    public required long CreatedAt { get; init; }

    /// <summary>waiting, planning, done, failed or dropped.</summary>
    public required string State { get; set; }

    /// <summary>Who plans it.</summary>
    public string? Planner { get; set; }

    public long? SpentMinor { get; set; }

    public long? LeastPossibleMinor { get; set; }

    public bool StopAsked { get; set; }

    /// <summary>Why there is no plan: a problem document.</summary>
    public string? Problem { get; set; }
}
