namespace PanelService.Planning.Plans;

/// <summary>Something the painter should know, in words; scripts go by the id.</summary>
/// <param name="Id">Stable and lower case with hyphens.</param>
/// <param name="Text">One or two sentences.</param>
public sealed record Warning(string Id, string Text)
{
    /// <summary>What measures here raised it, as the tape shows it: "5 in", "24 × 16 in"; the text ends with it. Null: no measure did.</summary>
    public string? Here { get; init; }
}
