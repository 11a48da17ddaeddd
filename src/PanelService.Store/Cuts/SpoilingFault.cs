namespace PanelService.Store.Cuts;

/// <summary>What cannot be in what is said to be spoiled.</summary>
/// <param name="OfSheet">Whether it is an entry of the sheets, else of the panels.</param>
/// <param name="Index">The entry's place, from 0.</param>
/// <param name="Field">Which of its fields: sheet, mark or count.</param>
/// <param name="Text">What is wrong.</param>
public sealed record SpoilingFault(bool OfSheet, int Index, string Field, string Text);
