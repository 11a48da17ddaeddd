using PanelService.Cutting.Leftovers;
using Xunit;

namespace PanelService.Cutting.Tests.Leftovers;

/// <summary>The largest kept leftovers of small orders, against a search that tries every guillotine cut at every place where one can matter.</summary>
public sealed class LargestLeftoverTests
{
    private const long Kerf = 2;

    private static readonly (long Width, long Height) Smallest = (5, 7);

    [Fact]
    public void No_other_plan_out_of_the_same_sheets_keeps_a_dearer_piece()
    {
        var wrong = new List<string>();
        int held = 0;
        int beyondStrips = 0;
        for (int seed = 1; seed <= 70; seed++)
        {
            var (problem, result) = Drawn(seed);
            if (result.Patterns.Sum(use => use.Copies) > 2)
            {
                continue;
            }

            var gathered = LeftoverPlanner.Gather(problem, result, stock => FrameOf(problem, stock));
            int[] stocks = [.. result.Patterns.SelectMany(use => Enumerable.Repeat(use.Stock, use.Copies)).Order()];
            Assert.Equal(stocks, gathered.Patterns.SelectMany(use => Enumerable.Repeat(use.Stock, use.Copies)).Order());
            Assert.Equal(problem.Pieces.Select(piece => piece.Demand), CountsOf(problem, gathered));

            var (found, isStrip) = DearestOf(problem, gathered);
            double best = new EveryCut(problem).Dearest(stocks, [.. problem.Pieces.Select(piece => piece.Demand)]);
            wrong.AddRange(Math.Abs(found - best) > 1e-6 ? [$"seed {seed}: {found} for {best}"] : []);
            held++;
            beyondStrips += isStrip ? 0 : 1;
        }

        Assert.Empty(wrong);
        Assert.True(held >= 50 && beyondStrips >= 10, $"{held} orders held, {beyondStrips} of them with a leftover that is no strip across");
    }

    private static (CuttingProblem Problem, CuttingResult Result) Drawn(int seed)
    {
        var random = new Random(seed);
        Piece[] pieces = [.. Enumerable.Range(0, random.Next(2, 5)).Select(_ => new Piece(
            random.Next(6, 22), random.Next(6, 22), random.Next(1, 3), random.Next(3) == 0 ? [Turning.Upright, Turning.Upright] : [Turning.Either, Turning.Either]))];
        var problem = new CuttingProblem([new Stock(26, 38, 700, null), new Stock(20, 28, 420, null)], [.. pieces], Kerf);
        return (problem, CuttingPlanner.Plan(problem, Effort.Quick));
    }

    private static int[] CountsOf(CuttingProblem problem, CuttingResult result)
    {
        int[] counts = new int[problem.Pieces.Length];
        foreach (var piece in result.Patterns.SelectMany(use => Enumerable.Repeat(CutsOf(problem, use).Pieces, use.Copies)).SelectMany(pieces => pieces))
        {
            counts[piece.Piece]++;
        }

        return counts;
    }

    private static SheetCuts CutsOf(CuttingProblem problem, PatternUse use) => SheetCutter.Cut(
        use.Block, FrameOf(problem, use.Stock) with { ForLeftover = use.ForLeftover }, [.. problem.Pieces.Select(piece => (piece.Width, piece.Height))]);

    private static SheetFrame FrameOf(CuttingProblem problem, int stock) =>
        new(problem.Stocks[stock].Width, problem.Stocks[stock].Height, EdgeTrim: 0, problem.Kerf) { SmallestKept = Smallest };

    private static (double Worth, bool IsStrip) DearestOf(CuttingProblem problem, CuttingResult result) => result.Patterns
        .SelectMany(use => CutsOf(problem, use).Leftovers
            .Where(one => IsKept(one.At.Width, one.At.Height))
            .Select(one => (
                Worth(problem.Stocks[use.Stock], one.At.Width, one.At.Height),
                one.At.Width == problem.Stocks[use.Stock].Width || one.At.Height == problem.Stocks[use.Stock].Height)))
        .DefaultIfEmpty((0, true))
        .Max();

    private static double Worth(Stock stock, long width, long height) => stock.Price * (double)(width * height) / (stock.Width * stock.Height);

    private static bool IsKept(long width, long height) =>
        Math.Min(width, height) >= Math.Min(Smallest.Width, Smallest.Height) && Math.Max(width, height) >= Math.Max(Smallest.Width, Smallest.Height);

    /// <summary>Every way to cut pieces out of rectangles, whole unit by whole unit: nothing of the engine's is used.</summary>
    private sealed class EveryCut(CuttingProblem problem)
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
                    best = Math.Max(best, stocks.Select((stock, i) => Worth(problem.Stocks[stock], left[i], 1)).Max());
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
                return IsKept(width, height) ? width * height : 0;
            }

            if (!_known.TryGetValue((stock, width, height, set), out long best))
            {
                best = IsPiece(stock, width, height, set) ? 0 : -1;
                foreach (int near in Below(Counts(set)).Select(Number))
                {
                    for (long at = Math.Max(1, Area(near) / height); at < width; at++)
                    {
                        best = Math.Max(best, Both(stock, (at, height, near), (width - at - Kerf, height, set - near)));
                    }

                    for (long at = Math.Max(1, Area(near) / width); at < height; at++)
                    {
                        best = Math.Max(best, Both(stock, (width, at, near), (width, height - at - Kerf, set - near)));
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

        private static IEnumerable<int[]> Below(int[] counts) => counts.Aggregate(
            (IEnumerable<int[]>)[[]], (known, most) => known.SelectMany(start => Enumerable.Range(0, most + 1).Select(count => (int[])[.. start, count])));
    }
}
