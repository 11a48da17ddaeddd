using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Cloth.Bounds;

/// <summary>
/// Worths of pieces seen from some of the goods for sale: a piece is worth the least that its length of them costs, so
/// that none of those goods holds more worth than it costs. From the worths comes an inequality over all goods.
/// </summary>
internal sealed class ClothWorths
{
    // Sums of doubles are right to far more digits than this; what holds is taken larger, what is needed smaller.
    private const double Safe = 1e-9;

    // For all remnants together, in cuts tried: half a second.
    private const long MostWork = 400_000_000;

    private readonly ImmutableArray<ClothPieces> _pieces;
    private readonly ImmutableArray<ClothGood> _goods;
    private readonly ImmutableArray<long?> _readyPrices;
    private readonly ImmutableArray<ImmutableArray<double?>> _lengths;
    private readonly CancellationToken _cancellation;

    /// <summary>Looks at the goods.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <param name="goods">The goods.</param>
    /// <param name="readyPrices">Per piece: what a panel costs ready-made, in minor units; null: it cannot be bought.</param>
    /// <param name="cancellation">From then on nothing is known of what goods hold: they may hold everything.</param>
    public ClothWorths(
        ImmutableArray<ClothPieces> pieces, ImmutableArray<ClothGood> goods, ImmutableArray<long?> readyPrices, CancellationToken cancellation)
    {
        (_pieces, _goods, _readyPrices, _cancellation) = (pieces, goods, readyPrices, cancellation);
        _lengths = [.. goods.Select(good => good.IsRemnant ? [] : DualFeasible.Lengths(pieces, good.Cloth, good.Usable))];
    }

    /// <summary>The inequality seen from some goods.</summary>
    /// <param name="seenFrom">Indices of goods for sale.</param>
    /// <param name="counted">Indices of the pieces that are given a worth; the others have none.</param>
    /// <param name="exactRemnants">Whether remnants are looked at with the exact programme.</param>
    public CoverInequality Inequality(ImmutableArray<int> seenFrom, ImmutableHashSet<int> counted, bool exactRemnants)
    {
        ImmutableArray<double> worths =
            [.. Enumerable.Range(0, _pieces.Length).Select(i => counted.Contains(i) ? Worth(i, seenFrom) : 0)];
        double needs = worths.Select((worth, i) => worth * _pieces[i].Count).Sum();
        var holds = _goods.Select((good, g) => Math.Min(needs, seenFrom.Contains(g) ? good.Price : Holds(good, worths, exactRemnants)));
        return new CoverInequality([.. holds.Select(hold => hold * (1 + Safe))], needs * (1 - Safe));
    }

    private double Worth(int piece, ImmutableArray<int> seenFrom)
    {
        double least = double.PositiveInfinity;
        foreach (int g in seenFrom)
        {
            if (_lengths[g][piece] is { } length)
            {
                least = Math.Min(least, length * _goods[g].Price / _goods[g].Length);
            }
        }

        least = double.IsPositiveInfinity(least) ? 0 : least;
        return _readyPrices[piece] is { } ready ? Math.Min(least, ready) : least;
    }

    private double Holds(ClothGood good, ImmutableArray<double> worths, bool exactRemnants)
    {
        if (_cancellation.IsCancellationRequested)
        {
            return double.PositiveInfinity;
        }

        double threads = good.Length * ThreadKnapsack.BestThread(_pieces, worths, good.Cloth, good.Usable);
        return good.IsRemnant && exactRemnants ? Math.Min(threads, BestOf(good, worths)) : threads;
    }

    private double BestOf(ClothGood remnant, ImmutableArray<double> worths)
    {
        int[] fitting =
        [
            .. Enumerable.Range(0, _pieces.Length)
                .Where(i => worths[i] > 0 && _pieces[i].WaysOn(remnant.Cloth, remnant.Usable).Any(way => way.Along <= remnant.Length)),
        ];
        if (fitting.Length == 0)
        {
            return 0;
        }

        double unit = UnitFor(remnant, fitting, worths);
        var pieces = fitting.Select(i => _pieces[i]).Select(piece =>
            new Piece(piece.Width, piece.Height, piece.Count, [ClothFit.TurningOn(piece.Line, remnant.Cloth)]));
        return unit * BestPattern.AtMost(
            remnant.Usable, remnant.Length, [.. pieces], [.. fitting.Select(i => (int)Math.Ceiling(worths[i] / unit))], kerf: 0,
            MostWork / _goods.Count(good => good.IsRemnant));
    }

    // Worths as whole numbers, rounded up, in a unit that keeps every pattern's total in range.
    private double UnitFor(ClothGood remnant, int[] fitting, ImmutableArray<double> worths)
    {
        double area = (double)remnant.Usable * remnant.Length;
        double most = fitting.Sum(i => (1 + (area / ((double)_pieces[i].Width * _pieces[i].Height))) * worths[i]);
        return Math.Max(most / 1e9, 1e-6);
    }
}
