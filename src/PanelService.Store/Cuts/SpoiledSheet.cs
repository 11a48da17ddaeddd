namespace PanelService.Store.Cuts;

/// <summary>Sheets of one layout that were spoiled, with all that was to come out of them.</summary>
/// <param name="Number">The layout's number in the plan.</param>
/// <param name="Count">How many of its copies.</param>
public sealed record SpoiledSheet(int Number, int Count);
