using System.Collections.Immutable;
using PanelService.Cutting;

namespace PanelService.Benchmarks.Suites;

/// <summary>One sheet whose best value is published.</summary>
/// <param name="Group">What its figures are summed under.</param>
/// <param name="Name">What it is called in the details.</param>
/// <param name="Optimum">The published value.</param>
/// <param name="Solve">Computes a value and a bound that none exceeds.</param>
/// <param name="Sheet">The sheet and its pieces, for the check.</param>
/// <param name="Values">Per piece: the worth of one.</param>
public sealed record ValueCase(
    string Group, string Name, long Optimum, Func<(long Value, long Bound)> Solve, CuttingProblem Sheet, ImmutableArray<int> Values);
