using PanelService.Planning.Strength;

namespace PanelService.Planning.Tests.Strength;

public sealed class WoodMoistureTests
{
    // USDA Wood Handbook, FPL-GTR-282, equation 4-5, at 20 °C.
    [Theory]
    [InlineData(0.30, 6.19)]
    [InlineData(0.50, 9.27)]
    [InlineData(0.65, 12.00)]
    [InlineData(0.80, 16.04)]
    [InlineData(0.90, 20.53)]
    public void Content_in_equilibrium_is_the_Wood_Handbooks(double humidity, double percent) =>
        Assert.Equal(percent, WoodMoisture.Content(humidity, 20), 2);

    // AS/NZS 1859 board data: hardboard grows by 0.16 % from 35 to 80 % relative humidity.
    [Fact]
    public void Growth_over_the_tested_range_is_the_boards_own() =>
        Assert.Equal(0.0016, WoodMoisture.Growth(BoardMaterials.Hardboard, 0.35, 0.80, 20), 9);

    [Fact]
    public void Growth_there_and_back_is_none()
    {
        double there = WoodMoisture.Growth(BoardMaterials.Mdf, 0.40, 0.75, 15);
        double back = WoodMoisture.Growth(BoardMaterials.Mdf, 0.75, 0.40, 15);
        Assert.True(there > 0);
        Assert.Equal(there, -back, 12);
    }

    // Moisture content rises with humidity: so does the board.
    [Fact]
    public void Growth_is_the_more_the_damper_it_gets()
    {
        double before = 0;
        for (double damp = 0.1; damp < 0.99; damp += 0.05)
        {
            double growth = WoodMoisture.Growth(BoardMaterials.Hardboard, 0.05, damp, 20);
            Assert.True(growth > before);
            before = growth;
        }
    }
}
