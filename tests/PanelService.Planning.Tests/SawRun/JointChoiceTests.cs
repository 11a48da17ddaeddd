using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.SawRun;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.SawRun;

/// <summary>Other patterns of the same cost are taken where that saves settings, and never where anything is worse for it.</summary>
public sealed class JointChoiceTests
{
    // Drawn orders where the joint step saved a setting or more when they were put here.
    [Theory]
    [InlineData(48, "8x12x23 6x11x12 18x30x22")]
    [InlineData(24, "10x20x1 24x30x17 18x24x11 6x6x36")]
    public void Choice_has_fewer_settings_than_the_plan_as_found_at_the_same_cost(int width, string batch)
    {
        var order = OrderOf([.. batch.Split(' ').Select((text, i) => LineOf(text, i))]) with
        {
            Effort = Effort.Steady,
            Boards = [Hardboard with { Thickness = Inches(0.1875m), Width = Inches(width) }],
        };
        var (first, step) = Planner.SawStep(order);
        int alone = SawRunPlanner.Plan(order.Saw, first, SawEffort.Ordinary, default).Proof.Settings;

        var chosen = step();

        Assert.InRange(chosen.Proof.Settings, chosen.Proof.LeastPossible, alone - 1);
        Assert.Equal(first.Sum(sheet => sheet.Copies), chosen.Sheets.Sum(sheet => sheet.Copies));
        Assert.Equal(first.Sum(sheet => sheet.Copies * sheet.Pieces.Length), chosen.Sheets.Sum(sheet => sheet.Copies * sheet.Pieces.Length));
        Assert.True(KeptOf(chosen.Sheets).Sum >= KeptOf(first).Sum);
        Assert.True(KeptOf(chosen.Sheets).Largest >= KeptOf(first).Largest);
    }

    private static PanelLine LineOf(string text, int index)
    {
        int[] numbers = [.. text.Split('x').Select(int.Parse)];
        return Line(((char)('A' + index)).ToString(), numbers[0], numbers[1], numbers[2]);
    }

    private static (Area Sum, Area Largest) KeptOf(IEnumerable<SheetLayout> sheets) => sheets
        .SelectMany(sheet => sheet.Offcuts.Where(offcut => offcut.Kept).SelectMany(offcut => Enumerable.Repeat(offcut.Area, sheet.Copies)))
        .Aggregate((Sum: Area.Zero, Largest: Area.Zero), (kept, area) => (kept.Sum + area, area > kept.Largest ? area : kept.Largest));
}
