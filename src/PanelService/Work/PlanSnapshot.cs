using Microsoft.AspNetCore.Mvc;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;
using PanelService.Wire.Plans;

namespace PanelService.Work;

/// <summary>A job as it stands at one moment.</summary>
/// <param name="State">How far it is.</param>
/// <param name="Spent">What the best plan so far spends; null before the first.</param>
/// <param name="LeastPossible">The bound so far; null before the first.</param>
/// <param name="Plan">The plan, once there is one.</param>
/// <param name="Problem">Why there is none, where planning failed.</param>
internal sealed record PlanSnapshot(
    PlanState State, Money? Spent = null, Money? LeastPossible = null, Plan? Plan = null, ProblemDetails? Problem = null)
{
    internal static PlanSnapshot Of(Plan plan, PlanState state) =>
        new(state, plan.Proof.Spent, plan.Proof.LeastPossible, plan);

    internal static PlanSnapshot Of(ProblemDetails problem) => new(PlanState.Failed, Problem: problem);
}
