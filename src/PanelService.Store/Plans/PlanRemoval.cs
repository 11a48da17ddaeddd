namespace PanelService.Store.Plans;

/// <summary>What deleting a plan comes to.</summary>
public enum PlanRemoval
{
    /// <summary>It is gone.</summary>
    Removed,

    /// <summary>There was none.</summary>
    NotFound,

    /// <summary>It is cut: the ledger speaks of it, so it stays.</summary>
    IsCut,
}
