namespace PanelService.Store.Jobs;

/// <summary>How far a shared job is.</summary>
public enum JobState
{
    /// <summary>No planner has taken it on yet, or the one that had is gone.</summary>
    Waiting,

    /// <summary>A planner is at it.</summary>
    Planning,

    /// <summary>Its plan is stored.</summary>
    Done,

    /// <summary>There is no plan; the problem says why.</summary>
    Failed,

    /// <summary>Nobody wants it any more.</summary>
    Dropped,
}
