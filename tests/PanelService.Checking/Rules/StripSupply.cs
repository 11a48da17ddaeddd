using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>
/// Rule 4 for the strips of cradles: pieces lie one kerf apart on strips there are, what is cut is two rails and the bars
/// told for every cradled panel made, and the shopping list has what is bought. Where the order asks to brace, no panel that
/// sags too much is without a cradle, unless none fits on it.
/// </summary>
internal static class StripSupply
{
    public static IEnumerable<Violation> Check(OrderFacts order, PlanFacts plan)
    {
        var findings = new Findings(Rule.Supply);
        foreach (var strip in plan.Strips)
        {
            CheckLayout(order, strip, findings);
        }

        foreach (var good in order.Strips.Values)
        {
            CheckGood(good, plan, findings);
        }

        if (order.Strips.Count > 0)
        {
            foreach (var line in order.Lines.Where(line => !line.IsWish))
            {
                CheckCradle(order, plan, line, findings);
            }
        }

        return findings.All;
    }

    private static void CheckLayout(OrderFacts order, StripFacts strip, Findings findings)
    {
        if (!order.Strips.TryGetValue(strip.Strip, out var good))
        {
            findings.Expect(false, strip.Where, $"strip {strip.Strip} is not in the order");
            return;
        }

        findings.Expect(strip.Copies >= 1 && strip.Length == good.Length, strip.Where, $"{strip.Copies} copies, {strip.Length} steps long");
        long at = 0;
        foreach (var piece in strip.Pieces)
        {
            findings.Expect(piece.At == at && piece.At + piece.Length <= strip.Length, strip.Where, $"piece of {piece.Mark} at {piece.At} instead of {at}");
            at = piece.At + piece.Length + order.Kerf;
        }

        findings.Expect(strip.Rest == Math.Max(0, strip.Length - at), strip.Where, $"{strip.Rest} left");
        findings.Expect(strip.Kept == (strip.Rest >= order.Cradles.SmallestKept), strip.Where, $"a rest of {strip.Rest} is kept: {strip.Kept}");
    }

    private static void CheckGood(StripGoodFacts good, PlanFacts plan, Findings findings)
    {
        string where = $"strip {good.Id}";
        long onHand = plan.Strips.Where(strip => strip.Strip == good.Id && strip.OnHand).Sum(strip => strip.Copies);
        long bought = plan.Strips.Where(strip => strip.Strip == good.Id && !strip.OnHand).Sum(strip => strip.Copies);
        long listed = plan.Buy.Where(buy => buy.SaleUnit == "strip" && buy.Id == good.Id).Sum(buy => buy.Quantity);
        findings.Expect(onHand <= good.OnHand, where, $"{onHand} used of {good.OnHand} on hand");
        findings.Expect(bought <= (good.ForSale ?? (good.Price is null ? 0 : long.MaxValue)), where, $"{bought} bought of {good.ForSale} for sale");
        long beyond = plan.Beyond(good.Id, "strip");
        findings.Expect(listed == bought + beyond, where, $"{listed} on the shopping list for {bought} cut and {beyond} beyond");
        findings.Expect(listed <= (good.ForSale ?? long.MaxValue), where, $"{listed} on the shopping list of {good.ForSale} for sale");
    }

    private static void CheckCradle(OrderFacts order, PlanFacts plan, LineFacts line, Findings findings)
    {
        var cut = plan.Strips.SelectMany(strip => strip.Pieces.Where(piece => piece.Mark == line.Mark).Select(piece => (piece.Length, strip.Copies))).ToArray();
        long made = plan.Panel(line.Mark)?.Made ?? 0;
        long longer = Math.Max(line.Width, line.Height) - order.Undersize, shorter = Math.Min(line.Width, line.Height) - order.Undersize;
        long rail = longer - (2 * order.Cradles.Inset), bar = shorter - (2 * order.Cradles.Inset) - (2 * order.Cradles.Width);
        bool braces = order.Cradles.Brace && line.MayBrace;
        if (!(line.Cradle || (braces && plan.Bars.ContainsKey(line.Mark))) || made == 0 || bar <= 0)
        {
            findings.Expect(!braces || bar <= 0 || !plan.Weak.Contains(line.Mark), $"line {line.Mark}", $"it sags too much and is not braced, though the order asks for that");
            findings.Expect(cut.Length == 0, $"line {line.Mark}", $"strips are cut for it, but it has no cradle");
            return;
        }

        int bars = plan.Bars.GetValueOrDefault(line.Mark);
        findings.Expect(bars >= 2, $"line {line.Mark}", $"a cradle of {bars} bars");
        findings.Expect(cut.All(piece => piece.Length == rail || piece.Length == bar), $"line {line.Mark}", $"strips that are neither rail {rail} nor bar {bar}");
        findings.Expect(cut.Sum(piece => piece.Copies) == (2 + bars) * made, $"line {line.Mark}", $"{cut.Sum(piece => piece.Copies)} strips for {made} cradles of 2 rails and {bars} bars");
        findings.Expect(
            rail == bar || cut.Where(piece => piece.Length == rail).Sum(piece => piece.Copies) == 2 * made, $"line {line.Mark}", $"not two rails for each of {made} cradles");
    }
}
