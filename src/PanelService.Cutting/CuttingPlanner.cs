using PanelService.Cutting.Many;
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
        return Plan(problem, effort, Environment.ProcessorCount, progress, cancellation);
    }

    /// <summary>Plans on some of the cores: the same result on any number of them.</summary>
    /// <param name="problem">What is to be cut from what.</param>
    /// <param name="effort">How much work the search may do.</param>
    /// <param name="cores">How many strategies may advance at the same time.</param>
    /// <param name="progress">Told whenever the plan or the bound gets better; null: nobody listens.</param>
    /// <param name="cancellation">Ends the search within 50 ms and keeps the best plan so far.</param>
    internal static CuttingResult Plan(
        CuttingProblem problem, Effort effort, int cores, IProgress<CuttingProgress>? progress, CancellationToken cancellation)
    {
        var model = new Model(problem, cancellation);
        if (model.Types.Length == 0)
        {
            return Nothing(problem);
        }

        return Run(model, new WorkMeter(WorkOf(effort, model, cancellation), cancellation) { Cores = cores }, progress);
    }

    /// <summary>Plans with so much work, on one core.</summary>
    /// <param name="problem">What is to be cut from what.</param>
    /// <param name="units">The work, as <see cref="WorkMeter"/> counts.</param>
    /// <param name="cancellation">Ends the search within 50 ms and keeps the best plan so far.</param>
    internal static CuttingResult Plan(CuttingProblem problem, long units, CancellationToken cancellation)
    {
        var model = new Model(problem, cancellation);
        return model.Types.Length == 0
            ? Nothing(problem)
            : Run(model, new WorkMeter(units, cancellation), progress: null);
    }

    private static CuttingResult Nothing(CuttingProblem problem) =>
        new([], 0, 0, [.. problem.Pieces.Select(p => p.Demand)], StoppedEarly: false);

    private static CuttingResult Run(Model model, WorkMeter work, IProgress<CuttingProgress>? progress)
    {
        var search = new PlanSearch(model, work, progress);
        search.Run();
        var (patterns, missing) = model.Translate(search.Best.Plan.Select(u => new PatternUse(u.Column.Stock, u.Column.Block, u.Copies)));
        return new CuttingResult(patterns, search.Best.Spent, search.Best.Bound, missing, work.Stopped) { Proof = search.Proof };
    }

    // Steady effort by an order's nature. Odd sizes make every step dear. Many different pieces are packed well soon or not at
    // all. In a large order one sheet is a small share, not worth a long wait. From sheets of one size there is one count to
    // decide: of 3,000 orders (six draws of 500) 2,994 are decided within these, and the slowest takes less than two seconds.
    private const long SteadyWithOddSizes = 3_400_000;
    private const long SteadyOfManyKinds = 1_600_000;
    private const long SteadyOfManyPieces = 1_000_000;
    private const long SteadyFromOneSize = 1_200_000;
    private const long SteadyFromSeveralSizes = 2_600_000;
    private const int ManyPieces = 400;

    private static long WorkOf(Effort effort, Model model, CancellationToken cancellation)
    {
        try
        {
            return WorkFor(effort, model);
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            // Whether sizes are odd is seen in the grids, whose making a stop ends. How much work is allowed matters no more then.
            return WorkFor(effort);
        }
    }

    private static long WorkFor(Effort effort, Model model) => effort switch
    {
        not Effort.Steady => WorkFor(effort),
        _ when ManyOrders.Suits(model) => SteadyOfManyKinds,
        _ when model.HasOddSizes => SteadyWithOddSizes,
        _ when model.Demand.Sum(d => (long)d) > ManyPieces => SteadyOfManyPieces,
        _ when model.Stocks.Length == 1 => SteadyFromOneSize,
        _ => SteadyFromSeveralSizes,
    };

    /// <summary>The work an effort stands for, in units of <see cref="WorkMeter"/>.</summary>
    /// <param name="effort">The effort.</param>
    internal static long WorkFor(Effort effort) => effort switch
    {
        Effort.Quick => 200_000,
        Effort.Steady => 3_000_000,
        Effort.Thorough => 20_000_000,
        _ => throw new ArgumentOutOfRangeException(nameof(effort)),
    };
}
