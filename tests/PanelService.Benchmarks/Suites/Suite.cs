using PanelService.Benchmarks.Running;

namespace PanelService.Benchmarks.Suites;

/// <summary>A named set of cases.</summary>
/// <param name="Name">What it is called on the command line.</param>
/// <param name="Reach">What it must reach, in words.</param>
/// <param name="Run">Runs its cases one after another.</param>
/// <param name="NeedsData">Whether it reads the data folder.</param>
public sealed record Suite(
    string Name, string Reach, Func<Options, IEnumerable<Measurement>> Run, bool NeedsData = false);
