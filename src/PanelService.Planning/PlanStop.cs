namespace PanelService.Planning;

/// <summary>The two ways of ending planning early.</summary>
/// <param name="Search">Ends every search; the best found so far is written out as a plan, which takes its time for a large one.</param>
/// <param name="Everything">Ends that as well, with an exception: nobody wants the plan any more.</param>
internal readonly record struct PlanStop(CancellationToken Search, CancellationToken Everything)
{
    /// <summary>Goes on only where somebody still wants the plan.</summary>
    /// <exception cref="OperationCanceledException">Nobody does.</exception>
    public void ThrowIfUnwanted() => Everything.ThrowIfCancellationRequested();
}
