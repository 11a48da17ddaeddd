using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.SawRun;

/// <summary>A leftover is as large as the cuts for the panels let it be: no cut parts waste from it.</summary>
public sealed class LeftoverTests
{
    private static readonly BoardSupply _thick = Hardboard with { Thickness = Inches(0.1875m) };

    public static TheoryData<int> Starts() => [.. Enumerable.Range(0, 4).Select(i => i * 20)];

    [Fact]
    public void Plan_of_three_panels_takes_no_setting_to_make_a_leftover_smaller()
    {
        var plan = Planned(OrderOf(Line("A", 11, 16, 3)) with { Boards = [_thick], Effort = Effort.Steady });

        Assert.Equal((2, 5L, true), (plan.SawProof.Settings, plan.SawProof.Cuts, plan.SawProof.CutsProven));
        Assert.DoesNotContain(plan.SawRun.SelectMany(step => step.Cautions), caution => caution.Id == "narrow-rip");
        var kept = Assert.Single(plan.Sheets).Offcuts.Where(offcut => offcut.Kept).Select(offcut => (offcut.Width, offcut.Height));
        Assert.Equal([(Inches(7.875m), Inches(11)), (Inches(24), Inches(20.75m))], kept.Order());
    }

    [Theory]
    [InlineData(3)]
    [InlineData(3.2)]
    public void Plan_in_millimetres_takes_no_setting_to_make_a_leftover_smaller(double kerf) => AssertCutsForPanelsOnly(Planned(OrderOf(
        Metric("A", 217, 313, 7), Metric("B", 123.4m, 456.7m, 5), Metric("C", 611, 299, 2)) with
    {
        Units = LengthUnit.Millimetre,
        Effort = Effort.Steady,
        Saw = new SawSettings { Kerf = Millimetres((decimal)kerf) },
        Boards = [_thick with { Width = Millimetres(607), Height = Millimetres(1220) }],
    }));

    [Theory]
    [MemberData(nameof(Starts))]
    public void Plan_cuts_no_workpiece_that_holds_no_panel(int start)
    {
        for (int seed = start; seed < start + 20; seed++)
        {
            AssertCutsForPanelsOnly(Planned(Small(seed)));
        }
    }

    /// <summary>Every workpiece that is cut holds a panel: else the cut would be there for a leftover alone.</summary>
    private static void AssertCutsForPanelsOnly(Plan plan)
    {
        var idle = from sheet in plan.Sheets
                   from cut in sheet.Cuts
                   where !sheet.Pieces.Any(piece => IsIn(piece, cut))
                   select (sheet.Number, cut);
        Assert.Empty(idle);
    }

    private static bool IsIn(PlacedPanel piece, SheetCut cut) =>
        piece.X >= cut.X && piece.Y >= cut.Y && piece.X + piece.Width <= cut.X + cut.Width && piece.Y + piece.Height <= cut.Y + cut.Height;

    private static Order Small(int seed)
    {
        var random = new Random(seed);
        var lines = Enumerable.Range(0, random.Next(1, 4)).Select(i => Metric(
            ((char)('A' + i)).ToString(), random.Next(80, 500), random.Next(80, 600) + 0.5m, random.Next(1, 8)));
        var saw = new SawSettings { EdgeTrim = random.Next(4) == 0 ? Millimetres(5) : Length.Zero, FenceReach = random.Next(4) == 0 ? Millimetres(700) : null };
        return OrderOf([.. lines]) with { Units = LengthUnit.Millimetre, Saw = saw, Boards = [_thick with { Width = Millimetres(607), Height = Millimetres(1220) }] };
    }

    private static PanelLine Metric(string mark, decimal width, decimal height, int quantity) =>
        Line(mark, 1, 1, quantity) with { Width = Millimetres(width), Height = Millimetres(height) };

    private static Length Millimetres(decimal millimetres) => Length.FromMillimetres(millimetres);
}
