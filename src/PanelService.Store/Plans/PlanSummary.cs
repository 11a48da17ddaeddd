namespace PanelService.Store.Plans;

/// <summary>A line of the list of plans.</summary>
/// <param name="Id">The plan's id.</param>
/// <param name="Title">The batch's name.</param>
/// <param name="CreatedAt">When it was stored.</param>
/// <param name="Currency">ISO 4217 code.</param>
/// <param name="SpentMinor">What it spends, in minor units.</param>
/// <param name="LeastPossibleMinor">What no plan could spend less than, in minor units.</param>
/// <param name="Panels">How many panels it makes or buys.</param>
/// <param name="IsCut">Whether it has been booked as cut.</param>
public sealed record PlanSummary(
    string Id, string Title, DateTimeOffset CreatedAt, string Currency, long SpentMinor, long LeastPossibleMinor, int Panels, bool IsCut);
