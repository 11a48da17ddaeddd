namespace PanelService.Planning.Measures;

/// <summary>A currency of ISO 4217.</summary>
/// <param name="Code">Its alphabetic code, upper case.</param>
/// <param name="MinorDigits">How many decimal digits its minor unit has.</param>
public sealed record Currency(string Code, int MinorDigits);
