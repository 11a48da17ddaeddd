using PanelService.Cutting.Search;

namespace PanelService.Cutting;

/// <summary>The least price of cutting all pieces, with a plan and a bound.</summary>
public static class CuttingPlanner
{
    /// <summary>Plans.</summary>
    /// <param name="problem">What is to be cut from what.</param>
    /// <param name="effort">How much work the search may do.</param>
    /// <param name="progress">Told whenever the plan or the bound gets better; null: nobody listens.</param>
    /// <param name="cancellation">Ends the search within 50 ms and keeps the best plan so far.</param>
    /// <returns>The same result for the same problem and effort, unless cancelled.</returns>
    public static CuttingResult Plan(
        CuttingProblem problem,
        Effort effort,
        IProgress<CuttingProgress>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var model = new Model(problem, cancellation);
        if (model.Types.Length == 0)
        {
            return new CuttingResult([], 0, 0, [.. problem.Pieces.Select(p => p.Demand)], StoppedEarly: false);
        }

        var work = new WorkMeter(WorkFor(effort), cancellation);
        var search = new PlanSearch(model, work, progress);
        search.Run();
        var (patterns, missing) = model.Translate(search.Best.Select(u => new PatternUse(u.Column.Stock, u.Column.Block, u.Copies)));
        return new CuttingResult(patterns, search.Spent, search.Bound, missing, work.Stopped) { Proof = search.Proof };
    }

    /// <summary>The work an effort stands for, in units of <see cref="WorkMeter"/>.</summary>
    /// <param name="effort">The effort.</param>
    internal static long WorkFor(Effort effort) => effort switch
    {
        Effort.Quick => 200_000,
        Effort.Steady => 4_000_000,
        Effort.Thorough => 20_000_000,
        _ => throw new ArgumentOutOfRangeException(nameof(effort)),
    };
}
