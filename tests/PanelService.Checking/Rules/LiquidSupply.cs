using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>Rule 4 for adhesives and primers: enough is there, on hand first, the rest in containers of the order.</summary>
internal static class LiquidSupply
{
    private const decimal Rounding = 0.00001m;

    public static IEnumerable<Violation> Check(OrderFacts order, PlanFacts plan)
    {
        var findings = new Findings(Rule.Supply);
        foreach (var use in plan.Liquids)
        {
            var liquid = order.Adhesives.GetValueOrDefault(use.Id) ?? order.Primers.GetValueOrDefault(use.Id);
            findings.Expect(liquid is not null, $"liquid {use.Id}", $"is not in the order");
            if (liquid is not null)
            {
                CheckUse(liquid, use, plan, findings);
            }
        }

        CheckNeeded(order, plan, order.Adhesives, line => line.NeedsAdhesive, line => line.Adhesive, "adhesives", findings);
        CheckNeeded(order, plan, order.Primers, line => line.NeedsPrimer, line => line.Primer, "primers", findings);
        return findings.All;
    }

    private static void CheckUse(LiquidFacts liquid, LiquidUseFacts use, PlanFacts plan, Findings findings)
    {
        string where = $"liquid {use.Id}";
        decimal bought = use.Bought.Sum(one => one.Volume * one.Count);
        findings.Expect(use.FromHand <= liquid.OnHand + Rounding, where, $"{use.FromHand} from {liquid.OnHand} on hand");
        findings.Expect(
            Math.Abs(use.FromHand - Math.Min(liquid.OnHand, use.Needed)) <= Rounding, where, $"what is on hand is used first: {use.FromHand} of {liquid.OnHand}");
        findings.Expect(use.FromHand + bought >= use.Needed - Rounding, where, $"{use.FromHand + bought} for {use.Needed} needed");
        findings.Expect(
            Math.Abs(liquid.OnHand + bought - use.Needed - use.Left) <= Rounding, where, $"{use.Left} left of {liquid.OnHand} + {bought} less {use.Needed}");
        foreach (var (volume, count, price) in use.Bought)
        {
            findings.Expect(liquid.Containers.Any(one => one.Volume == volume && one.Prices.At(count) == price), where, $"no container of {volume} at {price}");
            long listed = plan.Buy.Where(buy => buy.SaleUnit == "container" && buy.Id == use.Id && buy.UnitPrice == price).Sum(buy => buy.Quantity);
            long wanted = use.Bought.Where(one => one.Price == price).Sum(one => one.Count);
            findings.Expect(listed == wanted, where, $"{listed} on the shopping list for {wanted} at {price}");
        }

        if (use.Bought.Count == 0)
        {
            findings.Expect(!plan.Buy.Any(buy => buy.SaleUnit == "container" && buy.Id == use.Id), where, $"on the shopping list, but none is bought");
        }
    }

    // Lines that name no liquid share the cheapest one; those that name one have that.
    private static void CheckNeeded(
        OrderFacts order,
        PlanFacts plan,
        IReadOnlyDictionary<string, LiquidFacts> liquids,
        Func<LineFacts, bool> needs,
        Func<LineFacts, string?> named,
        string where,
        Findings findings)
    {
        var lines = order.Lines.Where(needs).Where(line => plan.Panel(line.Mark) is { Made: > 0 }).ToArray();
        if (liquids.Count == 0 || lines.Length == 0)
        {
            return;
        }

        bool matches = liquids.Keys.Any(shared => liquids.Values.All(liquid =>
        {
            var served = lines.Where(line => (named(line) ?? shared) == liquid.Id);
            decimal needed = served.Sum(line => plan.Panel(line.Mark)!.Made * Volume(order, line, liquid));
            decimal told = plan.Liquids.FirstOrDefault(use => use.Id == liquid.Id)?.Needed ?? 0;
            return Math.Abs(needed - told) <= Rounding;
        }));
        findings.Expect(matches, where, $"what is needed is not nominal area times coats times coverage of one liquid for all lines that name none");
    }

    /// <summary>What one panel takes.</summary>
    public static decimal Volume(OrderFacts order, LineFacts line, LiquidFacts liquid) =>
        (decimal)line.Area / order.Units.SquareStepsPerArea * liquid.VolumePerArea;
}
