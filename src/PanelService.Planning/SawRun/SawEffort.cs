namespace PanelService.Planning.SawRun;

/// <summary>How much work the saw run's searches may do.</summary>
/// <param name="Settings">For few settings: parts of a graph looked at.</param>
/// <param name="Sequence">For a short run at so few settings.</param>
/// <param name="Passes">For either: passes over the graph, so that small batches are done sooner.</param>
/// <param name="Proof">Deterministic time of the proof of settings, about a second each.</param>
/// <param name="Steps">The same for the proof of steps, which is the dearest: its deterministic time takes ten times as long; 0: only what is plain is said.</param>
internal sealed record SawEffort(long Settings, long Sequence, long Passes, double Proof, double Steps)
{
    /// <summary>Of runs at more settings than this only what is plain is said of the steps: of sixteen and more none was proven in a second.</summary>
    public int MostProven { get; init; } = 15;

    /// <summary>What an ordinary plan gets.</summary>
    public static SawEffort Ordinary { get; } = new(30_000_000, 8_000_000, 3_000, 0.5, 0.05);

    /// <summary>What a plan gets that may take its time.</summary>
    public static SawEffort Patient { get; } = Ordinary with { Sequence = 20_000_000, Steps = 0.5, MostProven = 30 };

    /// <summary>What a first look gets.</summary>
    public static SawEffort Brief { get; } = new(3_000_000, 3_000_000, 800, 0, 0);
}
