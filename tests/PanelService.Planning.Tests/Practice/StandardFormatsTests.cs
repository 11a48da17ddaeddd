using PanelService.Planning.Measures;
using PanelService.Planning.Practice;

namespace PanelService.Planning.Tests.Practice;

public sealed class StandardFormatsTests
{
    /// <summary>The published French series: in a Paysage the long side is that of the Figure, the short one less.</summary>
    [Theory]
    [InlineData("French", "0F", 140, 180)]
    [InlineData("French", "8P", 330, 460)]
    [InlineData("French", "20M", 500, 730)]
    [InlineData("French", "120F", 1300, 1950)]
    [InlineData("Japanese", "SM", 158, 227)]
    [InlineData("Japanese", "10M", 333, 530)]
    [InlineData("Japanese", "30S", 909, 909)]
    [InlineData("ISO", "A3", 297, 420)]
    [InlineData("Metric", "50 × 70", 500, 700)]
    public void All_series_hold_the_published_format(string series, string name, int widthMm, int heightMm)
    {
        var format = StandardFormats.All.Single(s => s.Name == series).Formats.Single(f => f.Name == name);
        Assert.Equal((widthMm, heightMm), ((int)format.Width.Millimetres, (int)format.Height.Millimetres));
    }

    [Fact]
    public void French_series_has_three_formats_of_each_of_its_twenty_numbers() =>
        Assert.Equal(60, StandardFormats.All.Single(s => s.Name == "French").Formats.Length);

    [Fact]
    public void All_formats_stand_upright_and_have_a_name_of_their_own() => Assert.All(StandardFormats.All, series =>
    {
        Assert.All(series.Formats, format => Assert.True(format.Width <= format.Height));
        Assert.Equal(series.Formats.Length, series.Formats.Select(format => format.Name).Distinct().Count());
    });

    [Fact]
    public void Iso_formats_halve_the_next_larger_one()
    {
        // ISO 216: halving the longer side, rounded down to the millimetre, gives the next format.
        var formats = StandardFormats.All.Single(s => s.Name == "ISO").Formats;
        Assert.All(formats.Zip(formats.Skip(1)), pair =>
            Assert.Equal(Math.Floor(pair.Second.Height.Millimetres / 2), pair.First.Width.Millimetres));
    }
}
