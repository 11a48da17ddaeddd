using PanelService.Planning.Practice;

namespace PanelService.Planning.Strength;

/// <summary>What a board is made of, as far as bending and moisture go.</summary>
/// <param name="Density">kg/m³; above 0.</param>
/// <param name="Elasticity">Modulus of elasticity in bending, MPa (N/mm²), along the face grain where there is one; above 0.</param>
/// <param name="Poisson">Poisson's ratio, 0 to below 0.5.</param>
/// <param name="Expansion">How much longer it is in air of 80 % relative humidity than in air of 35 %, in percent; 0 or more.</param>
/// <param name="Mark">How well the figures are founded.</param>
/// <param name="Source">Where they come from.</param>
public sealed record BoardMaterial(
    decimal Density, decimal Elasticity, decimal Poisson, decimal Expansion, SourceMark Mark, string Source)
{
    /// <summary>Modulus of elasticity in bending across the face grain, MPa, where <see cref="Elasticity"/> is along it; null: alike both ways.</summary>
    public decimal? ElasticityAcross { get; init; }

    /// <summary>Shear modulus in the board's plane, MPa; null: that of a board alike both ways, at the mean of both moduli.</summary>
    public decimal? Shear { get; init; }
}
