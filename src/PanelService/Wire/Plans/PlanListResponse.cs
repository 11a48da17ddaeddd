namespace PanelService.Wire.Plans;

/// <summary>A page of the list of stored plans.</summary>
/// <param name="Plans">The plans, the newest first.</param>
/// <param name="Total">How many the search finds in all.</param>
internal sealed record PlanListResponse(IReadOnlyList<PlanSummaryResponse> Plans, int Total);

/// <summary>A stored plan in a list.</summary>
/// <param name="Id">The plan's id.</param>
/// <param name="Title">The batch's name.</param>
/// <param name="CreatedAt">When it was made.</param>
/// <param name="Currency">ISO 4217 code.</param>
/// <param name="Spent">What it spends.</param>
/// <param name="LeastPossible">What no plan could spend less than.</param>
/// <param name="Panels">How many panels it makes or buys.</param>
/// <param name="IsCut">Whether it has been booked as cut.</param>
/// <param name="Address">Where it is.</param>
internal sealed record PlanSummaryResponse(
    string Id, string Title, DateTimeOffset CreatedAt, string Currency, decimal Spent, decimal LeastPossible, int Panels, bool IsCut, string Address);
