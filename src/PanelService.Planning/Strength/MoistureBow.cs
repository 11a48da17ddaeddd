namespace PanelService.Planning.Strength;

/// <summary>
/// Bow of a board one face of which is longer than the other: it bends to a radius R = t / Δε, and over a length L that
/// is a bow of L² / 8R. Plane geometry; the length is taken to be much less than the radius.
/// </summary>
public static class MoistureBow
{
    /// <summary>The bow, in the unit of the lengths.</summary>
    /// <param name="length">The length along which it bows.</param>
    /// <param name="thickness">The thickness; above 0.</param>
    /// <param name="strain">How much longer one face is than the other, as a share.</param>
    public static double Of(double length, double thickness, double strain) => length * length * strain / (8 * thickness);
}
