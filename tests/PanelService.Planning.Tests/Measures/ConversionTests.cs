using System.Globalization;
using PanelService.Planning.Measures;

namespace PanelService.Planning.Tests.Measures;

/// <summary>
/// NIST Special Publication 811 (2008 edition), appendix B.8, factors in bold there: exact. Volumes: NIST Handbook 44,
/// appendix C (1 US gal = 231 in³ = 128 US fl oz = 3.785411784 L, exact).
/// </summary>
public sealed class ConversionTests
{
    [Theory]
    [InlineData("1 in", 25.4)] // SP 811 B.8: inch to metre, 2.54 E-02, exact
    [InlineData("1 ft", 304.8)] // foot to metre, 3.048 E-01, exact
    [InlineData("1 yd", 914.4)] // yard to metre, 9.144 E-01, exact
    [InlineData("1 cm", 10)]
    [InlineData("1 m", 1000)]
    public void Parse_one_of_a_unit_is_its_published_length_in_millimetres(string text, double millimetres)
    {
        var read = Assert.IsType<LengthRead>(LengthText.Parse(text, LengthUnit.Inch));
        Assert.Equal((decimal)millimetres, read.Length.Millimetres);
    }

    [Fact]
    public void Area_of_a_square_inch_is_published_square_centimetres() =>
        Assert.Equal(6.4516m, (Length.FromInches(1) * Length.FromInches(1)).In(LengthUnit.Centimetre)); // SP 811 B.8: square inch, 6.4516 E-04 m², exact

    [Fact]
    public void Volume_of_a_us_gallon_is_128_fluid_ounces_and_published_litres() =>
        Assert.Equal(3785.411784m, (Volume.From(1, LengthUnit.Inch) * 128).Millilitres); // Handbook 44, appendix C, exact

    [Fact]
    public void Volume_of_a_fluid_ounce_agrees_with_the_rounded_table_entry() =>
        Assert.Equal(29.57353m, Math.Round(Volume.From(1, LengthUnit.Inch).In(LengthUnit.Millimetre), 5)); // SP 811 B.8: fluid ounce (U.S.), 2.957 353 E+01 mL

    [Theory]
    [InlineData("0.5", 1)]
    [InlineData("1.5", 2)]
    [InlineData("2.5", 3)]
    [InlineData("0.4999999999", 0)]
    [InlineData("-0.5", -1)]
    public void Nearest_half_a_step_goes_away_from_zero(string steps, long rounded) =>
        Assert.Equal(rounded, Length.Nearest(decimal.Parse(steps, CultureInfo.InvariantCulture)).Steps);

    [Fact]
    public void From_more_than_a_length_can_hold_throws() =>
        Assert.Throws<OverflowException>(() => Length.FromMillimetres(1e20m));
}
