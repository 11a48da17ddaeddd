using PanelService.Planning.Measures;

namespace PanelService.Store.Stock;

/// <summary>Quantities in the ledger are whole numbers, so that sums are exact: pieces, and nanolitres of a liquid.</summary>
public static class StockQuantity
{
    private const decimal NanolitresPerMillilitre = 1_000_000m;

    /// <summary>Whether a sort is counted in nanolitres.</summary>
    /// <param name="sort">The sort.</param>
    public static bool IsLiquid(StockSort sort) => sort is StockSort.Adhesive or StockSort.Primer;

    /// <summary>A volume in nanolitres, rounded to the nearest.</summary>
    /// <param name="volume">The volume.</param>
    public static long Of(Volume volume) => (long)Math.Round(volume.Millilitres * NanolitresPerMillilitre, MidpointRounding.AwayFromZero);

    /// <summary>Nanolitres as a volume.</summary>
    /// <param name="nanolitres">How many.</param>
    public static Volume VolumeOf(long nanolitres) => new(nanolitres / NanolitresPerMillilitre);
}
