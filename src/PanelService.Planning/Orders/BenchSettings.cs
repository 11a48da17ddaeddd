using PanelService.Planning.Measures;

namespace PanelService.Planning.Orders;

/// <summary>How the painter cuts cloth and presses.</summary>
public sealed record BenchSettings
{
    /// <summary>Cloth over on the left and on the right of a panel. Default 1/2 in (common practice).</summary>
    public Length MarginSides { get; init; } = Length.FromInches(0.5m);

    /// <summary>Cloth over at the top and at the bottom of a panel. Default 1/2 in (common practice).</summary>
    public Length MarginEnds { get; init; } = Length.FromInches(0.5m);

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
