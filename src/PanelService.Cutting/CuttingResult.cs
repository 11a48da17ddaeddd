using System.Collections.Immutable;

namespace PanelService.Cutting;

/// <summary>The best plan found and how much cheaper any plan could be at most.</summary>
/// <param name="Patterns">What is cut from which stock. Together they hold every piece exactly as often as
/// demanded, less <paramref name="Missing"/>.</param>
/// <param name="Spent">The patterns' total price.</param>
/// <param name="LeastPossible">A true lower bound of the price of every plan that meets the demand; never above
/// <paramref name="Spent"/> while nothing is missing.</param>
/// <param name="Missing">Per piece: how many could not be placed (limits too tight, or too large for every stock).</param>
/// <param name="StoppedEarly">Whether cancellation ended the search; such a result need not repeat.</param>
public sealed record CuttingResult(
    ImmutableArray<PatternUse> Patterns,
    long Spent,
    long LeastPossible,
    ImmutableArray<int> Missing,
    bool StoppedEarly)
{
    /// <summary>Why no plan costs less than <see cref="LeastPossible"/>: figures that can be computed again.</summary>
    public BoundProof Proof { get; init; } = BoundProof.None;

    /// <summary>Whether every piece was placed.</summary>
    public bool Complete => Missing.All(count => count == 0);
}
