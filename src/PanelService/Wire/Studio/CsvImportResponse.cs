namespace PanelService.Wire.Studio;

/// <summary>What became of a table.</summary>
/// <param name="Lines">How many lines were taken.</param>
/// <param name="Ids">The pencil ids given out, in the order of the lines.</param>
internal sealed record CsvImportResponse(int Lines, IReadOnlyList<string> Ids);
