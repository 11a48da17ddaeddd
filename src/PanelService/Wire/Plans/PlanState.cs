using System.Text.Json.Serialization;
using Microsoft.AspNetCore.Mvc;

namespace PanelService.Wire.Plans;

/// <summary>How far a plan is.</summary>
internal enum PlanState
{
    /// <summary>The search goes on, or waits for a planner.</summary>
    Planning,

    /// <summary>There is a plan.</summary>
    Done,

    /// <summary>There is none; the problem says why.</summary>
    Failed,

    /// <summary>Ended on request; the best plan so far is kept.</summary>
    Stopped,
}

/// <summary>How far a plan is, while it is made and as server-sent events.</summary>
/// <param name="Id">The plan's id.</param>
/// <param name="State">planning, done, failed or stopped.</param>
/// <param name="Spent">What the best plan so far spends; null before the first.</param>
/// <param name="LeastPossible">What no plan can spend less than, as known so far; null before the first bound.</param>
/// <param name="Problem">Why there is no plan; only where the state is failed.</param>
internal sealed record PlanStateResponse(
    string Id,
    PlanState State,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.Never)] decimal? Spent,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.Never)] decimal? LeastPossible,
    ProblemDetails? Problem = null);
