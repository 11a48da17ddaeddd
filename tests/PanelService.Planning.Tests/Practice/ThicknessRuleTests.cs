using PanelService.Planning.Measures;
using PanelService.Planning.Practice;

namespace PanelService.Planning.Tests.Practice;

/// <summary>Common practice: 1/8 in hardboard for panels smaller than 16 × 20 in, 3/16 in from 16 × 20 up.</summary>
public sealed class ThicknessRuleTests
{
    [Theory]
    [InlineData(8, 10, "1/8")]
    [InlineData(16, 19.9, "1/8")]
    [InlineData(15.9, 20, "1/8")]
    [InlineData(20, 15.9, "1/8")]
    [InlineData(16, 20, "3/16")]
    [InlineData(20, 16, "3/16")]
    [InlineData(17, 17, "3/16")]
    [InlineData(6, 21, "3/16")]
    public void LeastFor_a_format_follows_the_rule(double width, double height, string least) =>
        Assert.Equal(
            least,
            LengthText.FormatFigure(
                ThicknessRule.LeastFor(Length.FromInches((decimal)width), Length.FromInches((decimal)height)), LengthUnit.Inch));

    [Theory]
    [InlineData(3.0, true)]
    [InlineData(2.675, true)]
    [InlineData(2.67, false)]
    [InlineData(3.675, true)]
    [InlineData(3.68, false)]
    public void CountsAs_an_eighth_within_half_a_millimetre(double board, bool counts) =>
        Assert.Equal(counts, ThicknessRule.CountsAs(Length.FromMillimetres((decimal)board), ThicknessRule.Thin));

    [Fact]
    public void IsAtLeast_an_eighth_for_a_thicker_board() =>
        Assert.True(ThicknessRule.IsAtLeast(Length.FromMillimetres(6), ThicknessRule.Thin));
}
