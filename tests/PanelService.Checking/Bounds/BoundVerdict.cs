namespace PanelService.Checking.Bounds;

/// <summary>What became of checking a bound.</summary>
/// <param name="Finding">The outcome.</param>
/// <param name="Why">What is wrong, or what was too much work; empty where all was computed again and is right.</param>
public sealed record BoundVerdict(BoundFinding Finding, string Why = "")
{
    /// <summary>Everything was computed again.</summary>
    public static readonly BoundVerdict Right = new(BoundFinding.Right);

    /// <summary>Something stated is not true, or the claim does not follow.</summary>
    /// <param name="why">What.</param>
    public static BoundVerdict Wrong(string why) => new(BoundFinding.Wrong, why);

    /// <summary>Something was too much work to compute again: nothing is known.</summary>
    /// <param name="why">What.</param>
    public static BoundVerdict NotRechecked(string why) => new(BoundFinding.NotRechecked, why);
}

/// <summary>Outcomes.</summary>
public enum BoundFinding
{
    /// <summary>The bound is a true one.</summary>
    Right,

    /// <summary>The bound, or what it is said to rest on, is not true.</summary>
    Wrong,

    /// <summary>Not computed again. This is not a sort of right.</summary>
    NotRechecked,
}
