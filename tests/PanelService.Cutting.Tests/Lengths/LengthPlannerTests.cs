using System.Globalization;
using System.Text;
using PanelService.Cutting.Tests.Many;
using PanelService.Cutting.Tests.Outside;

namespace PanelService.Cutting.Tests.Lengths;

/// <summary>Sheets and goods sold by length together.</summary>
public sealed class LengthPlannerTests
{
    private const int InOneTest = 40;

    /// <summary>The first seed of every test.</summary>
    public static TheoryData<int> Starts() => [.. Enumerable.Range(0, 8).Select(i => i * InOneTest)];

    [Theory]
    [MemberData(nameof(Starts))]
    public void Plan_and_bound_of_a_tiny_problem_agree_with_brute_force(int start)
    {
        var faults = new StringBuilder();
        for (int seed = start; seed < start + InOneTest; seed++)
        {
            foreach (string fault in Faults(Tiny(seed)))
            {
                faults.Append(CultureInfo.InvariantCulture, $"\nseed {seed}: {fault}");
            }
        }

        Assert.True(faults.Length == 0, faults.ToString());
    }

    [Fact]
    public void Steps_paid_for_and_steps_beyond_them_are_one_length()
    {
        // Three steps hold the piece; two are paid for.
        var problem = new LengthProblem([], [new LengthStock(10, 5, 3, 20, Paid: 2)], [new Piece(10, 15, 1, [Turning.Upright])]);

        Assert.Equal((3, 3), (LengthPlanner.Plan(problem, Effort.Quick).Spent, LengthPlanner.Plan(problem, Effort.Quick).LeastPossible));
    }

    [Theory]
    [MemberData(nameof(Starts))]
    public void Plan_and_bound_with_steps_paid_for_agree_with_brute_force(int start)
    {
        var faults = new StringBuilder();
        for (int seed = start; seed < start + (InOneTest / 4); seed++)
        {
            var tiny = Tiny(seed);
            var problem = tiny with { Lengths = tiny.Lengths.SetItem(0, tiny.Lengths[0] with { Paid = 1 + (seed % 4) }) };
            var result = LengthPlanner.Plan(problem, Effort.Quick);
            long? least = LeastWithPaid(problem);
            bool right = least is { } optimum
                ? result.Complete && result.Spent >= optimum && result.LeastPossible <= optimum
                : !result.Complete;
            faults.Append(right ? "" : $"\nseed {seed}: {result.Spent} and {result.LeastPossible}, brute force finds {least}");
        }

        Assert.True(faults.Length == 0, faults.ToString());
    }

    [Theory]
    [InlineData(40)]
    [InlineData(41)]
    [InlineData(42)]
    [InlineData(43)]
    [InlineData(44)]
    [InlineData(45)]
    public void Bound_of_a_larger_order_is_not_above_the_price_of_the_strip_it_was_cut_from(int seed)
    {
        // A length of ten steps cut up at random: ten steps are enough.
        var cut = ManyPieces.CutUp(seed, sheets: 3, parts: 9);
        var problem = new LengthProblem(
            [new Stock(60, 50, 100, 2)],
            [new LengthStock(120, 30, 100, 40)],
            [.. cut.Pieces.Select(piece => piece with { On = [piece.On[0], piece.On[0]] })]);

        var result = LengthPlanner.Plan(problem, Effort.Quick);

        Assert.True(result.Complete);
        Assert.Empty(Faults(problem, result));
        Assert.InRange(result.LeastPossible, 0, Math.Min(1000, result.Spent));
    }

    [Fact]
    public void Roll_with_little_to_spare_is_filled_section_by_section()
    {
        // 11,151 of 11,448: by area one roll could do, and a second one is a hundred times too much.
        (int Width, int Height, int Demand)[] pieces = [(12, 15, 9), (17, 17, 20), (7, 7, 23), (10, 13, 8), (9, 11, 16)];
        var problem = new LengthProblem(
            [new Stock(53, 216, 96, null)],
            [new LengthStock(83, 9, 11, 40)],
            [.. pieces.Select(piece => new Piece(piece.Width, piece.Height, piece.Demand, [Turning.Either, Turning.Either]))]);

        var result = LengthPlanner.Plan(problem, Effort.Steady);

        Assert.Equal((96, 96), (result.Spent, result.LeastPossible));
        Assert.Empty(Faults(problem, result));
    }

    [Fact]
    public void Search_that_is_stopped_before_it_begins_answers_with_a_true_bound()
    {
        var problem = new LengthProblem([], [new LengthStock(10, 5, 3, 20)], [new Piece(5, 5, 6, [Turning.Upright])]);

        var result = LengthPlanner.Plan(problem, Effort.Quick, cancellation: new CancellationToken(canceled: true));

        Assert.InRange(result.LeastPossible, 0, 9);
    }

    [Fact]
    public void Plan_of_nothing_below_a_known_price_keeps_its_bound_at_that_price()
    {
        var problem = new LengthProblem([], [new LengthStock(10, 5, 3, 20)], [new Piece(5, 5, 6, [Turning.Upright])]);

        var result = LengthPlanner.Plan(problem, Effort.Quick, below: 9);

        Assert.False(result.Complete);
        Assert.Equal(9, result.LeastPossible);
    }

