using PanelService.Cutting;
using PanelService.Planning.Measures;
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
    [InlineData("far-fence", 24.01, 48, 48, true)]
    [InlineData("far-fence", 24, 48, 48, false)]
    [InlineData("large-sheet", 8, 96, 48, true)]
    [InlineData("large-sheet", 8, 95.9, 48, false)]
    [InlineData("large-sheet", 8, 96, 47.9, false)]
    [InlineData("small-part-free", 8, 14.115, 5.99, true)]
    [InlineData("small-part-free", 8, 14.125, 5.99, false)]
    [InlineData("small-part-free", 8, 14.115, 6, false)]
    [InlineData("small-part-free", 8, 8.125, 5.99, false)]
    public void A_caution_is_raised_from_its_threshold_on(string id, double fence, double across, double along, bool raised) =>
        Assert.Equal(raised, Raised(fence, across, along, isTrim: false).Contains(id));

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_factory_edge_is_warned_of_at_trimming_cuts_only(bool isTrim) =>
        Assert.Equal(isTrim, Raised(20, 24, 48, isTrim).Contains("factory-edge"));

    [Theory]
    [InlineData("push-stick", SawTool.Fence, true)]
    [InlineData("push-stick", SawTool.Sled, false)]
    [InlineData("no-fence-as-stop", SawTool.Sled, true)]
    [InlineData("no-fence-as-stop", SawTool.Fence, false)]
    public void A_caution_goes_with_its_tool(string id, SawTool tool, bool raised) =>
        Assert.Equal(raised, RaisedBy(At(8, 24, 24) with { Tool = tool }).Contains(id));

    [Theory]
    [InlineData("thin-kerf", 0.09375, true)]
    [InlineData("thin-kerf", 0.094, false)]
    [InlineData("thick-kerf", 0.125, true)]
    [InlineData("thick-kerf", 0.1248, false)]
    [InlineData("guards-on", 0.001, true)]
    [InlineData("guards-on", 0, false)]
    [InlineData("eyes-and-ears", 0.001, true)]
    [InlineData("eyes-and-ears", 0, false)]
    public void A_blade_brings_its_cautions(string id, double kerf, bool raised) =>
        Assert.Equal(raised, RaisedBy(At(8, 24, 24) with { Kerf = Inches((decimal)kerf) }).Contains(id));

    [Theory]
    [InlineData("dust-hardboard", "tempered hardboard", true)]
    [InlineData("dust-hardboard", "hard board", false)]
    [InlineData("dust-mdf", "MDF", true)]
    [InlineData("dust-mdf", "HDF", false)]
    [InlineData("dust-plywood", "birch plywood", true)]
    [InlineData("dust-plywood", "birch", false)]
    [InlineData("dust", null, true)]
    [InlineData("dust", "mdf", false)]
    public void Dust_is_warned_of_by_material(string id, string? kind, bool raised) =>
        Assert.Equal(raised, RaisedBy(At(8, 24, 24) with { Kind = kind }).Contains(id));

    [Theory]
    [InlineData("narrow-rip", 5, 24, 36, "Here: 5 in.")]
    [InlineData("short-along-fence", 8, 24, 11.5, "Here: 11 1/2 in.")]
    [InlineData("wider-than-long", 8, 30, 24, "Here: 30 × 24 in.")]
    [InlineData("large-sheet", 8, 96, 48, "Here: 96 × 48 in.")]
    [InlineData("far-fence", 95.75, 96, 48, "Here: 95 3/4 in.")]
    [InlineData("small-part-free", 8, 12.125, 5, "Here: 4 × 5 in.")]
    public void A_caution_ends_with_the_measures_that_raise_it(string id, double fence, double across, double along, string end)
    {
        var caution = Assert.Single(CautionBook.Raised([At((decimal)fence, (decimal)across, (decimal)along)], LengthUnit.Inch), one => one.Id == id);

        Assert.EndsWith(end, caution.Text, StringComparison.Ordinal);
        Assert.Equal(end, $"Here: {caution.Here}.");
    }

    [Fact]
    public void Measures_of_several_cuts_are_said_from_the_smallest_on_and_the_first_few_of_many()
    {
        var two = CautionBook.Raised([At(5, 24, 36), At(3, 24, 36), At(5, 30, 40)], LengthUnit.Millimetre);
        var many = CautionBook.Raised([At(5, 24, 36), At(3, 24, 36), At(4, 24, 36), At(2, 24, 36)], LengthUnit.Inch);

        Assert.Equal("76.2 mm, 127 mm", two.Single(one => one.Id == "narrow-rip").Here);
        Assert.Equal("2 in, 3 in, 4 in …", many.Single(one => one.Id == "narrow-rip").Here);
        Assert.Null(two.Single(one => one.Id == "push-stick").Here);
    }

    [Fact]
    public void A_fence_set_far_is_warned_of_where_the_order_does_not_say_how_far_it_goes()
    {
        var order = OrderOf(Line("A", 30, 47, 2)) with { Boards = [Hardboard with { Thickness = Inches(0.1875m), Width = Inches(48), Height = Inches(96) }] };

        var run = Planned(order).SawRun;
        var known = Planned(order with { Saw = order.Saw with { FenceReach = Inches(96) } }).SawRun;

        Assert.NotEmpty(Far(run));
        Assert.Equal(Far(run), run.Where(step => step.Cautions.Any(caution => caution.Id == "far-fence")).Select(step => step.Step));
        Assert.NotEmpty(Far(known));
        Assert.DoesNotContain(known.SelectMany(step => step.Cautions), caution => caution.Id == "far-fence");

        static IEnumerable<int> Far(IEnumerable<SawStep> steps) =>
            steps.Where(step => step.Tool == SawTool.Fence && step.Fence > Inches(24)).Select(step => step.Step);
    }

    [Fact]
    public void A_caution_for_the_whole_run_is_said_once_before_the_first_cut()
    {
        var run = Planned(OrderOf(Line("A", 8, 10, 12), Line("B", 5, 7, 20))).SawRun;
        var guards = run.Where(step => step.Cautions.Any(caution => caution.Id == "guards-on"));
        Assert.Equal([1], guards.Select(step => step.Step));
    }

    private static IEnumerable<string> RaisedBy(SawCutFacts cut) => CautionBook.Raised([cut], LengthUnit.Inch).Select(caution => caution.Id);

    private static SawCutFacts At(decimal fence, decimal across, decimal along) => new(
        new SheetCut(1, default, default, Inches(across), Inches(along), Axis.X, Inches(fence), IsTrim: false),
        SawTool.Fence,
        Inches(fence),
        Inches(0.125m),
        Kind: null);

    private static IEnumerable<string> Raised(double fence, double across, double along, bool isTrim)
    {
        var facts = At((decimal)fence, (decimal)across, (decimal)along);
        return RaisedBy(facts with { Cut = facts.Cut with { IsTrim = isTrim } });
    }
}
