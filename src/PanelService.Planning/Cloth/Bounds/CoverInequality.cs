using System.Collections.Immutable;

namespace PanelService.Planning.Cloth.Bounds;

/// <summary>
/// What every plan keeps to: the goods it uses hold pieces of some worth, and all pieces are worth so much. With a
/// count n of every good, the sum of n × <see cref="Holds"/> is at least <see cref="Needs"/>.
/// </summary>
/// <param name="Holds">Per good: no way of cutting one holds pieces worth more.</param>
/// <param name="Needs">What all pieces are worth together.</param>
internal sealed record CoverInequality(ImmutableArray<double> Holds, double Needs);
