using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Yields;

/// <summary>Full sheets as a plan, so that they can be drawn as a plan's sheets are.</summary>
internal static class YieldPlan
{
    public static Plan Of(Order order, ImmutableArray<SheetLayout> sheets) => new()
    {
        Order = order,
        Panels = [new PanelResult(order.Panels[0], false, order.Panels[0].Width, order.Panels[0].Height, sheets.Sum(s => s.Pieces.Length), 0, [])],
        Proof = new Proof(Money.Zero, Money.Zero),
        BoardProof = new Proof(Money.Zero, Money.Zero),
        ClothProof = new Proof(Money.Zero, Money.Zero),
        Sheets = sheets,
        SawRun = [],
        SawProof = new SawProof(0, 0, 0),
        Cloth = [],
        Liquids = [],
        Buy = [],
        Cost = new Tally
        {
            Cash = Money.Zero,
            OnHandUsed = Money.Zero,
            Used = Money.Zero,
            BackOnRack = Money.Zero,
            Lines = [],
            Waste = new WasteTally(Area.Zero, Area.Zero, Area.Zero, Area.Zero, Money.Zero, Money.Zero),
        },
        Warnings = [],
    };
}
