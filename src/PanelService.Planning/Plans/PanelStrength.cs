using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Strength;

namespace PanelService.Planning.Plans;

/// <summary>What panels of one line, cut from one board, weigh and bear.</summary>
public sealed record PanelStrength
{
    /// <summary>The line's or wish's mark.</summary>
    public required string Mark { get; init; }

    /// <summary>The id of the board.</summary>
    public required string Board { get; init; }

    /// <summary>How many are cut from it.</summary>
    public required long Count { get; init; }

    /// <summary>The board's thickness.</summary>
    public required Length Thickness { get; init; }

    /// <summary>The figures computed with.</summary>
    public required BoardMaterial Material { get; init; }

    /// <summary>Weight of the board of one.</summary>
    public required Weight BoardWeight { get; init; }

    /// <summary>Weight of one, with cloth, dried liquids and cradle.</summary>
    public required Weight Weight { get; init; }

    /// <summary>Sag at the middle under its own weight, lying on its four edges, mm.</summary>
    public required double Sag { get; init; }

    /// <summary>That with a hand on the middle, mm.</summary>
    public required double SagUnderHand { get; init; }

    /// <summary>Sag at the middle under its own weight, held at its four corners alone, mm.</summary>
    public double CornerSag { get; init; }

    /// <summary>That with a hand on the middle, mm.</summary>
    public double CornerSagUnderHand { get; init; }

    /// <summary>Which way the face grain runs in it; null: its board bends alike both ways.</summary>
    public FaceGrain? Grain { get; init; }

    /// <summary>What is allowed: the short side over the limit, mm.</summary>
    public required double Allowed { get; init; }

    /// <summary>Whether the sag under the hand is within a half of the thickness, where plate theory holds.</summary>
    public required bool WithinTheory { get; init; }

    /// <summary>Bow of the long side where one face only takes up moisture, mm.</summary>
    public required double Bow { get; init; }

    /// <summary>The least thickness that stays within what is allowed, mm.</summary>
    public required double LeastThickness { get; init; }

    /// <summary>What the rule of thumb asks for.</summary>
    public required Length ThumbThickness { get; init; }

    /// <summary>Whether the rule of thumb braces it.</summary>
    public required bool ThumbBraces { get; init; }

    /// <summary>The cradle it has, or wants; null: it wants none.</summary>
    public Cradle? Cradle { get; init; }

    /// <summary>Whether it has that cradle.</summary>
    public required bool Cradled { get; init; }

    /// <summary>How much the width grows from the driest to the dampest air, mm.</summary>
    public required double GrowthWidth { get; init; }

    /// <summary>How much the height grows.</summary>
    public required double GrowthHeight { get; init; }

    /// <summary>Whether it may jam in a frame of its nominal size.</summary>
    public required bool TightInFrame { get; init; }
}

/// <summary>Strips on the back of a panel: two rails along its long sides, and bars between them.</summary>
/// <param name="RailLength">Length of a rail.</param>
/// <param name="BarLength">Length of a bar.</param>
/// <param name="Bars">How many bars, the two at the ends included.</param>
public sealed record Cradle(Length RailLength, Length BarLength, int Bars)
{
    /// <summary>The strips of one cradle, by length.</summary>
    public ImmutableArray<(Length Length, int Count)> Strips => RailLength == BarLength
        ? [(RailLength, 2 + Bars)]
        : [(RailLength, 2), (BarLength, Bars)];
}
