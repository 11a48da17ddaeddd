using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests;

public sealed class ProgressTests
{
    [Theory]
    [InlineData(Surface.Bare)]
    [InlineData(Surface.Cloth)]
    [InlineData(Surface.Loose)]
    public void What_is_told_on_the_way_is_of_the_whole_batch(Surface surface)
    {
        var heard = new Heard();

        var plan = Assert.IsType<Planned>(Planner.Plan(
            OrderOf(Line("A", 8, 10, 25), Line("B", 9, 12, 7) with { Surface = surface }), heard)).Plan;

        Assert.Equal(plan.Proof.Spent.Minor, heard.Told.Min(told => told.Spent?.Minor));
        Assert.All(heard.Told, told => Assert.InRange(told.LeastPossible.Minor, 0, plan.Proof.Spent.Minor));
    }

    [Fact]
    public void No_price_is_told_before_cloth_is_planned_too()
    {
        var heard = new Heard();

        var plan = Assert.IsType<Planned>(Planner.Plan(
            OrderOf(Line("A", 8, 10, 25) with { Surface = Surface.Cloth }), heard)).Plan;

        Assert.Null(heard.Told[0].Spent);
        Assert.All(heard.Told, told => Assert.True(told.Spent is not { } spent || spent >= plan.Proof.Spent));
    }
}
