using PanelService.Planning.Measures;

namespace PanelService.Wire.Orders;

/// <summary>What panels must bear, what air they must stand, how cradles are made. What is left out comes from <c>GET /api/practice</c>.</summary>
internal sealed record StrengthRequest
{
    /// <summary>What a hand leans on the middle of a panel with: lb for inch, g otherwise; 0 to 50 kg. Default 1 kg.</summary>
    public decimal? Load { get; init; }

    /// <summary>A panel may sag by its short side over this, 10 to 10 000. Default 300.</summary>
    public decimal? Limit { get; init; }

    /// <summary>Relative humidity in percent at the back and at the front, where one face only takes up moisture; each 0 to 99. Default [50, 65].</summary>
    public IReadOnlyList<decimal?>? Faces { get; init; }

    /// <summary>The driest and the dampest air in percent; each 0 to 99. Default [35, 80].</summary>
    public IReadOnlyList<decimal?>? Humidity { get; init; }

    /// <summary>The air's temperature in °C, 0 to 50. Default 20.</summary>
    public decimal? Temperature { get; init; }

    /// <summary>Whether every line whose panels might sag too much gets a cradle, unless it says "cradle": false. Default false.</summary>
    public bool? Brace { get; init; }

    /// <summary>A panel whose long side is at least this is braced by the rule of thumb; null: as its board's kind has it.</summary>
    public Length? BraceFrom { get; init; }

    /// <summary>Width of a strip where it is glued on, at most 1 m. Default 3/4 in.</summary>
    public Length? StripWidth { get; init; }

    /// <summary>How far a strip stands off the panel, at most 1 m. Default 1 1/2 in.</summary>
    public Length? StripDepth { get; init; }

    /// <summary>How far a cradle stays within the panel's edge, 0 to 1 m. Default 1/4 in.</summary>
    public Length? CradleInset { get; init; }

    /// <summary>A rest of a strip at least this long is kept. Default 12 in.</summary>
    public Length? SmallestStrip { get; init; }
}
