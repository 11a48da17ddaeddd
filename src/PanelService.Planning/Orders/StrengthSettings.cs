using PanelService.Planning.Measures;

namespace PanelService.Planning.Orders;

/// <summary>What panels must bear, what air they must stand, and how cradles are made.</summary>
public sealed record StrengthSettings
{
    /// <summary>What a hand leans on the middle of a panel with. Default 1 kg (common practice).</summary>
    public Weight Load { get; init; } = new(1000);

    /// <summary>A panel may sag by its short side over this, 10 or more. Default 300 (common practice).</summary>
    public decimal Limit { get; init; } = 300;

    /// <summary>Relative humidity at the back and at the front where one face only takes up moisture, in percent. Default 50.</summary>
    public decimal BackHumidity { get; init; } = 50;

    /// <summary>That at the front. Default 65.</summary>
    public decimal FrontHumidity { get; init; } = 65;

    /// <summary>The driest air a panel meets, in percent. Default 35, where board data begin (AS/NZS 1859).</summary>
    public decimal DriestHumidity { get; init; } = 35;

    /// <summary>The dampest. Default 80, where board data end.</summary>
    public decimal DampestHumidity { get; init; } = 80;

    /// <summary>The air's temperature in °C, 0 to 50. Default 20.</summary>
    public decimal Temperature { get; init; } = 20;

    /// <summary>Whether every line whose panels might sag too much gets a cradle. Default false.</summary>
    public bool Brace { get; init; }

    /// <summary>A panel whose long side is at least this is braced by the rule of thumb; null: as its kind has it.</summary>
    public Length? BraceFrom { get; init; }

    /// <summary>Width of a strip where it is glued on. Default 3/4 in, as a nominal 1 × 2 measures (PS 20).</summary>
    public Length StripWidth { get; init; } = Length.FromInches(0.75m);

    /// <summary>How far a strip stands off the panel. Default 1 1/2 in (PS 20).</summary>
    public Length StripDepth { get; init; } = Length.FromInches(1.5m);

    /// <summary>How far a cradle stays within the panel's edge, to clear a frame's rabbet. Default 1/4 in (common practice).</summary>
    public Length CradleInset { get; init; } = Length.FromInches(0.25m);

    /// <summary>A rest of a strip at least this long is kept. Default 12 in (common practice).</summary>
    public Length SmallestStrip { get; init; } = Length.FromInches(12);
}
