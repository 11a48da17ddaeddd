using System.Collections.Immutable;
using System.Numerics;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Costing;

/// <summary>
/// Parts what a liquid costs. What is on hand goes first, at its share of the value; what is bought forms one pool
/// at its average price, and what is left of it keeps that price.
/// </summary>
internal static class LiquidShares
{
    // Volumes are decimals; as weights they count in billionths of a millilitre.
    private const decimal WeightsPerMillilitre = 1_000_000_000m;

    /// <summary>Puts a liquid's cost down to its lines and the rack.</summary>
    public static void Share(LiquidUse use, CostLedger ledger)
    {
        var used = Volume.Min(use.Needed - use.FromHand, use.BoughtVolume);
        var pool = LargestRemainder.Share(use.BoughtCost, PoolWeights(used, use.BoughtVolume));
        ledger.Keep(pool[1]);
        ledger.Share(
            use.IsAdhesive ? CostPart.Adhesive : CostPart.Primer,
            pool[0] + use.OnHandCost,
            [.. use.Shares.Select(share => (share.Mark, Weight(share.Volume)))]);
    }

    private static ImmutableArray<BigInteger> PoolWeights(Volume used, Volume bought) => bought == default
        ? [BigInteger.One, BigInteger.Zero]
        : [Weight(used), Weight(bought - used)];

    private static BigInteger Weight(Volume volume) => new(volume.Millilitres * WeightsPerMillilitre);
}
