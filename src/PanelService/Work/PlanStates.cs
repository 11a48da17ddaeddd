using PanelService.Planning.Measures;
using PanelService.Wire.Plans;

namespace PanelService.Work;

/// <summary>A job's state as the wire shows it.</summary>
internal static class PlanStates
{
    internal static PlanStateResponse Write(PlanJob job) => Write(job, job.Look().Snapshot);

    internal static PlanStateResponse Write(PlanJob job, PlanSnapshot now)
    {
        var numbers = new WireNumbers(job.Order);
        return new(job.Id, now.State, numbers.Of(now.Spent), numbers.Of(now.LeastPossible), now.Problem);
    }
}
