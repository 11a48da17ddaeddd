namespace PanelService.Cutting.Tests.Many;

/// <summary>Random problems of many different pieces, and a checker that lays plans out and measures them.</summary>
internal static class ManyPieces
{
    /// <summary>Pieces drawn like classes of the published packing problems, on one or several stocks.</summary>
    /// <param name="seed">Decides everything.</param>
    /// <param name="pieces">How many.</param>
    /// <param name="stocks">What they are cut from.</param>
    public static CuttingProblem Draw(int seed, int pieces, params Stock[] stocks)
    {
        var random = new Random(seed);
        var turning = new[] { Turning.Upright, Turning.Turned, Turning.Either, Turning.Either };
        long kerf = random.Next(0, 3);
        return new CuttingProblem(
            [.. stocks],
            [.. Enumerable.Range(0, pieces).Select(_ => new Piece(
                random.Next(8, 60), random.Next(8, 60), random.Next(1, 3), [.. stocks.Select(_ => turning[random.Next(4)])]))],
            kerf);
    }

    /// <summary>Equal sheets cut up at random from edge to edge: nothing but the kerf is wasted.</summary>
    /// <param name="seed">Decides everything.</param>
    /// <param name="sheets">How many sheets.</param>
    /// <param name="parts">Into how many pieces each is cut.</param>
    public static CuttingProblem CutUp(int seed, int sheets, int parts)
    {
        var random = new Random(seed);
        int kerf = random.Next(0, 3);
        var turning = random.Next(2) == 0 ? Turning.Upright : Turning.Either;
        var pieces = new List<Piece>();
        for (int sheet = 0; sheet < sheets; sheet++)
        {
            var open = new List<(int Width, int Height)> { (120, 100) };
            while (open.Count < parts)
            {
                var (width, height) = open.MaxBy(one => one.Width * one.Height);
                open.Remove((width, height));
                bool across = width > height;
                int cut = random.Next(10, (across ? width : height) - kerf - 10);
                open.Add(across ? (cut, height) : (width, cut));
                open.Add(across ? (width - cut - kerf, height) : (width, height - cut - kerf));
            }

            pieces.AddRange(open.Select(one => new Piece(one.Width, one.Height, 1, [turning])));
        }

        return new CuttingProblem([new Stock(120, 100, 700, null)], [.. pieces], kerf);
    }

    /// <summary>What is wrong with a plan: places outside, overlaps nearer than a kerf, wrong counts, sizes or turns, limits, price.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="patterns">The plan.</param>
    /// <param name="spent">What it is said to cost.</param>
    public static IEnumerable<string> Faults(CuttingProblem problem, IReadOnlyCollection<PatternUse> patterns, long spent)
    {
        var made = new int[problem.Pieces.Length];
        foreach (var use in patterns)
        {
            var stock = problem.Stocks[use.Stock];
            var cuts = SheetCutter.Cut(
                use.Block, new SheetFrame(stock.Width, stock.Height, 0, problem.Kerf), [.. problem.Pieces.Select(p => (p.Width, p.Height))]);
            foreach (string fault in cuts.Pieces.SelectMany(placed => Faults(problem, use.Stock, placed, cuts.Pieces)))
            {
                yield return fault;
            }

            foreach (var placed in cuts.Pieces)
            {
                made[placed.Piece] += use.Copies;
            }
        }

        for (int piece = 0; piece < made.Length; piece++)
        {
            if (made[piece] != problem.Pieces[piece].Demand)
            {
                yield return $"piece {piece}: {made[piece]} of {problem.Pieces[piece].Demand}";
            }
        }

        for (int stock = 0; stock < problem.Stocks.Length; stock++)
        {
            if (patterns.Where(use => use.Stock == stock).Sum(use => use.Copies) > (problem.Stocks[stock].Limit ?? int.MaxValue))
            {
                yield return $"stock {stock} beyond its limit";
            }
        }

        if (patterns.Sum(use => use.Copies * problem.Stocks[use.Stock].Price) != spent)
        {
            yield return "the price is not the sum of the patterns'";
        }
    }

    private static IEnumerable<string> Faults(CuttingProblem problem, int stock, PlacedPiece placed, IReadOnlyList<PlacedPiece> all)
    {
        var piece = problem.Pieces[placed.Piece];
        var size = placed.Turned ? (piece.Height, piece.Width) : (piece.Width, piece.Height);
        if ((placed.At.Width, placed.At.Height) != size)
        {
            yield return $"piece {placed.Piece} has another size";
        }

        if (!piece.On[stock].HasFlag(placed.Turned ? Turning.Turned : Turning.Upright))
        {
            yield return $"piece {placed.Piece} may not lie so";
        }

        if (placed.At.X < 0 || placed.At.Y < 0
            || placed.At.X + placed.At.Width > problem.Stocks[stock].Width
            || placed.At.Y + placed.At.Height > problem.Stocks[stock].Height)
        {
            yield return $"piece {placed.Piece} lies outside";
        }

        if (all.Any(other => other != placed && TooNear(placed.At, other.At, problem.Kerf)))
        {
            yield return $"piece {placed.Piece} lies too near another";
        }
    }

    private static bool TooNear(Rectangle a, Rectangle b, long kerf) =>
        a.X < b.X + b.Width + kerf && b.X < a.X + a.Width + kerf
        && a.Y < b.Y + b.Height + kerf && b.Y < a.Y + a.Height + kerf;
}
