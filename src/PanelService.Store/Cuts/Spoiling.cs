namespace PanelService.Store.Cuts;

/// <summary>Panels of a line that came out spoiled.</summary>
/// <param name="Mark">The line's mark.</param>
/// <param name="Count">How many.</param>
public sealed record Spoiling(string Mark, int Count)
{
    /// <summary>The number of the layout on whose spoiled sheets they lay; null: they were spoiled one by one.</summary>
    public int? Sheet { get; init; }
}
