using PanelService.Planning.Measures;

namespace PanelService.Wire.Reading;

/// <summary>A request that names the unit and the currency of its fields.</summary>
internal interface IMeasuredRequest
{
    /// <summary>The unit of bare numbers; null: the default.</summary>
    LengthUnit? Units { get; }

    /// <summary>ISO 4217 code; null: the default.</summary>
    string? Currency { get; }
}
