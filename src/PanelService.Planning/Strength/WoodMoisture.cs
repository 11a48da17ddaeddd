namespace PanelService.Planning.Strength;

/// <summary>
/// Moisture content of wood in equilibrium with air: USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-282,
/// equation 4-5, in °C. For solid wood; fibreboard lies lower above 65 %, so that it is used here only for how a
/// board's own tested growth is divided over the range of humidities.
/// </summary>
public static class WoodMoisture
{
    /// <summary>Between these two humidities a board's expansion is tested, as shares of 1.</summary>
    public static (double Dry, double Damp) TestedRange => (0.35, 0.80);

    /// <summary>Equilibrium moisture content in percent of dry weight.</summary>
    /// <param name="humidity">Relative humidity as a share, 0 to below 1.</param>
    /// <param name="temperature">Temperature in °C.</param>
    public static double Content(double humidity, double temperature)
    {
        double t = temperature;
        double weight = 349 + (1.29 * t) + (0.0135 * t * t);
        double k = (0.805 + (0.000736 * t) - (0.00000273 * t * t)) * humidity;
        double k1 = 6.27 - (0.00938 * t) - (0.000303 * t * t);
        double k2 = 1.91 + (0.0407 * t) - (0.000293 * t * t);
        double bound = ((k1 * k) + (2 * k1 * k2 * k * k)) / (1 + (k1 * k) + (k1 * k2 * k * k));
        return 1800 / weight * ((k / (1 - k)) + bound);
    }

    /// <summary>
    /// How much longer a board gets from one humidity to another, as a share of its length; below 0: shorter. Its tested
    /// growth from 35 to 80 % is divided in proportion to the change of moisture content.
    /// </summary>
    /// <param name="material">The board.</param>
    /// <param name="from">Relative humidity as a share, 0 to below 1.</param>
    /// <param name="to">That in the end.</param>
    /// <param name="temperature">Temperature in °C.</param>
    public static double Growth(BoardMaterial material, double from, double to, double temperature)
    {
        ArgumentNullException.ThrowIfNull(material);
        var (dry, damp) = TestedRange;
        double tested = Content(damp, temperature) - Content(dry, temperature);
        return (double)material.Expansion / 100 * (Content(to, temperature) - Content(from, temperature)) / tested;
    }
}
