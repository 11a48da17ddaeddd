using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>
/// Rule 8 for consumables and tools: metres of saw and of knife read off the layouts, panels off the counts; a layout's
/// cuts are borne by its pieces by area, trimming and tools by whose panels they are for.
/// </summary>
internal static class WearRule
{
    private const decimal StepsPerMetre = 320_000;
    private const decimal StepsPerFoot = 12 * 8128;

    public static IEnumerable<Violation> Check(OrderFacts order, PlanFacts plan)
    {
        var findings = new Findings(Rule.Money);
        decimal[] worn = new decimal[plan.Cost.Panels.Count];
        foreach (var one in order.Consumables)
        {
            decimal[] amounts = [.. plan.Cost.Panels.Select(line => Amount(one.Per, order, plan, line.Mark))];
            for (int i = 0; i < worn.Length; i++)
            {
                worn[i] += one.Price * amounts[i] / one.Lasts;
            }
        }

        Compare(plan, "consumables", worn, order.Consumables.Count, findings);
        CheckTools(order, plan, findings);
        return findings.All;
    }

    private static void CheckTools(OrderFacts order, PlanFacts plan, Findings findings)
    {
        long made = plan.Panels.Sum(panel => panel.Made);
        decimal all = order.Tools.Sum(tool => (decimal)tool.Price * Math.Min(made, tool.SpreadOver) / tool.SpreadOver);
        decimal[] borne = [.. plan.Cost.Panels.Select(line => made == 0 ? 0 : all * (plan.Panel(line.Mark)?.Made ?? 0) / made)];
        Compare(plan, "tools", borne, order.Tools.Count, findings);
    }

    // Each thing is rounded once in all, and once for each line.
    private static void Compare(PlanFacts plan, string part, decimal[] due, int things, Findings findings)
    {
        for (int i = 0; i < due.Length; i++)
        {
            var line = plan.Cost.Panels[i];
            findings.Expect(Math.Abs(line.Parts[part] - due[i]) <= 1.5m * things, line.Where, $"{part} {line.Parts[part]} instead of {due[i]}");
        }

        long told = plan.Cost.Panels.Sum(line => line.Parts[part]);
        findings.Expect(Math.Abs(told - due.Sum()) <= 0.51m * things, "cost", $"{part} {told} instead of {due.Sum()}");
    }

    private static decimal Amount(string per, OrderFacts order, PlanFacts plan, string mark) => per switch
    {
        "sawMetre" => Sawn(plan, mark) / StepsPerMetre,
        "sawFoot" => Sawn(plan, mark) / StepsPerFoot,
        "clothMetre" => Knifed(order, plan, mark) / StepsPerMetre,
        "clothFoot" => Knifed(order, plan, mark) / StepsPerFoot,
        _ => plan.Panel(mark)?.Made ?? 0,
    };

    private static decimal Sawn(PlanFacts plan, string mark) => plan.Sheets.Sum(sheet =>
    {
        long cut = sheet.Cuts.Where(one => !one.BySupplier).Sum(one => one.AcrossX ? one.Workpiece.Height : one.Workpiece.Width);
        return cut * sheet.Copies * ShareOf(mark, sheet.Pieces);
    });

    private static decimal Knifed(OrderFacts order, PlanFacts plan, string mark)
    {
        decimal parted = plan.Cloth.Sum(layout => Parted(order, layout) * layout.Copies * ShareOf(mark, layout.Pieces));
        return plan.Panel(mark) is { Surface: "cloth" } panel && order.Line(mark) is not { MountLater: true }
            ? parted + (2 * (panel.CutWidth + panel.CutHeight) * panel.Made)
            : parted;
    }

    // A straight cut adds its length twice to what the parts measure round about; selvedges are left on or off, not cut along.
    private static long Parted(OrderFacts order, ClothLayoutFacts layout)
    {
        long selvedge = layout.Remnant is null && order.Cloths.TryGetValue(layout.Cloth, out var cloth) ? cloth.Selvedge : 0;
        long usable = layout.Box.Width - (2 * selvedge);
        long parts = layout.Pieces.Sum(piece => piece.Box.Width + piece.Box.Height)
            + layout.Offcuts.Sum(offcut => Math.Min(offcut.Box.Width, usable) + offcut.Box.Height);
        return parts - usable - layout.Box.Height;
    }

    private static decimal ShareOf(string mark, IReadOnlyList<PieceFacts> pieces)
    {
        decimal all = (decimal)pieces.Aggregate((Int128)0, (sum, piece) => sum + piece.Box.Area);
        decimal own = (decimal)pieces.Where(piece => piece.Mark == mark).Aggregate((Int128)0, (sum, piece) => sum + piece.Box.Area);
        return all == 0 ? 0 : own / all;
    }
}
