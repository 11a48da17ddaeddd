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
        CancellationToken cancellation = default) =>
        throw new NotImplementedException();
}
