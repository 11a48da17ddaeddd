using System.Collections.Immutable;

namespace PanelService.Cutting;

/// <summary>
/// Why no plan costs less than a price, in whole numbers that anyone can compute again: every plan's counts of stocks
/// meet every inequality and are none of the excluded ones, and the cheapest counts within the stocks' limits of which
/// that is true cost <see cref="Claim"/> or more. Pieces and stocks are those of the problem, in its order.
/// </summary>
/// <param name="Claim">No plan that meets the demand costs less; as found, so that it stands above the price of the plan
/// where it is wrong. <see cref="long.MaxValue"/>: that there is no plan at all.</param>
/// <param name="Inequalities">What holds for the counts of every plan.</param>
/// <param name="Exclusions">Counts from which an exhaustive search found no plan.</param>
/// <param name="NoneBelow">No plan costs less, by exhausting all of them; null where that was not done.</param>
public sealed record BoundProof(
    long Claim,
    ImmutableArray<WorthInequality> Inequalities,
    ImmutableArray<CountExclusion> Exclusions,
    long? NoneBelow)
{
    /// <summary>Claims nothing.</summary>
    public static readonly BoundProof None = new(0, [], [], null);
}

/// <summary>
/// A worth for every piece such that no pattern of stock s is worth more than Caps[s]. So the counts n of the stocks
/// used by any plan have Σ Caps[s] · n[s] ≥ Σ Values[i] · demand[i].
/// </summary>
/// <param name="Values">Per piece: the worth of one, 0 or more, in a unit of its own.</param>
/// <param name="Caps">Per stock: the most that one pattern is worth, in the same unit.</param>
/// <param name="Scope">The patterns for which that is said.</param>
public sealed record WorthInequality(ImmutableArray<long> Values, ImmutableArray<long> Caps, CapScope Scope);

/// <summary>Of which patterns a cap is said.</summary>
public enum CapScope
{
    /// <summary>Of every pattern.</summary>
    EveryPattern,

    /// <summary>Of those that hold no more of any piece than its demand. Every plan can be made of such patterns alone.</summary>
    WithinDemand,
}

/// <summary>Counts of stocks that are too few: no plan uses at most so many of each.</summary>
/// <param name="Counts">Per stock of the problem.</param>
/// <param name="How">How that was found.</param>
public sealed record CountExclusion(ImmutableArray<int> Counts, ExclusionSource How);

/// <summary>How counts came to be excluded.</summary>
public enum ExclusionSource
{
    /// <summary>Every pattern that wastes little enough was listed, and no set of them is a plan.</summary>
    AllTightPatterns,

    /// <summary>A search over all plans from these counts ended without one.</summary>
    AllPlans,
}
