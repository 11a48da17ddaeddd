using PanelService.Cutting;
using PanelService.Planning.Plans;
using PanelService.Planning.Sizes;

namespace PanelService.Planning;

/// <summary>Whom a search tells how far it is, and when it must stop.</summary>
/// <param name="Listener">Told of better plans and bounds; null: nobody listens.</param>
/// <param name="Before">What the materials before this one came to.</param>
/// <param name="Cancellation">Ends the search.</param>
internal sealed record Search(IProgress<PlanProgress>? Listener, CuttingProgress Before, CancellationToken Cancellation)
{
    /// <summary>Told by the engine while it works on one material.</summary>
    public IProgress<CuttingProgress>? Progress => Listener is null ? null : new ProgressMeter(Listener, Before);

    /// <summary>The same search with nobody listening: for runs whose bound does not hold for the batch.</summary>
    public Search Quietly() => this with { Listener = null };

    /// <summary>The search for the next material.</summary>
    /// <param name="outcome">What the material before it came to.</param>
    public Search After(CutOutcome outcome) => this with
    {
        Before = new CuttingProgress(
            (Before.Spent ?? 0) + outcome.Spent.Minor, Before.LeastPossible + outcome.LeastPossible.Minor),
    };
}
