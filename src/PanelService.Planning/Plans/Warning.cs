namespace PanelService.Planning.Plans;

/// <summary>Something the painter should know, in words; scripts go by the id.</summary>
/// <param name="Id">Stable and lower case with hyphens.</param>
/// <param name="Text">One or two sentences.</param>
public sealed record Warning(string Id, string Text);
