using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning;

/// <summary>Whom a search tells how far it is, and when it must stop.</summary>
/// <param name="Listener">Told of better plans and bounds; null: nobody listens.</param>
/// <param name="Before">What the other materials came to; no price while one of them is still to be planned.</param>
/// <param name="Cancellation">Ends the search.</param>
internal sealed record Search(IProgress<PlanProgress>? Listener, CuttingProgress Before, CancellationToken Cancellation)
{
    /// <summary>Told by the engine while it works on one material.</summary>
    public IProgress<CuttingProgress>? Progress => Listener is null ? null : new ProgressMeter(Listener, Before);

    /// <summary>The same search with nobody listening: for runs whose bound does not hold for the batch.</summary>
    public Search Quietly() => this with { Listener = null };

    /// <summary>The search for a material when others are planned.</summary>
    /// <param name="spent">What these cost.</param>
    /// <param name="leastPossible">What they cannot cost less than.</param>
    public Search After(Money spent, Money leastPossible) => this with
    {
        Before = new CuttingProgress((Before.Spent ?? 0) + spent.Minor, Before.LeastPossible + leastPossible.Minor),
    };

    /// <summary>The same search where another material comes after: what its plans cost is not what the batch costs.</summary>
    public Search OfPart() => this with { Before = Before with { Spent = null } };
}