    [Fact]
    public void Plan_stays_within_the_steps_there_are()
    {
        // Two lie side by side: six take three steps, but there are two.
        var few = new LengthProblem([new Stock(10, 5, 100, null)], [new LengthStock(10, 5, 3, 2)], [new Piece(5, 5, 6, [Turning.Upright, Turning.Upright])]);

        Assert.Equal((106, 106), (LengthPlanner.Plan(few, Effort.Quick).Spent, LengthPlanner.Plan(few, Effort.Quick).LeastPossible));
    }

    [Fact]
    public void Piece_that_fits_nothing_leaves_no_plan_and_no_bound()
    {
        var problem = new LengthProblem([], [new LengthStock(10, 5, 3, 2)], [new Piece(11, 12, 1, [Turning.Either]), new Piece(2, 2, 1, [Turning.Either])]);

        Assert.Equal((false, 0), (LengthPlanner.Plan(problem, Effort.Quick).Complete, LengthPlanner.Plan(problem, Effort.Quick).LeastPossible));
    }

    [Fact]
    public void Plan_at_equal_effort_is_equal()
    {
        var problem = Tiny(17);

        Assert.True(LengthPlanner.Plan(problem, Effort.Quick).Uses.SequenceEqual(LengthPlanner.Plan(problem, Effort.Quick).Uses));
    }

    private static List<string> Faults(LengthProblem problem)
    {
        var result = LengthPlanner.Plan(problem, Effort.Quick);
        long? least = new CheapestByForce(EveryLength(problem)).Price();
        if (result.Complete != least is not null)
        {
            return [$"complete is {result.Complete}, but brute force finds {least}"];
        }

        if (least is not { } optimum)
        {
            return [];
        }

        var faults = Faults(problem, result).ToList();
        faults.AddRange(result.Spent < optimum ? [$"{result.Spent} is spent, but no plan costs less than {optimum}"] : []);
        faults.AddRange(result.LeastPossible > optimum ? [$"the bound {result.LeastPossible} is above the optimum {optimum}"] : []);
        return faults;
    }

    /// <summary>Each number of steps of the first length by itself, in one piece at its price.</summary>
    private static long? LeastWithPaid(LengthProblem problem)
    {
        var first = problem.Lengths[0];
        int sheets = problem.Sheets.Length;
        return Enumerable.Range(0, first.Limit + 1).Min(n =>
        {
            long price = first.Price * Math.Max(0, n - first.Paid);
            var one = new Stock(first.Width, Math.Max(1, first.Step * n), 0, n == 0 ? 0 : 1);
            var rest = EveryLength(problem with
            {
                Sheets = [.. problem.Sheets, one],
                Lengths = problem.Lengths.RemoveAt(0),
                Pieces = [.. problem.Pieces.Select(piece => piece with { On = [.. piece.On[..sheets], piece.On[sheets], .. piece.On[(sheets + 1)..]] })],
            });
            return new CheapestByForce(rest).Price() + price;
        });
    }

    private static IEnumerable<string> Faults(LengthProblem problem, LengthResult result)
    {
        var every = EveryLength(problem);
        var patterns = result.Uses.Select(use => new PatternUse(
            use.Steps == 0 ? use.Stock : FirstLength(problem, use.Stock - problem.Sheets.Length) + use.Steps - 1, use.Block, use.Copies)).ToList();
        return ManyPieces.Faults(every, patterns, result.Spent);
    }

    private static int FirstLength(LengthProblem problem, int length) =>
        problem.Sheets.Length + problem.Lengths.Take(length).Sum(one => one.Limit);

    /// <summary>The same with a stock for every length: several lengths cost what they cost in one.</summary>
    private static CuttingProblem EveryLength(LengthProblem problem) => new(
        [.. problem.Sheets, .. problem.Lengths.SelectMany(one => Enumerable.Range(1, one.Limit).Select(n => new Stock(one.Width, one.Step * n, one.Price * n, null)))],
        [.. problem.Pieces.Select(piece => piece with
        {
            On = [.. piece.On[..problem.Sheets.Length], .. problem.Lengths.SelectMany((one, l) => Enumerable.Repeat(piece.On[problem.Sheets.Length + l], one.Limit))],
        })],
        Kerf: 0);

    /// <summary>A few pieces; lengths long enough for all of them together.</summary>
    private static LengthProblem Tiny(int seed)
    {
        var random = new Random(seed);
        var pieces = new List<(int Width, int Height, int Demand)>();
        for (int left = random.Next(1, 7); left > 0;)
        {
            int demand = random.Next(1, Math.Min(3, left) + 1);
            pieces.Add((random.Next(2, 8), random.Next(2, 6), demand));
            left -= demand;
        }

        LengthStock[] lengths = [.. Enumerable.Range(0, random.Next(1, 3)).Select(i =>
        {
            int step = random.Next(2, 7);
            return new LengthStock(i == 0 ? 9 : random.Next(4, 12), step, random.Next(1, 9), 24 / step);
        })];
        Stock[] sheets = [.. Enumerable.Range(0, random.Next(0, 3)).Select(_ =>
            new Stock(random.Next(4, 12), random.Next(4, 12), random.Next(0, 12), random.Next(2) == 0 ? 1 : null))];
        return new LengthProblem([.. sheets], [.. lengths], [.. pieces.Select(piece => new Piece(
            piece.Width,
            piece.Height,
            piece.Demand,
            [.. Enumerable.Range(0, sheets.Length + lengths.Length).Select(i => random.Next(6) == 0 ? Turning.None : random.Next(4) == 0 ? Turning.Upright : Turning.Either)]))]);
    }
}
