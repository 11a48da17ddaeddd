using System.Diagnostics.Metrics;
using PanelService.Wire.Plans;

namespace PanelService.Work;

/// <summary>Counts what the planners do: how many plans by how they ended, how long each took, how many wait.</summary>
internal sealed class PlanningMeter
{
    /// <summary>The meter's name.</summary>
    internal const string Name = "PanelService.Planning";

    private readonly Histogram<double> _seconds;
    private readonly Meter _meter;

    /// <summary>Makes it.</summary>
    /// <param name="factory">The host's.</param>
    public PlanningMeter(IMeterFactory factory)
    {
        _meter = factory.Create(Name);
        _seconds = _meter.CreateHistogram<double>("panel_service.plan.duration", "s", "Time from taking an order up to its plan, by how it ended.");
    }

    internal void Ended(PlanState state, TimeSpan took) =>
        _seconds.Record(took.TotalSeconds, new KeyValuePair<string, object?>("state", state.ToString().ToLowerInvariant()));

    internal void Watch(Func<int> waiting) =>
        _ = _meter.CreateObservableGauge("panel_service.plan.waiting", waiting, "{order}", "Orders that wait for a planner.");
}
