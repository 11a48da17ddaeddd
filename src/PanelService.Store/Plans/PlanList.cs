using System.Collections.Immutable;

namespace PanelService.Store.Plans;

/// <summary>A page of the list of plans.</summary>
/// <param name="Plans">The plans, the newest first.</param>
/// <param name="Total">How many the search finds in all.</param>
public sealed record PlanList(ImmutableArray<PlanSummary> Plans, int Total);
