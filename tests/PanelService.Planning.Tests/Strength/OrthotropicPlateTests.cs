using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Strength;

namespace PanelService.Planning.Tests.Strength;

/// <summary>Boards stiffer along their grain than across, and plates held at their corners, against what is known of them.</summary>
public sealed class OrthotropicPlateTests
{
    private const double Poisson = 0.3;

    private static readonly PlateRigidity _alike = new(1, 1, Poisson, (1 - Poisson) / 2);

    // Birch plywood of five plies, 1 m thick: any figures would do here.
    private static readonly PlateRigidity _plywood = PlateRigidity.Of(BoardMaterials.Plywood, 1);

    // Alike both ways it is the plate of Timoshenko's and Roark's tables, which PlateTheory is held to.
    [Theory]
    [InlineData(1)]
    [InlineData(1.3)]
    [InlineData(2)]
    [InlineData(40)]
    public void Plate_alike_both_ways_sags_as_plate_theory_has_it(double ratio)
    {
        AssertWithin(1e-6, PlateTheory.UniformLoad(ratio), OrthotropicPlate.UniformLoad(_alike, ratio, 1));
        AssertWithin(1e-4, PlateTheory.LoadAtMiddle(ratio), OrthotropicPlate.LoadAtMiddle(_alike, 1, ratio));
    }

    // Navier's double series term by term: Timoshenko and Woinowsky-Krieger, art. 85 and 86.
    [Theory]
    [InlineData(1, 1)]
    [InlineData(1.25, 1)]
    [InlineData(1, 1.7)]
    public void Plywood_sags_as_Naviers_double_series_has_it(double x, double y)
    {
        double uniform = 0, middle = 0;
        for (int m = 1; m <= 301; m += 2)
        {
            for (int n = 1; n <= 301; n += 2)
            {
                double stiffness = (_plywood.Dx * Math.Pow(m / x, 4)) + (2 * _plywood.H * Math.Pow(m * n / (x * y), 2)) + (_plywood.Dy * Math.Pow(n / y, 4));
                uniform += ((m + n) % 4 == 2 ? 1 : -1) / (m * n * stiffness);
                middle += 1 / stiffness;
            }
        }

        AssertWithin(1e-5, 16 / Math.Pow(Math.PI, 6) * uniform, OrthotropicPlate.UniformLoad(_plywood, x, y));
        AssertWithin(5e-4, 4 / Math.Pow(Math.PI, 4) / (x * y) * middle, OrthotropicPlate.LoadAtMiddle(_plywood, x, y));
    }

    // Roots of one sign, where a plate resists twisting more than bending: the other branch of the square root.
    [Fact]
    public void Plate_stiff_against_twisting_sags_as_Naviers_double_series_has_it()
    {
        var stiff = new PlateRigidity(3, 1, 1.5, 0.9);
        double uniform = 0;
        for (int m = 1; m <= 201; m += 2)
        {
            for (int n = 1; n <= 201; n += 2)
            {
                uniform += ((m + n) % 4 == 2 ? 1 : -1) / (m * n * ((3 * Math.Pow(m / 1.3, 4)) + (2 * stiff.H * Math.Pow(m * n / 1.3, 2)) + Math.Pow(n, 4)));
            }
        }

        AssertWithin(1e-5, 16 / Math.Pow(Math.PI, 6) * uniform, OrthotropicPlate.UniformLoad(stiff, 1.3, 1));
    }

    // Stiff one way and long the other it is a row of beams: 5/384 q a⁴ / D (beam theory), and so is a strip of it.
    [Fact]
    public void Plate_stiff_across_its_short_side_is_a_row_of_beams()
    {
        AssertWithin(1e-3, 5.0 / 384 / 2, OrthotropicPlate.UniformLoad(new PlateRigidity(1e-6, 2, 1e-9, 1e-6), 1, 1));
        AssertWithin(1e-3, 5.0 / 384 / _plywood.Dy, OrthotropicPlate.UniformLoad(_plywood, 60, 1));
    }

    [Fact]
    public void Square_sags_the_same_whichever_way_its_grain_runs() => AssertWithin(
        1e-6, OrthotropicPlate.UniformLoad(_plywood, 1, 1), OrthotropicPlate.UniformLoad(_plywood.Turned, 1, 1));

    // Timoshenko and Woinowsky-Krieger, corner-supported square, ν = 0.3: 0.0255 q a⁴ / D (from memory, not read again).
    [Fact]
    public void Square_held_at_its_corners_sags_as_Timoshenkos() =>
        AssertWithin(0.002, 0.0255, CornerPlate.Sag(_alike, 1, 1).Uniform);

    // A long strip held at its ends is a beam of E I = D (1 − ν²) a metre's width: 5/384 q l⁴ and 1/48 P l³ (beam theory).
    [Fact]
    public void Long_strip_held_at_its_corners_is_a_beam()
    {
        double stiffness = 1 - (Poisson * Poisson);
        var (uniform, middle) = CornerPlate.Sag(_alike, 20, 1);
        AssertWithin(0.002, 5 * Math.Pow(20, 4) / 384 / stiffness, uniform);
        AssertWithin(0.005, Math.Pow(20, 3) / 48 / stiffness, middle);
    }

    // Betti and Maxwell: turning the plate about does not change what it is, and stiffness goes with the thickness cubed.
    [Fact]
    public void Corner_sag_keeps_to_turning_and_to_scale()
    {
        var (uniform, middle) = CornerPlate.Sag(_plywood, 1.4, 1);
        var turned = CornerPlate.Sag(_plywood.Turned, 1, 1.4);
        AssertWithin(1e-9, uniform, turned.Uniform);
        AssertWithin(1e-9, middle, turned.AtMiddle);
        AssertWithin(1e-9, uniform * 8, CornerPlate.Sag(PlateRigidity.Of(BoardMaterials.Plywood, 0.5), 1.4, 1).Uniform);
        Assert.True(uniform > OrthotropicPlate.UniformLoad(_plywood, 1.4, 1));
    }

    // Where nobody says which way the grain runs, the worse way counts; where the board does, its own.
    [Fact]
    public void Grain_that_is_not_told_counts_the_weaker_way()
    {
        var board = Demo.Hardboard with { Kind = "plywood", Thickness = Length.FromMillimetres(6.5m), Grain = Grain.Height };
        double tall = Sag((0.3, 0.5), board), wide = Sag((0.5, 0.3), board);
        Assert.True(wide < tall);
        Assert.Equal(tall, Sag((0.3, 0.5), board with { Grain = Grain.Any }), 12);
        Assert.Equal(tall, Sag((0.5, 0.3), board with { Grain = Grain.Any }), 12);

        static double Sag((double Width, double Height) sides, BoardSupply board) =>
            LoadedPlate.Of(sides, board, covering: 0, new StrengthSettings()).SagUnderHand(0.0065);
    }

    [Fact]
    public void Plywood_has_as_many_plies_as_its_thickness()
    {
        BoardSupply Board(decimal millimetres) => Demo.Hardboard with { Kind = "birch plywood", Thickness = Length.FromMillimetres(millimetres) };
        Assert.Same(BoardMaterials.ThinPlywood, BoardMaterials.Of(Board(3.8m)));
        Assert.Same(BoardMaterials.Plywood, BoardMaterials.Of(Board(6.4m)));
        Assert.Same(BoardMaterials.ThickPlywood, BoardMaterials.Of(Board(9)));
    }

    private static void AssertWithin(double share, double expected, double actual) =>
        Assert.InRange(actual, expected * (1 - share), expected * (1 + share));
}
