using System.Collections.Immutable;
using PanelService.Planning.Measures;

namespace PanelService.Planning.Sizes;

/// <summary>
/// What is to be cut: how many of each line at what size. A line may also come ready-made at a price: the engine
/// then sees it as a stock of exactly the panel's size that nothing else can be cut from, so that making and buying
/// are weighed against each other inside the plan and inside the bound.
/// </summary>
/// <param name="Counts">Per line; 0: none.</param>
/// <param name="Sizes">Per line.</param>
/// <param name="Ready">Per line: at what price how many ready-made ones may be had here, or null; empty: none is offered.</param>
internal sealed record CutRequest(ImmutableArray<int> Counts, ImmutableArray<CutSize> Sizes, ImmutableArray<ReadyOffer?> Ready)
{
    /// <summary>The lines of which some are wanted.</summary>
    public IEnumerable<int> Lines => Enumerable.Range(0, Counts.Length).Where(i => Counts[i] > 0);

    /// <summary>At what price how many ready-made panels of a line may be had here; null: none.</summary>
    public ReadyOffer? ReadyFor(int line) => Ready.IsEmpty ? null : Ready[line];
}

/// <summary>Ready-made panels of one line.</summary>
/// <param name="Price">What one costs here.</param>
/// <param name="Most">How many may be taken.</param>
internal sealed record ReadyOffer(Money Price, int Most)
{
    /// <summary>What the ready-made panels taken cost at what they were offered for.</summary>
    /// <param name="request">What was offered.</param>
    /// <param name="taken">Per line: how many were taken.</param>
    public static Money Cost(CutRequest request, ImmutableArray<int> taken) => taken
        .Select((count, line) => (request.ReadyFor(line)?.Price ?? Money.Zero) * count)
        .Aggregate(Money.Zero, (sum, cost) => sum + cost);
}
