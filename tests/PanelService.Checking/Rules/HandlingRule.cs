using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>
/// Rule 6 under limits: nothing between fence and blade is wider than the fence reaches; what leaves the supplier's fits the
/// car; what comes to the saw is no larger and no heavier than one person handles; the supplier cuts only what has to be cut there.
/// </summary>
internal static class HandlingRule
{
    // kg/m³: AS/NZS 1859 data for a tested hardboard; manufacturers' figures for thin MDF and birch plywood, the heavier end.
    private const decimal Hardboard = 1000;
    private const decimal Mdf = 880;
    private const decimal Plywood = 670;

    public static IEnumerable<Violation> Check(OrderFacts order, PlanFacts plan)
    {
        var findings = new Findings(Rule.SawRun);
        foreach (var step in plan.SawRun)
        {
            findings.Expect(
                step.Fence <= (order.Handling.FenceReach ?? long.MaxValue), $"step {step.Step}", $"{step.Fence} is farther than the fence reaches");
        }

        foreach (var sheet in plan.Sheets)
        {
            if (order.Boards.TryGetValue(sheet.Board, out var board))
            {
                CheckSheet(order, board, sheet, findings);
            }
        }

        return findings.All;
    }

    private static void CheckSheet(OrderFacts order, BoardFacts board, SheetFacts sheet, Findings findings)
    {
        var first = sheet.Cuts.Where(cut => cut.BySupplier).ToArray();
        findings.Expect(!sheet.OnHand || first.Length == 0, sheet.Where, $"is in the studio, but the supplier cuts it");
        foreach (var cut in first)
        {
            string where = $"{sheet.Where}, cut {cut.Number}";
            findings.Expect(cut.Kerf == order.Handling.SupplierKerf, where, $"takes {cut.Kerf}, not the supplier's kerf");
            bool mayBeTrim = board.EdgeTrim > 0 && order.Handling.FenceReach is not null;
            findings.Expect(
                mayBeTrim || Fault(order.Handling, board, sheet.OnHand, cut.Workpiece) is not null, where, $"the supplier cuts {cut.Workpiece}, which could be taken home");
        }

        foreach (var part in CutReplay.Of(sheet with { Cuts = first }, new Findings(Rule.Geometry)).Left)
        {
            var fault = Fault(order.Handling, board, sheet.OnHand, part);
            findings.Expect(fault is null, sheet.Where, $"{part} comes to the saw, but {fault}");
        }
    }

    /// <summary>Why a part of a board cannot come to the saw; null: it can.</summary>
    public static string? Fault(HandlingFacts limits, BoardFacts board, bool onHand, Box part)
    {
        if (!onHand && limits.Carry is { } car && !Fits(part, car))
        {
            return "does not fit the car";
        }

        if (limits.Largest is { } largest && !Fits(part, largest))
        {
            return "is larger than one person handles";
        }

        decimal perMetre = Units.Millimetres(1000);
        decimal cubicMetres = part.Width / perMetre * (part.Height / perMetre) * (board.Thickness / perMetre);
        decimal grams = cubicMetres * Density(board.Kind) * 1000;
        return limits.HeaviestGrams is { } heaviest && grams > heaviest + 0.001m ? $"weighs {grams:0} g" : null;
    }

    private static bool Fits(Box part, (long A, long B) size) =>
        (part.Width <= size.A && part.Height <= size.B) || (part.Width <= size.B && part.Height <= size.A);

    private static decimal Density(string? kind) =>
        kind?.Contains("mdf", StringComparison.OrdinalIgnoreCase) == true ? Mdf
        : kind?.Contains("plywood", StringComparison.OrdinalIgnoreCase) == true ? Plywood
        : Hardboard;
}
