using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>Rule 4 for cloth: remnants, rolls and lengths in whole steps.</summary>
internal static class ClothSupply
{
    public static IEnumerable<Violation> Check(OrderFacts order, PlanFacts plan)
    {
        var findings = new Findings(Rule.Supply);
        foreach (var layout in plan.Cloth)
        {
            CheckLayout(order, layout, findings);
        }

        foreach (var cloth in order.Cloths.Values)
        {
            CheckCloth(cloth, plan, findings);
        }

        return findings.All;
    }

    private static void CheckLayout(OrderFacts order, ClothLayoutFacts layout, Findings findings)
    {
        findings.Expect(layout.Copies >= 1, layout.Where, $"{layout.Copies} copies");
        if (!order.Cloths.TryGetValue(layout.Cloth, out var cloth))
        {
            findings.Expect(false, layout.Where, $"cloth {layout.Cloth} is not in the order");
            return;
        }

        foreach (var line in layout.Pieces.Select(piece => order.Line(piece.Mark)).OfType<LineFacts>().Distinct())
        {
            findings.Expect(line.Cloth is null || line.Cloth == cloth.Kind, layout.Where, $"cloth {cloth.Id} is not the kind {line.Mark} asks for");
        }

        findings.Expect(layout.OnHand == (layout.Remnant is not null), layout.Where, $"on hand means a remnant, bought means none");
        if (layout.Remnant is { } id)
        {
            findings.Expect(
                cloth.Remnants.TryGetValue(id, out var remnant) && remnant.Width == layout.Box.Width && remnant.Length == layout.Box.Height,
                layout.Where,
                $"does not measure as remnant {id} does");
        }
        else
        {
            findings.Expect(cloth.Sale is not null, layout.Where, $"cloth {cloth.Id} is not for sale");
            findings.Expect(layout.Box.Width == cloth.Width, layout.Where, $"is not as wide as its cloth");
            bool whole = cloth.Sale is { } sale && (sale.ByRoll ? layout.Box.Height == sale.Length : layout.Box.Height % sale.Length == 0);
            findings.Expect(whole, layout.Where, $"length {layout.Box.Height} steps is not one that is sold");
        }
    }

    private static void CheckCloth(ClothFacts cloth, PlanFacts plan, Findings findings)
    {
        string where = $"cloth {cloth.Id}";
        var layouts = plan.Cloth.Where(layout => layout.Cloth == cloth.Id).ToArray();
        foreach (var remnant in cloth.Remnants.Values)
        {
            long used = layouts.Where(layout => layout.Remnant == remnant.Id).Sum(layout => layout.Copies);
            findings.Expect(used <= remnant.Quantity, where, $"remnant {remnant.Id} used {used} times of {remnant.Quantity}");
        }

        if (cloth.Sale is not { } sale)
        {
            return;
        }

        long bought = layouts.Where(layout => !layout.OnHand)
            .Sum(layout => layout.Copies * (sale.ByRoll ? 1 : layout.Box.Height / sale.Length));
        long listed = plan.Listed(cloth.Id, sale.Unit);
        findings.Expect(listed <= (sale.Limit ?? long.MaxValue), where, $"{listed} bought of {sale.Limit} for sale");
        findings.Expect(listed == bought + plan.Beyond(cloth.Id, sale.Unit), where, $"{listed} on the shopping list for {bought} cut up");
    }
}
