using PanelService.Checking.Bounds;
using PanelService.Cutting;
using PanelService.Planning.Cloth;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Prices;
using PanelService.Planning.Sizes;

namespace PanelService.Benchmarks.Running;

/// <summary>Hands the cloth of an order and its proof to the checker that shares nothing with the engine.</summary>
public static class ClothAudit
{
    /// <summary>
    /// Checks the bound of an order of cloth alone. The engine runs once more for what its bound rests on; where that is
    /// another bound than the plan printed, nothing is checked.
    /// </summary>
    /// <param name="order">The order, up to 400 pieces.</param>
    /// <param name="proof">What its plan says of the cloth.</param>
    public static BoundVerdict Check(Order order, Proof proof)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(proof);
        var request = new CutRequest([.. order.Panels.Select(line => line.Quantity)], CutSizes.Nominal(order), Ready: []);
        var reach = ClothReach.For(order, request);
        var shelves = ShelfPlanner.Plans(order, ClothPieces.Of(order, request)).Select(plan => ClothPrices.InRun(order, plan).Minor);
        var problem = new LengthTask(order, request, reach).Problem;
        var result = LengthPlanner.Plan(problem, order.Effort, shelves.DefaultIfEmpty(long.MaxValue).Min());
        return result.LeastPossible == proof.LeastPossible.Minor
            ? LengthChecker.Check(LengthAudit.CaseOf(problem, proof.Spent.Minor, result.LeastPossible), LengthAudit.StatedOf(result.Proof))
            : BoundVerdict.NotRechecked($"the plan's bound {proof.LeastPossible.Minor} is not the engine's {result.LeastPossible}");
    }
}
