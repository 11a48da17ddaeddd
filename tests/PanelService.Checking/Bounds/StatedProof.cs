using System.Collections.Immutable;

namespace PanelService.Checking.Bounds;

/// <summary>What is said to make a plan below a price impossible.</summary>
/// <param name="Claim">The price: no plan costs less. <see cref="long.MaxValue"/>: there is no plan.</param>
/// <param name="Inequalities">Each: no pattern of stock s is worth more than its cap.</param>
/// <param name="Exclusions">Each: no plan uses at most so many of each stock.</param>
/// <param name="NoneBelow">All plans are said to have been looked through, and none costs less; null: that is not said.</param>
public sealed record StatedProof(
    long Claim,
    ImmutableArray<StatedInequality> Inequalities,
    ImmutableArray<ImmutableArray<int>> Exclusions,
    long? NoneBelow);

/// <summary>A worth per piece, and what no pattern of each stock is worth more than.</summary>
/// <param name="Values">Per piece, 0 or more.</param>
/// <param name="Caps">Per stock.</param>
public sealed record StatedInequality(ImmutableArray<long> Values, ImmutableArray<long> Caps);
