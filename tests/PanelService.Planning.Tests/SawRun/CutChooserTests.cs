using PanelService.Cutting;
using PanelService.Planning.SawRun.Graph;
using PanelService.Planning.SawRun.Search;

namespace PanelService.Planning.Tests.SawRun;

public sealed class CutChooserTests
{
    private const long Kerf = 2;

    [Theory]
    [InlineData(60, 100, Axis.Y)]
    [InlineData(100, 60, Axis.X)]
    public void Of_ways_of_as_many_cuts_the_one_that_leaves_most_to_keep_is_chosen(long width, long height, Axis first)
    {
        // Cut off across the longer side first, the square leaves 60 × 60 and a strip; the other way 60 × 40 and a longer strip.
        var graph = new CutGraph(new GraphRules(Kerf, 0, 0), wasteIsFree: true, limit: 1_000);
        var root = graph.Of(width, height, [NeededPart.Panel(new Rectangle(0, 0, 40, 40))]);
        graph.Finish();
        int setting = graph.Settings.FindIndex(one => one.Size == 40 - Kerf);

        var chosen = new CutChooser([setting], (across, along) => Math.Min(across, along) >= 30 ? across * along : 0).Of(root, 0);

        Assert.Equal(first, chosen?.Split.Axis);
    }
}
