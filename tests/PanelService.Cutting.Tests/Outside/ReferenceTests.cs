using System.Globalization;
using System.Text;

namespace PanelService.Cutting.Tests.Outside;

/// <summary>
/// Four hundred small random problems against two references that share nothing with the engine: every guillotine
/// plan by brute force, and the optimum of a free packing by CP-SAT.
/// </summary>
public sealed class ReferenceTests
{
    private const int InOneTest = 40;

    /// <summary>The first seed of every test.</summary>
    public static TheoryData<int> Starts() => [.. Enumerable.Range(0, 10).Select(i => i * InOneTest)];

    [Theory]
    [MemberData(nameof(Starts))]
    public void Plan_of_a_tiny_problem_agrees_with_brute_force_and_free_packing(int start)
    {
        var faults = new StringBuilder();
        for (int seed = start; seed < start + InOneTest; seed++)
        {
            foreach (string fault in Faults(TinyProblem.Of(seed)))
            {
                faults.Append(CultureInfo.InvariantCulture, $"\nseed {seed}: {fault}");
            }
        }

        Assert.True(faults.Length == 0, faults.ToString());
    }

    /// <summary>The references are worth what they are asked: enough bounds, and of every nature.</summary>
    [Fact]
    public void Tiny_problems_are_of_every_nature()
    {
        var made = Enumerable.Range(0, 10 * InOneTest).Select(TinyProblem.Of).Where(problem => new CheapestByForce(problem).Price() is not null).ToArray();

        Assert.InRange(made.Length, 300, 400);
        Assert.InRange(made.Count(problem => problem.Stocks.DistinctBy(stock => (stock.Width, stock.Height)).Count() > 1), 200, 400);
        Assert.InRange(made.Count(problem => problem.Stocks.Any(stock => stock.Limit is not null)), 150, 400);
        Assert.InRange(made.Count(problem => problem.Stocks.Any(stock => stock is { Limit: not null, Price: <= 2 })), 100, 400);
    }

    private static IEnumerable<string> Faults(CuttingProblem problem)
    {
        var result = CuttingPlanner.Plan(problem, Effort.Quick);
        long? least = new CheapestByForce(problem).Price();
        if (result.Complete != least is not null)
        {
            yield return $"complete is {result.Complete}, but brute force finds {least}";
        }

        if (least is not { } optimum || !result.Complete)
        {
            yield break;
        }

        long? free = FreePacking.Price(problem, result.Spent);
        if (result.Spent < optimum)
        {
            yield return $"{result.Spent} is spent, but no guillotine plan costs less than {optimum}";
        }

        if (result.LeastPossible > optimum || result.Proof.Claim > optimum)
        {
            yield return $"the bound {result.LeastPossible}, found as {result.Proof.Claim}, is above the guillotine optimum {optimum}";
        }

        if (free is null || free > result.Spent || free > optimum)
        {
            yield return $"a free packing costs {free}, a guillotine plan {result.Spent}, the best of them {optimum}";
        }
    }
}
