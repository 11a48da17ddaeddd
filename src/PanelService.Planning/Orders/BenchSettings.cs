using PanelService.Planning.Measures;

namespace PanelService.Planning.Orders;

/// <summary>How the painter cuts cloth and presses.</summary>
public sealed record BenchSettings
{
    /// <summary>Cloth over on the left of a panel, and on the right where that is not said. Default 1/2 in (common practice).</summary>
    public Length MarginSides { get; init; } = Length.FromInches(0.5m);

    /// <summary>Cloth over at the top of a panel, and at the bottom where that is not said. Default 1/2 in (common practice).</summary>
    public Length MarginEnds { get; init; } = Length.FromInches(0.5m);

    /// <summary>Cloth over on the right; null: as on the left.</summary>
    public Length? MarginRight { get; init; }

    /// <summary>Cloth over at the bottom; null: as at the top.</summary>
    public Length? MarginBottom { get; init; }

    /// <summary>Both margins across the panel's width.</summary>
    public Length MarginAcross => MarginSides + (MarginRight ?? MarginSides);

    /// <summary>Both margins along the panel's height.</summary>
    public Length MarginAlong => MarginEnds + (MarginBottom ?? MarginEnds);

    /// <summary>Cut so much larger along the panel's width, in percent, against shrinking; 0 to 50. Default 0.</summary>
    public decimal ShrinkageWidth { get; init; }

    /// <summary>The same along the panel's height.</summary>
    public decimal ShrinkageHeight { get; init; }

    /// <summary>Pressure a stack is held under, kPa. Default 1.58: 20 kg on 12 × 16 in (common practice).</summary>
    public decimal Pressure { get; init; } = 1.58m;

    /// <summary>Within how many minutes the weight must be on, where the adhesive does not say. Default 10 (PVA dispersion: 5 to 10, from memory).</summary>
    public decimal OpenMinutes { get; init; } = 10;

    /// <summary>How long a coat dries before it is sanded, where the primer does not say, hours. Default 4 (common practice).</summary>
    public decimal DryHours { get; init; } = 4;

    /// <summary>How long a panel rests when it is done, hours. Default 24: full strength of a PVA dispersion (from memory).</summary>
    public decimal RestHours { get; init; } = 24;

    /// <summary>How long a glued-on cradle stays clamped, hours. Default 2 (common practice).</summary>
    public decimal ClampHours { get; init; } = 2;

    /// <summary>The room's lowest temperature, °C; null: not said.</summary>
    public decimal? RoomTemperature { get; init; }

    /// <summary>A cloth leftover this fits into, either way round, is kept: one side. Default 6 in.</summary>
    public Length SmallestClothWidth { get; init; } = Length.FromInches(6);

    /// <summary>The other side. Default 8 in.</summary>
    public Length SmallestClothHeight { get; init; } = Length.FromInches(8);

    /// <summary>How long a stack stays in the press. Default 12 hours: overnight (common practice).</summary>
    public decimal PressHours { get; init; } = 12;

    /// <summary>How many stacks can stand under weight at once. Default 4.</summary>
    public int PressSpaces { get; init; } = 4;

    /// <summary>How many panels one stack holds. Default 10.</summary>
    public int StackHeight { get; init; } = 10;
}
