using PanelService.Planning.Measures;

namespace PanelService.Store.Supplies;

/// <summary>Something that can be bought, in the shape it was sent in.</summary>
/// <param name="Sort">Of what sort.</param>
/// <param name="Id">Unique among its sort.</param>
/// <param name="Units">The unit of bare numbers in the document.</param>
/// <param name="Currency">ISO 4217 code of its prices.</param>
/// <param name="Document">The good as JSON, without units and currency.</param>
/// <param name="PricedOn">The day its price was set.</param>
/// <param name="Version">1 and up.</param>
public sealed record Supply(SupplySort Sort, string Id, LengthUnit Units, string Currency, string Document, DateOnly PricedOn, int Version);
