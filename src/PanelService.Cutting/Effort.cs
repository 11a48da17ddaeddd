namespace PanelService.Cutting;

/// <summary>How much work the search may do. Counted in steps of work, never in seconds, so that plans repeat.</summary>
public enum Effort
{
    /// <summary>An answer while typing.</summary>
    Quick,

    /// <summary>The default: enough to prove almost every studio order.</summary>
    Steady,

    /// <summary>Every strategy, with about ten times the work.</summary>
    Thorough,
}
