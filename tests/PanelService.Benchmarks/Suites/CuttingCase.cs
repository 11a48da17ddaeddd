using PanelService.Cutting;

namespace PanelService.Benchmarks.Suites;

/// <summary>One problem for the cutting engine.</summary>
/// <param name="Group">What its figures are summed under.</param>
/// <param name="Name">What it is called in the details.</param>
/// <param name="Problem">The problem.</param>
public sealed record CuttingCase(string Group, string Name, CuttingProblem Problem)
{
    /// <summary>A price some plan is known to reach; null where nothing is known.</summary>
    public long? KnownPlan { get; init; }

    /// <summary>A price no plan can go below, as published; null where nothing is known.</summary>
    public long? KnownBound { get; init; }
}
