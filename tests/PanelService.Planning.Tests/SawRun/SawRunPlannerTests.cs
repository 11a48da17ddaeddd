using CsCheck;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.SawRun;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.SawRun;

public sealed class SawRunPlannerTests
{
    private static readonly Gen<Plan> _plans = Gen.Select(Gen.Int[3, 22], Gen.Int[3, 30], Gen.Int[1, 9]).Array[1, 5]
        .Select(sizes => Planned(OrderOf([.. sizes.Select((s, i) => Line(((char)('A' + i)).ToString(), s.Item1, s.Item2, s.Item3))]) with
        {
            Boards = [Hardboard with { Thickness = Inches(0.1875m), EdgeTrim = Inches(0.25m) }],
        }));

    [Fact]
    public void Plan_makes_every_cut_exactly_once() => _plans.Sample(
        plan =>
        {
            var passes = plan.SawRun.SelectMany(step => step.Passes).ToList();
            var cuts = plan.Sheets.SelectMany(sheet => sheet.Cuts.Select(cut => (sheet.Number, cut.Number)));
            Assert.Equal(cuts.Order(), passes.Select(pass => (pass.Sheet, pass.Cut)).Order());
        },
        iter: 30);

    [Fact]
    public void Plan_never_cuts_a_workpiece_before_it_exists() => _plans.Sample(
        plan =>
        {
            var there = plan.Sheets.Select(sheet => (sheet.Number, Length.Zero, Length.Zero, sheet.Board.Width, sheet.Board.Height)).ToHashSet();
            foreach (var (sheet, cut, _) in Passes(plan))
            {
                Assert.True(there.Remove((sheet.Number, cut.X, cut.Y, cut.Width, cut.Height)));
                there.UnionWith(Parts(sheet, cut));
            }
        },
        iter: 30);

    [Fact]
    public void Plan_sets_the_fence_to_a_part_the_cut_leaves() => _plans.Sample(
        plan => Assert.All(Passes(plan), pass => Assert.Contains(pass.Step.Fence, Sides(pass.Sheet, pass.Cut))),
        iter: 30);

    [Fact]
    public void Plan_sends_a_short_workpiece_over_the_sled() => _plans.Sample(
        plan => Assert.All(Passes(plan), pass => Assert.Equal(
            (pass.Cut.Axis == Axis.X ? pass.Cut.Height : pass.Cut.Width) < Inches(10) ? SawTool.Sled : SawTool.Fence, pass.Step.Tool)),
        iter: 30);

    [Fact]
    public void Plan_ends_with_the_manual_and_an_experienced_person() =>
        Assert.Equal("manual-first", Planned(OrderOf(Line("A", 8, 10, 4))).SawRun[^1].Cautions[^1].Id);

    [Fact]
    public void Plan_of_a_panel_as_large_as_the_sheet_needs_no_saw() =>
        Assert.Empty(Planned(OrderOf(Line("A", 24, 48, 2)) with { Boards = [Hardboard with { Thickness = Inches(0.1875m) }] }).SawRun);

    private static IEnumerable<(SheetLayout Sheet, SheetCut Cut, SawStep Step)> Passes(Plan plan) =>
        from step in plan.SawRun
        from pass in step.Passes
        let sheet = plan.Sheets[pass.Sheet - 1]
        select (sheet, sheet.Cuts[pass.Cut - 1], step);

    private static List<Length> Sides(SheetLayout sheet, SheetCut cut) => cut.Axis == Axis.X
        ? [cut.At - cut.X, cut.X + cut.Width - cut.At - sheet.Kerf]
        : [cut.At - cut.Y, cut.Y + cut.Height - cut.At - sheet.Kerf];

    private static IEnumerable<(int, Length, Length, Length, Length)> Parts(SheetLayout sheet, SheetCut cut)
    {
        var sides = Sides(sheet, cut);
        return cut.Axis == Axis.X
            ? [(sheet.Number, cut.X, cut.Y, sides[0], cut.Height), (sheet.Number, cut.At + sheet.Kerf, cut.Y, sides[1], cut.Height)]
            : [(sheet.Number, cut.X, cut.Y, cut.Width, sides[0]), (sheet.Number, cut.X, cut.At + sheet.Kerf, cut.Width, sides[1])];
    }
}
