using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Cloth;

/// <summary>Which cloth may serve which line, how the piece may lie on it, and how large it is.</summary>
internal static class ClothFit
{
    // A kilometre: longer than any piece.
    private static readonly Length _anyLength = Length.FromMillimetres(1_000_000);

    /// <summary>How a line's pieces may lie on a cloth, or not at all; cloth without a warp of its own lies either way.</summary>
    public static Turning TurningOn(PanelLine line, ClothSupply cloth)
    {
        if (!KindMatch.Serves(line.Cloth, cloth.Kind))
        {
            return Turning.None;
        }

        return cloth.Warp == Grain.Height ? Turning.Upright : Turning.Either;
    }

    /// <summary>The piece for a panel: its cut size and a margin on every side, and so much more as it shrinks by.</summary>
    public static CutSize WithMargins(CutSize panel, BenchSettings bench) => new(
        Allowed(panel.Width + bench.MarginAcross, bench.ShrinkageWidth),
        Allowed(panel.Height + bench.MarginAlong, bench.ShrinkageHeight));

    private static Length Allowed(Length length, decimal percent) =>
        percent == 0 ? length : Length.Nearest(length.Steps * (100 + percent) / 100);

    /// <summary>The largest usable rectangles there are of a cloth: each remnant, and the longest that is for sale.</summary>
    public static IEnumerable<(Length Width, Length Height)> Longest(ClothSupply cloth)
    {
        var usable = cloth.Width - (cloth.Selvedge * 2);
        var forSale = cloth.Sale switch
        {
            SaleByRoll { ForSale: null or > 0 } sale => sale.Length,
            SaleByLength { AtMost: { } most } sale => sale.Step * most,
            SaleByLength => _anyLength,
            _ => Length.Zero,
        };
        return cloth.Remnants.Select(remnant => (remnant.Width, remnant.Length)).Append((usable, forSale));
    }
}
