namespace PanelService.Planning.Plans;

/// <summary>Something that wants care in this batch.</summary>
/// <param name="Id">Stable and lower case with hyphens.</param>
/// <param name="Text">One or two sentences.</param>
public sealed record CareNote(string Id, string Text);
