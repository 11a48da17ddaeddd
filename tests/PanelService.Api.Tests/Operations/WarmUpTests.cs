using PanelService.Planning;
using PanelService.Planning.Plans;
using PanelService.Work;

namespace PanelService.Api.Tests.Operations;

/// <summary>What the service plans by itself to be warm is what a painter orders: everything is made and every station is passed.</summary>
public sealed class WarmUpTests
{
    public static TheoryData<int> Rounds() => [.. Enumerable.Range(0, WarmUp.Rounds)];

    [Theory]
    [MemberData(nameof(Rounds))]
    public void Every_rounds_order_is_planned_whole(int round)
    {
        Plan plan = Assert.IsType<Planned>(Planner.Plan(WarmUp.OrderOf(round))).Plan;

        Assert.All(plan.Panels, panel => Assert.Equal(panel.Line.Quantity, panel.Made));
        Assert.NotEmpty(plan.SawRun);
        Assert.NotEmpty(plan.Cloth);
        Assert.All(plan.Liquids, liquid => Assert.NotEmpty(liquid.Bought));
    }
}
