namespace PanelService.Cutting.Tests.Leftovers;

/// <summary>Every way to cut pieces out of rectangles, whole unit by whole unit: nothing of the engine's is used.</summary>
internal sealed class EveryCut(CuttingProblem problem, (long Width, long Height) smallest)
{
    private readonly Dictionary<(int Stock, long Width, long Height, int Set), long> _known = [];
    private readonly int[] _one = Ones(problem);

    /// <summary>The dearest leftover of any plan out of one or two stocks; less than 0 where there is no plan.</summary>
    public double Dearest(int[] stocks, int[] counts)
    {
        int all = Number(counts);
        double best = -1;
        foreach (int near in Below(counts).Select(Number))
        {
            int[] sets = stocks.Length == 1 ? [all] : [near, all - near];
            long[] left = [.. stocks.Select((stock, i) => Largest(stock, problem.Stocks[stock].Width, problem.Stocks[stock].Height, sets[i]))];
            if (left.All(area => area >= 0))
            {
                best = Math.Max(best, stocks.Select((stock, i) => Worth(problem.Stocks[stock], left[i])).Max());
            }
        }

        return best;
    }

    /// <summary>The area of the largest leftover that is kept of a rectangle that a set is cut from; −1 where it does not fit.</summary>
    private long Largest(int stock, long width, long height, int set)
    {
        if (width <= 0 || height <= 0)
        {
            return set == 0 ? 0 : -1;
        }

        if (set == 0)
        {
            return IsKept(smallest, width, height) ? width * height : 0;
        }

        if (!_known.TryGetValue((stock, width, height, set), out long best))
        {
            best = IsPiece(stock, width, height, set) ? 0 : -1;
            foreach (int near in Below(Counts(set)).Select(Number))
            {
                for (long at = Math.Max(1, Area(near) / height); at < width; at++)
                {
                    best = Math.Max(best, Both(stock, (at, height, near), (width - at - problem.Kerf, height, set - near)));
                }

                for (long at = Math.Max(1, Area(near) / width); at < height; at++)
                {
                    best = Math.Max(best, Both(stock, (width, at, near), (width, height - at - problem.Kerf, set - near)));
                }
            }

            _known.Add((stock, width, height, set), best);
        }

        return best;
    }

    private long Both(int stock, (long Width, long Height, int Set) near, (long Width, long Height, int Set) far)
    {
        if (Area(far.Set) > Math.Max(0, far.Width) * Math.Max(0, far.Height))
        {
            return -1;
        }

        long one = Largest(stock, near.Width, near.Height, near.Set);
        long other = one < 0 ? -1 : Largest(stock, far.Width, far.Height, far.Set);
        return other < 0 ? -1 : Math.Max(one, other);
    }

    private bool IsPiece(int stock, long width, long height, int set) => problem.Pieces.Where((_, i) => _one[i] == set).Any(piece =>
        ((piece.Width, piece.Height) == (width, height) && piece.On[stock].HasFlag(Turning.Upright))
        || ((piece.Height, piece.Width) == (width, height) && piece.On[stock].HasFlag(Turning.Turned)));

    private long Area(int set) => Counts(set).Zip(problem.Pieces, (count, piece) => count * piece.Width * piece.Height).Sum();

    private int Number(int[] counts) => counts.Zip(_one, (count, one) => count * one).Sum();

    private int[] Counts(int set) => [.. problem.Pieces.Select((piece, i) => set / _one[i] % (piece.Demand + 1))];

    private static int[] Ones(CuttingProblem problem)
    {
        int[] one = new int[problem.Pieces.Length];
        for (int i = 0, all = 1; i < one.Length; all *= problem.Pieces[i++].Demand + 1)
        {
            one[i] = all;
        }

        return one;
    }

    public static IEnumerable<int[]> Below(int[] counts) => counts.Aggregate(
        (IEnumerable<int[]>)[[]], (known, most) => known.SelectMany(start => Enumerable.Range(0, most + 1).Select(count => (int[])[.. start, count])));

    /// <summary>Whether pieces have room on one or two stocks.</summary>
    public bool Fits(int[] stocks, int[] counts) => Dearest(stocks, counts) >= 0;

    public static double Worth(Stock stock, double area) => stock.Price * area / (stock.Width * stock.Height);

    public static bool IsKept((long Width, long Height) smallest, long width, long height) =>
        Math.Min(width, height) >= Math.Min(smallest.Width, smallest.Height) && Math.Max(width, height) >= Math.Max(smallest.Width, smallest.Height);
}
