using PanelService.Planning.Strength;

namespace PanelService.Planning.Tests.Strength;

/// <summary>Plate theory against the tables and figures it is published with.</summary>
public sealed class PlateTheoryTests
{
    private const double Poisson = 0.3;

    // Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, uniform load, four edges simply supported.
    [Theory]
    [InlineData(1, 0.00406)]
    [InlineData(1.2, 0.00565)]
    [InlineData(1.5, 0.00772)]
    [InlineData(2, 0.01013)]
    [InlineData(3, 0.01223)]
    [InlineData(4, 0.01282)]
    [InlineData(1000, 0.01302)]
    public void Sag_under_a_uniform_load_is_Timoshenkos(double ratio, double published) =>
        AssertWithin(0.01, published, PlateTheory.UniformLoad(ratio));

    // Roark's Formulas for Stress and Strain, table 11.4: y = α q b⁴ / (E t³), ν = 0.3.
    [Theory]
    [InlineData(1, 0.0444)]
    [InlineData(1.2, 0.0616)]
    [InlineData(1.4, 0.0770)]
    [InlineData(1.6, 0.0906)]
    [InlineData(1.8, 0.1017)]
    [InlineData(2, 0.1110)]
    [InlineData(3, 0.1335)]
    [InlineData(4, 0.1400)]
    [InlineData(5, 0.1417)]
    [InlineData(1000, 0.1421)]
    public void Sag_under_a_uniform_load_is_Roarks(double ratio, double published) =>
        AssertWithin(0.01, published, PlateTheory.UniformLoad(ratio) * 12 * (1 - (Poisson * Poisson)));

    // Roark's Formulas for Stress and Strain, table 11.4, case 1b, a load on a small circle at the middle: y = α W b² / (E t³), ν = 0.3.
    [Theory]
    [InlineData(1, 0.1267)]
    [InlineData(1.2, 0.1478)]
    [InlineData(1.4, 0.1621)]
    [InlineData(1.6, 0.1715)]
    [InlineData(1.8, 0.1770)]
    [InlineData(2, 0.1805)]
    [InlineData(1000, 0.1851)]
    public void Sag_under_a_load_at_the_middle_is_Roarks(double ratio, double published) =>
        AssertWithin(0.002, published, PlateTheory.LoadAtMiddle(ratio) * 12 * (1 - (Poisson * Poisson)));

    // Of an endless strip the series is 1/2π³ · Σ 1/m³ over odd m, and that sum is 7/8 ζ(3): worked by hand.
    [Fact]
    public void Sag_of_an_endless_strip_under_a_load_at_its_middle_is_as_worked() =>
        AssertWithin(0.00001, 7 * 1.2020569031595942 / (16 * Math.Pow(Math.PI, 3)), PlateTheory.LoadAtMiddle(1000));

    // Navier's double series, summed here term by term: another way to the same plate (Timoshenko, art. 30 and 34).
    [Theory]
    [InlineData(1)]
    [InlineData(1.25)]
    [InlineData(1.7)]
    [InlineData(3.3)]
    public void Single_series_agree_with_Naviers_double_series(double ratio)
    {
        double uniform = 0, middle = 0;
        for (int m = 1; m <= 301; m += 2)
        {
            for (int n = 1; n <= 301; n += 2)
            {
                double stiffness = Math.Pow((m * m) + (n * n / (ratio * ratio)), 2);
                int sign = (m + n) % 4 == 2 ? 1 : -1;
                uniform += sign / (m * n * stiffness);
                middle += 1 / stiffness;
            }
        }

        AssertWithin(0.0001, 16 / Math.Pow(Math.PI, 6) * uniform, PlateTheory.UniformLoad(ratio));
        AssertWithin(0.0005, 4 / Math.Pow(Math.PI, 4) / ratio * middle, PlateTheory.LoadAtMiddle(ratio));
    }

    // Worked from the table of Timoshenko: E 4.5 GPa, 1000 kg/m³, 3.2 mm, own weight, four edges simply supported.
    [Theory]
    [InlineData(16, 20, 0.382)]
    [InlineData(24, 24, 1.304)]
    public void Sag_of_hardboard_under_its_own_weight_is_as_worked(double shortInches, double longInches, double millimetres)
    {
        var plate = new LoadedPlate(shortInches * 0.0254, longInches * 0.0254, BoardMaterials.Hardboard, Covering: 0, Hand: 0);
        AssertWithin(0.01, millimetres, plate.OwnSag(0.0032) * 1000);
    }

    // R = t / Δε, s = L² / 8R, worked by hand.
    [Theory]
    [InlineData(610, 3.2, 0.001, 14.5)]
    [InlineData(610, 6.4, 0.001, 7.3)]
    [InlineData(508, 3.2, 0.0005, 5.04)]
    public void Bow_from_one_sided_moisture_is_as_worked(double length, double thickness, double strain, double millimetres) =>
        AssertWithin(0.01, millimetres, MoistureBow.Of(length, thickness, strain));

    [Fact]
    public void Least_thickness_is_where_the_sag_meets_its_share()
    {
        var plate = new LoadedPlate(0.4064, 0.508, BoardMaterials.Hardboard, Covering: 0.5, Hand: 1);
        double least = plate.LeastThickness(300);
        AssertWithin(1e-6, 0.4064 / 300, plate.SagUnderHand(least));
        Assert.True(plate.SagUnderHand(least * 0.99) > 0.4064 / 300);
    }

    private static void AssertWithin(double share, double expected, double actual) =>
        Assert.InRange(actual, expected * (1 - share), expected * (1 + share));
}
