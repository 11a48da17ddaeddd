using PanelService.Planning.Measures;

namespace PanelService.Store.Settings;

/// <summary>The studio's own settings, in the shape they were sent in.</summary>
/// <param name="Units">The unit of bare numbers in the document, and of orders that name none.</param>
/// <param name="Currency">ISO 4217 code of its amounts, and of orders that name none.</param>
/// <param name="Document">The settings as JSON.</param>
/// <param name="Version">1 and up.</param>
public sealed record SavedSettings(LengthUnit Units, string Currency, string Document, int Version);
