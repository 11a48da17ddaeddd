using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning;

/// <summary>
/// Adds the engine's progress on one material to what the others came to. Only bounds that hold for
/// the whole batch are passed on.
/// </summary>
/// <param name="listener">Whom to tell.</param>
/// <param name="before">What the others came to; no price while one of them is still to be planned.</param>
internal sealed class ProgressMeter(IProgress<PlanProgress> listener, CuttingProgress before) : IProgress<CuttingProgress>
{
    /// <inheritdoc/>
    public void Report(CuttingProgress value) => listener.Report(new PlanProgress(
        value.Spent is { } spent && before.Spent is { } spentBefore ? new Money(spent + spentBefore) : null,
        new Money(value.LeastPossible + before.LeastPossible)));
}
