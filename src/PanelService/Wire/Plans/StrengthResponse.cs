using PanelService.Planning.Practice;
using PanelService.Planning.Strength;

namespace PanelService.Wire.Plans;

/// <summary>What panels of one line, cut from one board, weigh and bear: plate theory for a panel lying on its four edges.</summary>
internal sealed record StrengthResponse
{
    /// <summary>The line's mark.</summary>
    public required string Mark { get; init; }

    /// <summary>The board's id.</summary>
    public required string Board { get; init; }

    /// <summary>How many are cut from it.</summary>
    public required long Count { get; init; }

    /// <summary>The board's thickness.</summary>
    public required decimal Thickness { get; init; }

    /// <summary>The figures computed with.</summary>
    public required MaterialResponse Material { get; init; }

    /// <summary>Weight of the board of one: lb for inch, g otherwise.</summary>
    public required decimal BoardWeight { get; init; }

    /// <summary>Weight of one with cloth, dried liquids and cradle.</summary>
    public required decimal Weight { get; init; }

    /// <summary>Sag at the middle under its own weight.</summary>
    public required decimal Sag { get; init; }

    /// <summary>That with a hand on the middle (strength.load).</summary>
    public required decimal SagUnderHand { get; init; }

    /// <summary>Sag at the middle under its own weight, hung or laid by its four corners alone; left out in plans of an earlier release.</summary>
    public decimal? CornerSag { get; init; }

    /// <summary>That with a hand on the middle.</summary>
    public decimal? CornerSagUnderHand { get; init; }

    /// <summary>Which way the face grain runs in the panel, where the board bends less along it; unknown: the weaker way counts. Left out where the board bends alike both ways.</summary>
    public FaceGrain? Grain { get; init; }

    /// <summary>What is allowed: the short side over strength.limit.</summary>
    public required decimal Allowed { get; init; }

    /// <summary>Whether the sag under the hand is at most half the thickness; past that, theory says more than happens.</summary>
    public required bool WithinTheory { get; init; }

    /// <summary>Bow of the long side where one face only takes up moisture (strength.faces).</summary>
    public required decimal Bow { get; init; }

    /// <summary>The least thickness with which the sag under the hand is within what is allowed.</summary>
    public required decimal LeastThickness { get; init; }

    /// <summary>The least thickness by the rule of thumb.</summary>
    public required decimal ThumbThickness { get; init; }

    /// <summary>Whether the rule of thumb braces it (strength.braceFrom).</summary>
    public required bool ThumbBraces { get; init; }

    /// <summary>Whether it sags too much and should be braced; false where it has its cradle.</summary>
    public required bool BraceIt { get; init; }

    /// <summary>The cradle it has or should have; left out where it needs none, or is too small for one.</summary>
    public CradleResponse? Cradle { get; init; }

    /// <summary>How much width and height grow from the driest to the dampest air (strength.humidity).</summary>
    public required IReadOnlyList<decimal> Growth { get; init; }

    /// <summary>Whether it may jam in a frame of its nominal size in the dampest air.</summary>
    public required bool TightInFrame { get; init; }
}

/// <summary>What a board is made of.</summary>
/// <param name="Density">kg/m³.</param>
/// <param name="Elasticity">Modulus of elasticity, MPa; along the face grain where elasticityAcross says another across it.</param>
/// <param name="Poisson">Poisson's ratio.</param>
/// <param name="Expansion">Growth from 35 to 80 % relative humidity, in percent.</param>
/// <param name="Mark">How well the figures are founded.</param>
/// <param name="Source">Where they come from.</param>
/// <param name="ElasticityAcross">Modulus of elasticity across the face grain, MPa; left out where it is the same.</param>
/// <param name="Shear">Shear modulus, MPa; left out where it follows from the others.</param>
internal sealed record MaterialResponse(
    decimal Density, decimal Elasticity, decimal Poisson, decimal Expansion, SourceMark Mark, string Source, decimal? ElasticityAcross, decimal? Shear);

/// <summary>Strips on a panel's back.</summary>
/// <param name="Made">Whether they are part of this plan.</param>
/// <param name="Strips">The strips of one panel, by length.</param>
internal sealed record CradleResponse(bool Made, IReadOnlyList<CradleStripResponse> Strips);

/// <summary>Strips of one length.</summary>
/// <param name="Length">The length.</param>
/// <param name="Count">How many on one panel.</param>
internal sealed record CradleStripResponse(decimal Length, int Count);

/// <summary>What the finished panels weigh: lb for inch, g otherwise.</summary>
/// <param name="Batch">All that are cut.</param>
/// <param name="Pack">Those that go in the painter's pack.</param>
internal sealed record WeightsResponse(decimal Batch, decimal Pack);

/// <summary>Two ways to stiffen panels that sag too much, each planned at quick effort.</summary>
/// <param name="Marks">The lines that sag too much and have no cradle.</param>
/// <param name="Strips">Money that strips for their cradles add; left out where there are none.</param>
/// <param name="Thicker">Money that boards thick enough add, below zero where they save; left out where there are none.</param>
/// <param name="Cheaper">"strips" or "thicker"; left out where only one way is there, or both cost the same.</param>
/// <param name="Pieces">The strips that cradles for all of these panels take; a line too small for one has none. strength.brace puts them in.</param>
internal sealed record StiffeningResponse(IReadOnlyList<string> Marks, decimal? Strips, decimal? Thicker, string? Cheaper, IReadOnlyList<StiffeningPieceResponse> Pieces);

/// <summary>Strips of one length for one line's cradles.</summary>
/// <param name="Mark">The line.</param>
/// <param name="Length">The length of each.</param>
/// <param name="Each">How many on one panel.</param>
/// <param name="Count">How many on all of them.</param>
internal sealed record StiffeningPieceResponse(string Mark, decimal Length, int Each, long Count);
