using System.Collections.Immutable;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Cloth.Bounds;

/// <summary>
/// Dual feasible functions: parts of a whole that are together at most 1 have values that are together at most 1.
/// u(k) takes x itself where (k + 1)·x is whole, else its whole part over k: seven pieces that lie six across are
/// worth a sixth each. Source: Fekete and Schepers, Mathematical Programming 91, 2001.
/// </summary>
internal static class DualFeasible
{
    private const int MostParts = 32;

    /// <summary>
    /// Per piece, the length of cloth it is worth: f(across) · along at the least over the ways it may lie, for the
    /// function that makes all pieces together worth most; null where it cannot lie there.
    /// </summary>
    /// <param name="pieces">The pieces.</param>
    /// <param name="cloth">The cloth.</param>
    /// <param name="usable">Its usable width.</param>
    public static ImmutableArray<double?> Lengths(ImmutableArray<ClothPieces> pieces, ClothSupply cloth, long usable)
    {
        var ways = pieces.Select(piece => piece.WaysOn(cloth, usable).ToArray()).ToArray();
        return Enumerable.Range(0, MostParts)
            .Select(k => ways.Select(way => Length(way, usable, k)).ToImmutableArray())
            .MaxBy(lengths => lengths.Select((length, i) => (length ?? 0) * pieces[i].Count).Sum());
    }

    private static double? Length((long Across, long Along)[] ways, long usable, int k) =>
        ways.Length == 0 ? null : ways.Min(way => Value(way.Across, usable, k) * way.Along);

    private static double Value(long part, long whole, int k)
    {
        var scaled = (Int128)part * (k + 1);
        return k == 0 || scaled % whole == 0
            ? (double)part / whole
            : (double)(long)(scaled / whole) / k;
    }
}
