namespace PanelService.Store.Plans;

/// <summary>Which plans a list shows, the newest first.</summary>
/// <param name="Title">Part of the title, whatever its case; null: any.</param>
/// <param name="From">Stored at this moment or later; null: from the first.</param>
/// <param name="Before">Stored before this moment; null: to the last.</param>
/// <param name="Skip">How many to pass over.</param>
/// <param name="Take">How many at most.</param>
public sealed record PlanSearch(string? Title, DateTimeOffset? From, DateTimeOffset? Before, int Skip, int Take);
