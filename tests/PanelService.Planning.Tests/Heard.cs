using PanelService.Planning.Plans;

namespace PanelService.Planning.Tests;

/// <summary>Keeps what it is told, in the thread that tells it.</summary>
internal sealed class Heard : IProgress<PlanProgress>
{
    public List<PlanProgress> Told { get; } = [];

    public void Report(PlanProgress value) => Told.Add(value);
}
