// Problem: a lower bound of the number of equal sheets that is quick and needs no patterns.
// Idea:    a function f is dual feasible when extents that fit beside one another have values that fit beside one
//          another. With one such function for widths and one for heights, a piece counts f(w) · g(h), and no sheet, cut
//          up by guillotine cuts or not, holds pieces that count more than f(W) · g(H). Many functions are tried on both
//          axes; a piece that may be turned counts the less of its two ways.
// Source:  Fekete and Schepers, Mathematical Programming 91 (2001) and Math. of OR 29 (2004): u(k) and the threshold function;
//          Carlier, Clautiaux and Moukrim, Computers & OR 34 (2007): the rounding function with a symmetric middle.
// Cost:    functions² × types; some milliseconds for 100 types. Pairs are compared in floating point, the best one is counted
//          again in whole numbers.
// Not:     as strong as the relaxation over patterns where that can be solved; one stock only.
namespace PanelService.Cutting.Many;

/// <summary>Counts sheets by dual feasible functions.</summary>
internal static class DualFeasibleBound
{
    private const int MostParts = 12;
    private const int MostThresholds = 60;

    /// <summary>No packing uses fewer sheets of the table's only stock.</summary>
    /// <param name="table">Pieces and the stock.</param>
    /// <param name="looked">Gets the number of values looked at, a measure of the work.</param>
    /// <exception cref="ArgumentException">There are several stocks.</exception>
    public static int Sheets(PieceTable table, out long looked) => Count(table, out looked).Sheets;

    /// <summary>The number of sheets with the values it comes from.</summary>
    /// <param name="table">Pieces and the stock.</param>
    /// <param name="looked">Gets the number of values looked at, a measure of the work.</param>
    /// <param name="cancellation">Ends it half-way, with an exception.</param>
    /// <exception cref="ArgumentException">There are several stocks.</exception>
    public static SheetCount Count(PieceTable table, out long looked, CancellationToken cancellation = default)
    {
        if (table.Stocks.Length != 1)
        {
            throw new ArgumentException("Sheets can be counted for one stock only.", nameof(table));
        }

        var stock = table.Stocks[0];
        var across = Functions(table.Width, stock.Width);
        var along = Functions(table.Height, stock.Height);
        looked = (long)across.Count * along.Count * table.Types;
        var best = (Value: 0.0, Across: 0, Along: 0);
        for (int a = 0; a < across.Count; a++)
        {
            cancellation.ThrowIfCancellationRequested();
            for (int b = 0; b < along.Count; b++)
            {
                double value = Value(table, across[a].Shares, along[b].Shares);
                best = value > best.Value ? (value, a, b) : best;
            }
        }

        return Exact(table, across[best.Across], along[best.Along]);
    }

    private static double Value(PieceTable table, double[] across, double[] along)
    {
        double sum = 0;
        for (int t = 0; t < table.Types; t++)
        {
            int shape = 2 * t;
            double upright = across[shape] * along[shape];
            double turned = across[shape + 1] * along[shape + 1];
            double least = !table.MayLie(0, shape + 1) ? upright : !table.MayLie(0, shape) ? turned : Math.Min(upright, turned);
            sum += table.Demand[t] * least;
        }

        return sum;
    }

    private static SheetCount Exact(PieceTable table, Function across, Function along)
    {
        // Only sheets of hundreds of metres count so much: nothing is said of them.
        if ((Int128)across.Whole * along.Whole > long.MaxValue)
        {
            return new SheetCount(0, new long[table.Types], 0);
        }

        long[] values = new long[table.Types];
        Int128 sum = 0;
        for (int t = 0; t < table.Types; t++)
        {
            long? least = null;
            for (int shape = 2 * t; shape <= (2 * t) + 1; shape++)
            {
                long value = across.Values[shape] * along.Values[shape];
                least = table.MayLie(0, shape) && (least is null || value < least) ? value : least;
            }

            values[t] = least ?? 0;
            sum += (Int128)table.Demand[t] * values[t];
        }

        long whole = across.Whole * along.Whole;
        return new SheetCount((int)((sum + whole - 1) / whole), values, whole);
    }

    private static List<Function> Functions(int[] extents, int whole)
    {
        int[] thresholds = Thin([.. extents.Where(e => e <= whole / 2).Distinct().Order()]);
        var functions = new List<Function> { Make(extents, whole, x => x, whole) };
        functions.AddRange(Enumerable.Range(1, MostParts).Select(k => Make(extents, whole, x => Parts(x, whole, k), (long)whole * k)));
        foreach (int threshold in thresholds)
        {
            functions.Add(Make(extents, whole, x => x < threshold ? 0 : x > whole - threshold ? whole : x, whole));
            functions.Add(Make(extents, whole, x => Rounded(x, whole, threshold), 2L * (whole / threshold)));
            functions.Add(Make(extents, whole, x => Rounded(x, whole, threshold + 1), 2L * (whole / (threshold + 1))));
        }

        return [.. functions.Where(f => f.Whole > 0).DistinctBy(f => string.Join(',', f.Shares))];
    }

    private static int[] Thin(int[] rising) => rising.Length <= MostThresholds
        ? rising
        : [.. Enumerable.Range(0, MostThresholds).Select(i => rising[(int)((long)i * (rising.Length - 1) / (MostThresholds - 1))])];

    /// <summary>u(k): an extent that is a whole number of (k + 1)th parts counts as it is, any other is rounded down to kth parts.</summary>
    private static long Parts(long extent, long whole, int k) =>
        (k + 1) * extent % whole == 0 ? extent * k : (k + 1) * extent / whole * whole;

    /// <summary>Rounded down to multiples of k below the middle, and up above it as far as its complement is rounded down.</summary>
    private static long Rounded(long extent, long whole, long k) => (2 * extent).CompareTo(whole) switch
    {
        < 0 => 2 * (extent / k),
        0 => whole / k,
        _ => 2 * ((whole / k) - ((whole - extent) / k)),
    };

    private static Function Make(int[] extents, int whole, Func<long, long> function, long wholeValue)
    {
        // An extent beyond the sheet's never lies so; it must not count below 0.
        long[] values = [.. extents.Select(e => function(Math.Min(e, whole)))];
        return new Function(values, wholeValue, [.. values.Select(v => wholeValue == 0 ? 0 : (double)v / wholeValue)]);
    }

    /// <summary>A function as values of all shapes' extents; <paramref name="Whole"/> is the sheet's value.</summary>
    private sealed record Function(long[] Values, long Whole, double[] Shares);
}

/// <summary>A number of sheets, and why it takes so many.</summary>
/// <param name="Sheets">The number.</param>
/// <param name="Values">Per type: what one counts.</param>
/// <param name="Cap">What no sheet holds more than.</param>
internal sealed record SheetCount(int Sheets, long[] Values, long Cap);
