namespace PanelService.Benchmarks.Suites;

/// <summary>A named set of problems for the cutting engine.</summary>
/// <param name="Name">What it is called on the command line.</param>
/// <param name="Reach">What it must reach, in words.</param>
/// <param name="Cases">Its cases, given the data folder (null where none was named).</param>
/// <param name="NeedsData">Whether it reads the data folder.</param>
public sealed record CuttingSuite(
    string Name, string Reach, Func<string?, IEnumerable<CuttingCase>> Cases, bool NeedsData = false);
