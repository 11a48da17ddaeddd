namespace PanelService.Planning.SawRun;

/// <summary>How much work the saw run's searches may do.</summary>
/// <param name="Settings">For few settings: parts of a graph looked at.</param>
/// <param name="Sequence">For a short sequence of one set of settings.</param>
/// <param name="Passes">For either: passes over the graph, so that small batches are done sooner.</param>
/// <param name="Proof">Deterministic time of the proof, about a second each.</param>
internal sealed record SawEffort(long Settings, long Sequence, long Passes, double Proof)
{
    /// <summary>What an ordinary plan gets.</summary>
    public static SawEffort Ordinary { get; } = new(30_000_000, 2_000_000, 4_000, 0.5);
}
