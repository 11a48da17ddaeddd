using System.Collections.Immutable;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Cloth.Bounds;

/// <summary>What cloth can be had in: a remnant, a roll, or one step of a cloth sold by length.</summary>
/// <param name="Cloth">The cloth.</param>
/// <param name="IsRemnant">Whether it is on hand.</param>
/// <param name="IsStep">Whether it is a step: several of them are one longer piece of cloth.</param>
/// <param name="Usable">Usable width in steps of length.</param>
/// <param name="Length">Length along the roll.</param>
/// <param name="Price">What one counts as, in minor units.</param>
/// <param name="Most">How many there are; null: any number.</param>
internal sealed record ClothGood(
    ClothSupply Cloth, bool IsRemnant, bool IsStep, long Usable, long Length, long Price, int? Most)
{
    /// <summary>Everything an order offers that is of any use.</summary>
    public static ImmutableArray<ClothGood> AllOf(Order order) =>
        [.. order.Cloths.SelectMany(Of).Where(good => good.Usable > 0 && good.Most is null or > 0)];

    private static IEnumerable<ClothGood> Of(ClothSupply cloth)
    {
        var remnants = cloth.Remnants.Select(remnant => new ClothGood(
            cloth, IsRemnant: true, IsStep: false, remnant.Width.Steps, remnant.Length.Steps, remnant.Value.Minor, remnant.Quantity));
        long usable = (cloth.Width - (cloth.Selvedge * 2)).Steps;
        return cloth.Sale switch
        {
            SaleByLength sale => remnants.Append(new ClothGood(
                cloth, IsRemnant: false, IsStep: true, usable, sale.Step.Steps, sale.Price.Minor, sale.AtMost)),
            SaleByRoll sale => remnants.Append(new ClothGood(
                cloth, IsRemnant: false, IsStep: false, usable, sale.Length.Steps, sale.Price.Minor, sale.ForSale)),
            _ => remnants,
        };
    }
}
