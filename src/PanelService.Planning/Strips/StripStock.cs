using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Strips;

/// <summary>Strips of one length from one source at one price.</summary>
/// <param name="Strip">The strip.</param>
/// <param name="Source">Bought or on hand.</param>
/// <param name="Price">What one counts as.</param>
/// <param name="Limit">At most so many; null: any number.</param>
internal sealed record StripStock(StripSupply Strip, Source Source, Money Price, int? Limit)
{
    /// <summary>All strips there are, at the price of one.</summary>
    public static ImmutableArray<StripStock> AllOf(Order order) =>
    [
        .. order.Strips
            .SelectMany(strip => new[]
            {
                new StripStock(strip, Source.OnHand, strip.Value, strip.OnHand),
                new StripStock(strip, Source.Bought, strip.Price, strip.ForSale),
            })
            .Where(stock => stock.Limit is null or > 0),
    ];
}
