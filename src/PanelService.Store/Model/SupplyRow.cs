namespace PanelService.Store.Model;

/// <summary>Something that can be bought, in the shape it was sent in.</summary>
internal sealed class SupplyRow
{
    public required string Sort { get; init; }

    public required string Id { get; init; }

    public required string Units { get; set; }

    public required string Currency { get; set; }

    public required string Document { get; set; }

    /// <summary>The day its price was set.</summary>
    public required DateOnly PricedOn { get; set; }

    public required int Version { get; set; }
}
