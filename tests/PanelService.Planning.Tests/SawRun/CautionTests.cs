using PanelService.Cutting;
using PanelService.Planning.Plans;
using PanelService.Planning.SawRun;
using PanelService.Planning.SawRun.Cautions;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.SawRun;

/// <summary>Every caution has a cut that raises it and one that just does not. Thresholds are common practice.</summary>
public sealed class CautionTests
{
    [Theory]
    [InlineData("narrow-rip", 5.99, 24, 24, true)]
    [InlineData("narrow-rip", 6, 24, 24, false)]
    [InlineData("short-along-fence", 8, 24, 11.99, true)]
    [InlineData("short-along-fence", 8, 24, 12, false)]
    [InlineData("wider-than-long", 8, 24.01, 24, true)]
    [InlineData("wider-than-long", 8, 24, 24, false)]
    [InlineData("large-sheet", 8, 96, 48, true)]
    [InlineData("large-sheet", 8, 95.9, 48, false)]
    [InlineData("large-sheet", 8, 96, 47.9, false)]
    [InlineData("no-fence-as-stop", 8, 48, 9.99, true)]
    [InlineData("no-fence-as-stop", 8, 48, 10, false)]
    public void A_caution_is_raised_from_its_threshold_on(string id, double fence, double across, double along, bool raised) =>
        Assert.Equal(raised, Raised(fence, across, along, isTrim: false).Contains(id));

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_factory_edge_is_warned_of_at_trimming_cuts_only(bool isTrim) =>
        Assert.Equal(isTrim, Raised(20, 24, 48, isTrim).Contains("factory-edge"));

    private static IEnumerable<string> Raised(double fence, double across, double along, bool isTrim)
    {
        var at = Inches((decimal)fence);
        var cut = new SheetCut(1, default, default, Inches((decimal)across), Inches((decimal)along), Axis.X, at, isTrim);
        return CautionBook.Raised([new SawCutFacts(cut, SawCutFacts.ToolFor(cut), at)]).Select(caution => caution.Id);
    }
}
