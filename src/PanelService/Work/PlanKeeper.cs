using PanelService.Http;
using PanelService.Store.Faults;
using PanelService.Store.Plans;
using PanelService.Wire.Plans;

namespace PanelService.Work;

/// <summary>Stores a plan before anybody is told of it: whoever has a plan's address finds it there, whatever happens since.</summary>
internal sealed class PlanKeeper(PlanBook book)
{
    /// <summary>Stores what came of a job, on the planner's thread.</summary>
    /// <returns>What the client is told: the plan, or why it could not be stored.</returns>
    internal PlanSnapshot Keep(PlanJob job, PlanSnapshot last)
    {
        if (last.Plan is not { } plan || job.Origin is not { } origin || job.IsDropped)
        {
            return last;
        }

        try
        {
            book.SaveAsync(new FinishedPlan(job.Id, plan, last.State == PlanState.Stopped, origin.Document, origin.Links), CancellationToken.None)
                .GetAwaiter().GetResult();
            if (job.IsDropped)
            {
                _ = book.RemoveAsync(job.Id, CancellationToken.None).GetAwaiter().GetResult();
            }

            return last;
        }
        catch (StoreUnavailableException fault)
        {
            return PlanSnapshot.Of(StoreProblems.Of(fault));
        }
    }
}
