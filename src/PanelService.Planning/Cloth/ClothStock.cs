using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Cloth;

/// <summary>A remnant, a roll, or a length of so many steps: what the engine knows as one stock.</summary>
/// <param name="Cloth">The cloth, as ordered.</param>
/// <param name="Remnant">The remnant it is; null where bought.</param>
/// <param name="Steps">Whole steps of its length where it is sold by length; else null.</param>
/// <param name="Width">Full width, selvedges included.</param>
/// <param name="Length">Length along the roll.</param>
/// <param name="Price">What one counts as.</param>
/// <param name="Limit">How many there are; null: any number.</param>
internal sealed record ClothStock(
    ClothSupply Cloth, Remnant? Remnant, int? Steps, Length Width, Length Length, Money Price, int? Limit)
{
    /// <summary>Whether it is a roll that is paid for whether cut into or not.</summary>
    public bool IsPaid { get; init; }

    /// <summary>Bought or on hand.</summary>
    public Source Source => Remnant is null ? Source.Bought : Source.OnHand;

    /// <summary>Lost at each side; a remnant's width is all usable.</summary>
    public Length Selvedge => Remnant is null ? Cloth.Selvedge : Length.Zero;

    /// <summary>Width between the selvedges; zero or less where nothing is left.</summary>
    public Length UsableWidth => Width - (Selvedge * 2);

    /// <summary>As the engine takes it.</summary>
    /// <param name="pieces">What is to be cut: no more length is looked at than those pieces can use.</param>
    public Stock ToStock(ImmutableArray<ClothPieces> pieces)
    {
        long useful = ShelfLength.Of(pieces, Cloth, UsableWidth.Steps);
        return new Stock(UsableWidth.Steps, useful == 0 ? Length.Steps : Math.Min(useful, Length.Steps), Price.Minor, Limit);
    }

    /// <summary>What it is cut from, between the selvedges.</summary>
    /// <param name="bench">What is kept.</param>
    public SheetFrame ToFrame(BenchSettings bench) => new(UsableWidth.Steps, Length.Steps, EdgeTrim: 0, Kerf: 0)
    {
        SmallestKept = (bench.SmallestClothWidth.Steps, bench.SmallestClothHeight.Steps),
        Selvedge = Selvedge.Steps,
    };

    /// <summary>A remnant.</summary>
    public static ClothStock Of(ClothSupply cloth, Remnant remnant) =>
        new(cloth, remnant, Steps: null, remnant.Width, remnant.Length, remnant.Value, remnant.Quantity);

    /// <summary>A whole roll.</summary>
    public static ClothStock Of(ClothSupply cloth, SaleByRoll sale) =>
        new(cloth, Remnant: null, Steps: null, cloth.Width, sale.Length, sale.Price, sale.ForSale);

    /// <summary>A length of so many steps.</summary>
    public static ClothStock Of(ClothSupply cloth, SaleByLength sale, int steps) =>
        new(cloth, Remnant: null, steps, cloth.Width, sale.Step * steps, sale.Price * steps, sale.AtMost / steps);
}
