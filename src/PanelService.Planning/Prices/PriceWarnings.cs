using System.Collections.Immutable;
using PanelService.Planning.Batches;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Prices;

/// <summary>What to tell the painter where not every way of shopping was tried.</summary>
internal static class PriceWarnings
{
    /// <summary>The warnings of a batch.</summary>
    public static ImmutableArray<Warning> Of(BatchChoice choice) =>
    [
        .. choice.Best.Boards.Outcome.PricesOpen || choice.Best.Cloth.Outcome.PricesOpen || choice.Best.Strips.Outcome.PricesOpen
            ? [new Warning("quantity-prices-open", "There are more ways to combine the quantity prices than were tried: a cheaper one may exist. The least possible holds for all of them.")]
            : ImmutableArray<Warning>.Empty,
        .. choice.ShopsOpen
            ? [new Warning("shops-open", "There are more ways to choose among the shops than were tried: a cheaper one may exist. The least possible holds for all of them.")]
            : ImmutableArray<Warning>.Empty,
    ];
}
