using PanelService.Planning.Orders;

namespace PanelService.Planning.Strength;

/// <summary>A rectangle of board that lies on its four edges and carries itself, what is on it, and a hand.</summary>
/// <param name="Short">Short side, m.</param>
/// <param name="Long">Long side, m.</param>
/// <param name="Material">The board.</param>
/// <param name="Covering">What is glued or brushed on, kg/m².</param>
/// <param name="Hand">What leans on the middle, kg.</param>
internal sealed record LoadedPlate(double Short, double Long, BoardMaterial Material, double Covering, double Hand)
{
    /// <summary>Standard gravity, m/s² (exact by definition, NIST SP 811).</summary>
    public const double Gravity = 9.80665;

    private double Ratio => Long / Short;

    /// <summary>Sag at the middle under its own weight and covering, m.</summary>
    /// <param name="thickness">Thickness, m.</param>
    public double OwnSag(double thickness) =>
        PlateTheory.UniformLoad(Ratio) * Gravity * (((double)Material.Density * thickness) + Covering) * Math.Pow(Short, 4) / Rigidity(thickness);

    /// <summary>That with the hand, m.</summary>
    /// <param name="thickness">Thickness, m.</param>
    public double SagUnderHand(double thickness) =>
        OwnSag(thickness) + (PlateTheory.LoadAtMiddle(Ratio) * Gravity * Hand * Short * Short / Rigidity(thickness));

    /// <summary>The least thickness with which the sag under the hand stays within the short side's share, m.</summary>
    /// <param name="limit">The share's denominator: 300 for L/300.</param>
    public double LeastThickness(double limit)
    {
        // The sag falls as the board gets thicker: halving finds the place where it meets the limit. 100 mm is no board.
        var (thin, thick) = (1e-5, 0.1);
        for (int i = 0; i < 60; i++)
        {
            double middle = (thin + thick) / 2;
            (thin, thick) = SagUnderHand(middle) <= Short / limit ? (thin, middle) : (middle, thick);
        }

        return thick;
    }

    /// <summary>The plate of a line's panels as cut.</summary>
    /// <param name="sides">Both sides, m.</param>
    /// <param name="material">The board.</param>
    /// <param name="covering">What is on it, kg/m².</param>
    /// <param name="settings">The hand.</param>
    public static LoadedPlate Of((double Width, double Height) sides, BoardMaterial material, double covering, StrengthSettings settings) => new(
        Math.Min(sides.Width, sides.Height),
        Math.Max(sides.Width, sides.Height),
        material,
        covering,
        (double)settings.Load.Grams / 1000);

    private double Rigidity(double thickness) =>
        PlateTheory.Rigidity((double)Material.Elasticity * 1e6, thickness, (double)Material.Poisson);
}
