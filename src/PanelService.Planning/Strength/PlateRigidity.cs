namespace PanelService.Planning.Strength;

/// <summary>
/// How stiff a plate is against bending along x, along y, and twisting, N·m: of the equation
/// Dx ∂⁴w/∂x⁴ + 2H ∂⁴w/∂x²∂y² + Dy ∂⁴w/∂y⁴ = q with H = D1 + 2Dxy (Timoshenko and Woinowsky-Krieger, art. 85).
/// </summary>
/// <param name="Dx">Along x; above 0.</param>
/// <param name="Dy">Along y; above 0.</param>
/// <param name="D1">What bending one way asks for the other; 0 or more, D1² below Dx·Dy.</param>
/// <param name="Dxy">Against twisting; above 0.</param>
public readonly record struct PlateRigidity(double Dx, double Dy, double D1, double Dxy)
{
    /// <summary>D1 + 2Dxy.</summary>
    public double H => D1 + (2 * Dxy);

    /// <summary>The same plate turned by a quarter.</summary>
    public PlateRigidity Turned => new(Dy, Dx, D1, Dxy);

    /// <summary>A board's, of some thickness.</summary>
    /// <param name="material">The board; x runs along its face grain.</param>
    /// <param name="thickness">Thickness, m; above 0.</param>
    public static PlateRigidity Of(BoardMaterial material, double thickness)
    {
        ArgumentNullException.ThrowIfNull(material);
        double poisson = (double)material.Poisson;
        double along = PlateTheory.Rigidity((double)material.Elasticity * 1e6, thickness, poisson);
        double across = PlateTheory.Rigidity((double)(material.ElasticityAcross ?? material.Elasticity) * 1e6, thickness, poisson);
        double mean = Math.Sqrt(along * across);

        // A board whose shear modulus nobody gives twists as one would that is alike both ways at the mean of both.
        double twist = material.Shear is { } shear
            ? (double)shear * 1e6 * Math.Pow(thickness, 3) / 12
            : mean * (1 - poisson) / 2;
        return new PlateRigidity(along, across, poisson * mean, twist);
    }
}
