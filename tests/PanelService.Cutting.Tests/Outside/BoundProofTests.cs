using System.Globalization;
using System.Text;
using PanelService.Benchmarks.Running;
using PanelService.Checking.Bounds;

namespace PanelService.Cutting.Tests.Outside;

/// <summary>
/// Every bound comes with what it rests on, and code that shares nothing with the engine comes to the same. That code
/// is worth something only if it refuses what is not so: every kind of falsehood is put to it too.
/// </summary>
public sealed class BoundProofTests
{
    private const int InOneTest = 40;

    // Far dearer than any plan here: so that a claim is refused for its reasons, not for standing above the plan.
    private const long Dear = 1_000_000;

    /// <summary>The first seed of every test.</summary>
    public static TheoryData<int> Starts() => [.. Enumerable.Range(0, 9).Select(i => i * InOneTest)];

    [Theory]
    [MemberData(nameof(Starts))]
    public void Bound_of_a_random_order_is_computed_again(int start)
    {
        var faults = new StringBuilder();
        int checkedAgain = 0;
        for (int seed = start; seed < start + InOneTest; seed++)
        {
            var problem = RandomOrderProblem.Of(seed);
            var result = CuttingPlanner.Plan(problem, Effort.Quick);
            if (!result.Complete)
            {
                continue;
            }

            var verdict = BoundAudit.Check(problem, result, all: true);
            checkedAgain++;
            if (verdict.Finding != BoundFinding.Right)
            {
                faults.Append(CultureInfo.InvariantCulture, $"\nseed {seed}: {verdict}");
            }
        }

        Assert.True(faults.Length == 0, faults.ToString());
        Assert.InRange(checkedAgain, 35, InOneTest);
    }

    [Fact]
    public void Bound_under_a_fence_that_does_not_reach_is_computed_again_and_refused_without_it()
    {
        int right = 0, refused = 0;
        for (int seed = 0; seed < 2 * InOneTest; seed++)
        {
            var problem = RandomOrderProblem.Of(seed);
            problem = problem with { FenceReach = problem.Stocks.Max(stock => Math.Max(stock.Width, stock.Height)) / 5 };
            var result = CuttingPlanner.Plan(problem, Effort.Quick);
            if (!result.Complete)
            {
                continue;
            }

            var limited = BoundAudit.Check(problem, result, all: true);
            Assert.True(limited.Finding == BoundFinding.Right, $"seed {seed}: {limited}");
            right++;
            var free = CuttingPlanner.Plan(problem with { FenceReach = null }, Effort.Quick);
            if (free.Spent < result.LeastPossible)
            {
                var verdict = BoundAudit.Check(problem with { FenceReach = null }, result, all: true);
                Assert.True(verdict.Finding == BoundFinding.Wrong, $"seed {seed}: {verdict}");
                refused++;
            }
        }

        Assert.True(right >= InOneTest && refused >= 3, $"{right} right, {refused} refused");
    }

    [Fact]
    public void Claim_that_nothing_supports_is_refused() =>
        Refuses((stated, _) => stated with { Claim = stated.Claim + 1 });

    [Fact]
    public void Claim_above_the_plan_is_refused()
    {
        var (problem, stated, _) = Proven(0);

        var verdict = BoundChecker.Check(problem, stated with { Claim = problem.Spent + 1 });

        Assert.Equal(BoundFinding.Wrong, verdict.Finding);
    }

    [Fact]
    public void Printed_bound_above_the_claim_is_refused()
    {
        var (problem, stated, _) = Proven(0);

        var verdict = BoundChecker.Check(problem, stated with { Claim = problem.LeastPossible - 1 });

        Assert.Equal(BoundFinding.Wrong, verdict.Finding);
    }

    [Fact]
    public void Raised_value_is_refused() => Refuses((stated, _) => stated with
    {
        Inequalities = [stated.Inequalities[0] with { Values = [.. stated.Inequalities[0].Values.Select(_ => stated.Inequalities[0].Caps.Max() + 1)] }],
    });

    [Fact]
    public void Lowered_cap_is_refused() => Refuses((stated, result) =>
    {
        // Half of what one pattern of the plan is worth.
        var caps = stated.Inequalities[0].Caps;
        return stated with
        {
            Claim = stated.Claim + 1,
            Inequalities = [stated.Inequalities[0] with { Caps = caps.SetItem(result.Patterns[0].Stock, WorthOf(result.Patterns[0], stated.Inequalities[0]) / 2) }],
        };
    });

    [Fact]
    public void Invented_exclusion_is_refused() => Refuses((stated, result) => stated with
    {
        Claim = stated.Claim + 1,
        Exclusions = stated.Exclusions.Add(UsedBy(result, stated.Inequalities[0].Caps.Length)),
    });

    [Fact]
    public void Invented_exhaustion_is_refused() =>
        Refuses((stated, _) => stated with { Claim = stated.Claim + 1, NoneBelow = stated.Claim + 1 });

    [Fact]
    public void Inequality_left_out_is_missed() =>
        Refuses((stated, _) => stated with { Inequalities = [], Exclusions = [], NoneBelow = null });

    /// <summary>Falsifies the proof of several proven orders; every one must be found out.</summary>
    private static void Refuses(Func<StatedProof, CuttingResult, StatedProof> falsify)
    {
        int refused = 0;
        for (int seed = 0; refused < 20; seed += 2)
        {
            var (problem, stated, result) = Proven(seed);
            if (stated.Inequalities.IsEmpty || problem.Spent == 0)
            {
                continue;
            }

            var verdict = BoundChecker.Check(problem with { Spent = Dear }, falsify(stated, result), all: true);
            Assert.True(verdict.Finding == BoundFinding.Wrong, $"seed {seed}: {verdict}");
            refused++;
        }
    }

    private static (BoundCase Problem, StatedProof Stated, CuttingResult Result) Proven(int seed)
    {
        while (true)
        {
            var problem = RandomOrderProblem.Of(seed);
            var result = CuttingPlanner.Plan(problem, Effort.Quick);
            if (result.Complete && result.Spent == result.LeastPossible)
            {
                return (BoundAudit.CaseOf(problem, result), BoundAudit.StatedOf(result.Proof), result);
            }

            seed += 1000;
        }
    }

    private static long WorthOf(PatternUse use, StatedInequality inequality) => PiecesOf(use.Block).Sum(i => inequality.Values[i]);

    private static IEnumerable<int> PiecesOf(Block block) =>
        block is PieceBlock piece ? [piece.Piece] : ((StackBlock)block).Parts.SelectMany(PiecesOf);

    private static System.Collections.Immutable.ImmutableArray<int> UsedBy(CuttingResult result, int stocks) =>
        [.. Enumerable.Range(0, stocks).Select(s => result.Patterns.Where(use => use.Stock == s).Sum(use => use.Copies))];
}
