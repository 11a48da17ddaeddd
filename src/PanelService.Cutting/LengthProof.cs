using System.Collections.Immutable;

namespace PanelService.Cutting;

/// <summary>
/// Why no plan of a <see cref="LengthProblem"/> costs less than a price, in whole numbers that anyone can compute again:
/// every plan's counts of goods meet every inequality and lie within none of the exclusions, and all counts of which that is true
/// cost <see cref="Claim"/> or more. Goods are the problem's sheets, then its lengths, counted in steps.
/// </summary>
/// <param name="Claim">No plan costs less.</param>
/// <param name="Inequalities">What holds for the counts of every plan.</param>
/// <param name="Exclusions">Per good: no plan uses at most so many of each. By listing every pattern that wastes little enough.</param>
public sealed record LengthProof(
    long Claim, ImmutableArray<LengthInequality> Inequalities, ImmutableArray<ImmutableArray<int>> Exclusions)
{
    /// <summary>Claims nothing.</summary>
    public static readonly LengthProof None = new(0, [], []);
}

/// <summary>
/// A worth for every piece such that n of a good hold no more than Holds[good][n]. So the counts n of the goods that any plan
/// uses have Σ Holds[g][n[g]] ≥ Σ Values[i] · demand[i].
/// </summary>
/// <param name="Values">Per piece: the worth of one, 0 or more, in a unit of its own.</param>
/// <param name="Holds">Per good and count, from 0 on: the most that so many hold, steps in one piece. What is beyond the last is of no use.</param>
public sealed record LengthInequality(ImmutableArray<long> Values, ImmutableArray<ImmutableArray<long>> Holds);
