using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Wire.Orders;
using PanelService.Wire.Reading;

namespace PanelService.Wire.Studio;

/// <summary>The studio's own settings: what an order that leaves them out is taken to mean, field by field.</summary>
internal sealed record StudioSettingsRequest : IMeasuredRequest
{
    /// <summary>The unit of bare numbers here, and of orders that name none. Default: inch.</summary>
    public LengthUnit? Units { get; init; }

    /// <summary>ISO 4217 code of the amounts here, and of orders that name none. Default: EUR.</summary>
    public string? Currency { get; init; }

    /// <summary>How board is cut.</summary>
    public SawRequest? Saw { get; init; }

    /// <summary>How cloth is cut and panels are pressed.</summary>
    public BenchRequest? Bench { get; init; }

    /// <summary>What panels must bear, what air they must stand, how cradles are made.</summary>
    public StrengthRequest? Strength { get; init; }

    /// <summary>What work counts as; only for orders in this currency.</summary>
    public LabourRequest? Labour { get; init; }

    /// <summary>Costs of every batch as a whole; only for orders in this currency; at most 100.</summary>
    public IReadOnlyList<OverheadRequest?>? Overheads { get; init; }

    /// <summary>What the work wears out; only for orders in this currency; at most 100.</summary>
    public IReadOnlyList<ConsumableRequest?>? Consumables { get; init; }

    /// <summary>Tools whose price is spread over the panels made; only for orders in this currency; at most 100.</summary>
    public IReadOnlyList<ToolRequest?>? Tools { get; init; }

    /// <summary>How much work the search may do.</summary>
    public Effort? Effort { get; init; }
}
