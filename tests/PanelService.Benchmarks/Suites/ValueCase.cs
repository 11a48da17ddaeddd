namespace PanelService.Benchmarks.Suites;

/// <summary>One sheet whose best value is published.</summary>
/// <param name="Group">What its figures are summed under.</param>
/// <param name="Name">What it is called in the details.</param>
/// <param name="Optimum">The published value.</param>
/// <param name="Solve">Computes a value and a bound that none exceeds.</param>
public sealed record ValueCase(string Group, string Name, long Optimum, Func<(long Value, long Bound)> Solve);
