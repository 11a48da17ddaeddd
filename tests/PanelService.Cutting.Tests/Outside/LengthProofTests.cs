using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using PanelService.Benchmarks.Running;
using PanelService.Checking.Bounds;

namespace PanelService.Cutting.Tests.Outside;

/// <summary>
/// Bounds of cloth come with what they rest on, and code that shares nothing with the engine comes to the same. Falsehoods of every kind
/// are put to it too.
/// </summary>
public sealed class LengthProofTests
{
    private const int InOneTest = 40;

    // Far dearer than any plan here: so that a claim is refused for its reasons, not for standing above the plan.
    private const long Dear = 1_000_000;

    /// <summary>The first seed of every test.</summary>
    public static TheoryData<int> Starts() => [.. Enumerable.Range(0, 4).Select(i => i * InOneTest)];

    [Theory]
    [MemberData(nameof(Starts))]
    public void Bound_of_random_cloth_is_computed_again(int start)
    {
        var faults = new StringBuilder();
        int checkedAgain = 0;
        for (int seed = start; seed < start + InOneTest; seed++)
        {
            var problem = ProblemOf(seed);
            var result = LengthPlanner.Plan(problem, Effort.Quick);
            if (result.Complete)
            {
                var verdict = LengthChecker.Check(CaseOf(problem, result), LengthAudit.StatedOf(result.Proof));
                checkedAgain++;
                faults.Append(verdict.Finding == BoundFinding.Right ? "" : string.Create(CultureInfo.InvariantCulture, $"\nseed {seed}: {verdict}"));
            }
        }

        Assert.True(faults.Length == 0, faults.ToString());
        Assert.InRange(checkedAgain, 30, InOneTest);
    }

    [Fact]
    public void Claim_that_nothing_supports_is_refused() =>
        Refuses((stated, _) => stated with { Claim = stated.Claim + 1 });

    [Fact]
    public void Inequalities_left_out_are_missed() =>
        Refuses((stated, _) => stated with { Inequalities = [], Exclusions = [] });

    [Fact]
    public void Lowered_hold_is_refused() => Refuses((stated, result) => stated with
    {
        Claim = stated.Claim + 1,
        Inequalities = [stated.Inequalities[^1] with { Holds = Lowered(stated.Inequalities[^1], result) }],
        Exclusions = [],
    });

    [Fact]
    public void Raised_values_are_refused() => Refuses((stated, _) => stated with
    {
        Claim = stated.Claim + 1,
        Inequalities = [stated.Inequalities[^1] with { Values = [.. stated.Inequalities[^1].Values.Select(value => (2 * value) + 1)] }],
        Exclusions = [],
    });

    [Fact]
    public void Invented_exclusion_is_refused() => Refuses((stated, result) => stated with
    {
        Claim = stated.Claim + 1,
        Exclusions = [UsedBy(result, stated.Inequalities[0].Holds.Length)],
    });

    [Fact]
    public void Claim_above_the_plan_is_refused()
    {
        var (problem, stated, _) = Proven(0);

        Assert.Equal(BoundFinding.Wrong, LengthChecker.Check(problem, stated with { Claim = problem.Spent + 1 }).Finding);
    }

    [Fact]
    public void Printed_bound_above_the_claim_is_refused()
    {
        var (problem, stated, _) = Proven(0);

        Assert.Equal(BoundFinding.Wrong, LengthChecker.Check(problem, stated with { Claim = problem.LeastPossible - 1 }).Finding);
    }

    /// <summary>Falsifies the proof of several proven orders; every one must be found out.</summary>
    private static void Refuses(Func<StatedLengths, LengthResult, StatedLengths> falsify)
    {
        int refused = 0;
        for (int seed = 0; refused < 12; seed++)
        {
            var (problem, stated, result) = Proven(seed);
            var verdict = LengthChecker.Check(problem with { Spent = Dear }, falsify(stated, result));
            Assert.True(verdict.Finding == BoundFinding.Wrong, $"seed {seed}: {verdict}");
            refused++;
        }
    }

    private static (LengthCase Problem, StatedLengths Stated, LengthResult Result) Proven(int seed)
    {
        while (true)
        {
            var problem = ProblemOf(seed);
            var result = LengthPlanner.Plan(problem, Effort.Quick);
            if (result.Complete && result.Spent == result.LeastPossible && result.Spent > 0 && result.Proof.Inequalities.Length > 0)
            {
                return (CaseOf(problem, result), LengthAudit.StatedOf(result.Proof), result);
            }

            seed += 1000;
        }
    }

    private static LengthCase CaseOf(LengthProblem problem, LengthResult result) =>
        LengthAudit.CaseOf(problem, result.Spent, result.LeastPossible);

    /// <summary>Nothing holds anything, as far as it is stated.</summary>
    private static ImmutableArray<ImmutableArray<long>> Lowered(StatedHolds inequality, LengthResult result) =>
        [.. inequality.Holds.Select((holds, good) => result.Uses.Any(use => use.Stock == good) ? [.. holds.Select(_ => 0L)] : holds)];

    private static ImmutableArray<int> UsedBy(LengthResult result, int goods) =>
        [.. Enumerable.Range(0, goods).Select(g => result.Uses.Where(use => use.Stock == g).Sum(use => use.Steps == 0 ? use.Copies : use.Steps))];

    /// <summary>One to three kinds of pieces, a remnant, a roll, and one or two cloths by length.</summary>
    private static LengthProblem ProblemOf(int seed)
    {
        var random = new Random(seed);
        int lengths = random.Next(1, 3);
        return new LengthProblem(
            [
                new Stock(random.Next(8, 20), random.Next(8, 20), random.Next(0, 20), 1),
                new Stock(random.Next(14, 24), random.Next(30, 50), random.Next(60, 120), null),
            ],
            [.. Enumerable.Range(0, lengths).Select(_ => new LengthStock(random.Next(14, 26), random.Next(3, 9), random.Next(8, 25), 40))],
            [.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => new Piece(
                random.Next(4, 12),
                random.Next(4, 14),
                random.Next(1, 7),
                [.. Enumerable.Repeat(random.Next(3) == 0 ? Turning.Upright : Turning.Either, 2 + lengths)]))]);
    }
}
