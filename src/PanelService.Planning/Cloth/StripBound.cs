// Problem: a lower bound of what cloth costs that holds for lengths of any number of steps.
// Idea:    cut a length of cloth into threads across it: each thread meets pieces whose extents across add up to no
//          more than the usable width W. Let f be dual feasible (parts of at most 1 in all have values of at most 1 in
//          all), and let a piece that lies w across and h along be worth f(w / W) · h · rate, at the rate the cloth
//          costs per unit of length. Then no length of that cloth holds pieces worth more than it costs, and no roll.
//          A piece is worth the least over the cloths that serve it and the ways it may lie there; so every plan costs
//          at least the worth of all pieces, less what the remnants could save: their best pattern's worth above their value.
//          The result is rounded up to the next multiple of the prices' common divisor.
// Source:  the bar relaxation of strip packing (Scheithauer 1999); dual feasible functions u(k) of Fekete and Schepers 2001.
// Cost:    functions × cloths × lines, and one exact pattern a remnant.
// Not:     the best duals there are; limits on what is for sale are left out, which only lowers the bound.
using System.Numerics;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Cloth;

/// <summary>What cloth costs at the least, whatever the lengths bought.</summary>
internal static class StripBound
{
    private const int MostParts = 24;

    // Divisions round at the 28th digit; this is far more than they can lose, and far less than a minor unit.
    private const decimal Slack = 0.000_01m;

    /// <summary>The bound.</summary>
    /// <param name="order">The order.</param>
    /// <param name="request">How many of each line at what size; ready-made ones at their prices.</param>
    public static Money Of(Order order, CutRequest request)
    {
        var pieces = Pieces(order, request);
        foreach (var cloth in order.Cloths.Where(cloth => cloth.Sale is not null))
        {
            LowerWorths(pieces, cloth, order);
        }

        decimal worth = pieces.Sum(piece => piece.Worth == decimal.MaxValue ? 0 : piece.Worth * piece.Count);
        decimal saved = order.Cloths.Sum(cloth => cloth.Remnants.Sum(remnant => SavedBy(remnant, cloth, pieces, order)));
        return RoundedUp(worth - saved - Slack, order, request);
    }

    private static List<WorthyPiece> Pieces(Order order, CutRequest request) =>
    [
        .. request.Lines.Where(i => order.Panels[i].NeedsCloth).Select(i =>
        {
            var size = ClothFit.WithMargins(request.Sizes[i], order.Bench);
            return new WorthyPiece(order.Panels[i], size.Width.Steps, size.Height.Steps, request.Counts[i])
            {
                Worth = request.ReadyPrice(i)?.Minor ?? decimal.MaxValue,
            };
        }),
    ];

    private static void LowerWorths(List<WorthyPiece> pieces, ClothSupply cloth, Order order)
    {
        var (length, price) = cloth.Sale switch
        {
            SaleByLength sale => (sale.Step, sale.Price),
            SaleByRoll sale => (sale.Length, sale.Price),
            _ => throw new InvalidOperationException("Only cloth for sale has a rate."),
        };
        long usable = (cloth.Width - (cloth.Selvedge * 2)).Steps;
        if (usable <= 0)
        {
            return;
        }

        decimal rate = (decimal)price.Minor / length.Steps;
        int parts = BestFunction(pieces, cloth, usable);
        foreach (var piece in pieces)
        {
            if (LengthWorth(piece, cloth, usable, parts) is { } worth)
            {
                piece.Worth = Math.Min(piece.Worth, worth * rate);
            }
        }
    }

    private static int BestFunction(List<WorthyPiece> pieces, ClothSupply cloth, long usable) =>
        Enumerable.Range(0, MostParts).MaxBy(parts =>
            pieces.Sum(piece => (LengthWorth(piece, cloth, usable, parts) ?? 0) * piece.Count));

    /// <summary>f(w / W) · h at the least over the ways a piece may lie; null where it cannot lie there at all.</summary>
    private static decimal? LengthWorth(WorthyPiece piece, ClothSupply cloth, long usable, int parts)
    {
        var turning = ClothFit.TurningOn(piece.Line, cloth);
        decimal? upright = turning.HasFlag(Turning.Upright) && piece.Width <= usable
            ? DualFeasible(piece.Width, usable, parts) * piece.Height
            : null;
        decimal? turned = turning.HasFlag(Turning.Turned) && piece.Height <= usable
            ? DualFeasible(piece.Height, usable, parts) * piece.Width
            : null;
        return upright is null || turned < upright ? turned : upright;
    }

    /// <summary>u(k): x itself where (k + 1)·x is whole, else its whole part over k; the area for k = 0.</summary>
    private static decimal DualFeasible(long part, long whole, int k)
    {
        var scaled = (BigInteger)part * (k + 1);
        return k == 0 || (scaled % whole).IsZero
            ? (decimal)part / whole
            : (decimal)(long)(scaled / whole) / k;
    }

    private static decimal SavedBy(Remnant remnant, ClothSupply cloth, List<WorthyPiece> pieces, Order order)
    {
        var fitting = pieces
            .Where(piece => piece.Worth is > 0 and < decimal.MaxValue)
            .Select(piece => (Piece: piece, Turning: ClothFit.TurningOn(piece.Line, cloth)))
            .Where(pair => pair.Turning != Turning.None)
            .ToList();
        if (fitting.Count == 0)
        {
            return 0;
        }

        // Worths as whole numbers, rounded up, in a unit that keeps every pattern's total in range.
        decimal unit = UnitFor(remnant, fitting.Select(pair => pair.Piece));
        var best = BestPattern.Unlimited(
            remnant.Width.Steps,
            remnant.Length.Steps,
            [.. fitting.Select(pair => new Piece(pair.Piece.Width, pair.Piece.Height, pair.Piece.Count, [pair.Turning]))],
            [.. fitting.Select(pair => (int)Math.Ceiling(pair.Piece.Worth / unit))],
            kerf: 0).Value;
        return Math.Max(0, (best * unit) - remnant.Value.Minor) * remnant.Quantity;
    }

    private static decimal UnitFor(Remnant remnant, IEnumerable<WorthyPiece> pieces)
    {
        decimal area = (decimal)remnant.Width.Steps * remnant.Length.Steps;
        decimal most = pieces.Sum(piece => (1 + (area / ((decimal)piece.Width * piece.Height))) * piece.Worth);
        return Math.Max(most / 1_000_000_000m, 0.000_001m);
    }

    private static Money RoundedUp(decimal minor, Order order, CutRequest request)
    {
        var prices = order.Cloths.SelectMany(cloth => cloth.Remnants.Select(r => r.Value).Append(PriceOf(cloth)))
            .Concat(request.ReadyPrices.Select(price => price ?? Money.Zero))
            .Select(price => (BigInteger)price.Minor);
        long common = (long)prices.Aggregate(BigInteger.Zero, BigInteger.GreatestCommonDivisor);
        return minor <= 0 || common == 0 ? Money.Zero : new Money((long)Math.Ceiling(minor / common) * common);
    }

    private static Money PriceOf(ClothSupply cloth) => cloth.Sale switch
    {
        SaleByLength sale => sale.Price,
        SaleByRoll sale => sale.Price,
        _ => Money.Zero,
    };

    private sealed record WorthyPiece(PanelLine Line, long Width, long Height, int Count)
    {
        /// <summary>What one is worth, in minor units; the least found so far.</summary>
        public decimal Worth { get; set; }
    }
}
