using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>Rule 1: replaying the cuts leaves exactly pieces and offcuts; areas add up to the sheet.</summary>
internal static class GeometryRule
{
    public static IEnumerable<Violation> Check(OrderFacts order, PlanFacts plan)
    {
        var findings = new Findings(Rule.Geometry);
        findings.Expect(
            plan.Sheets.Select(sheet => sheet.Number).SequenceEqual(Enumerable.Range(1, plan.Sheets.Count)), "sheets", $"are not numbered 1 to {plan.Sheets.Count}");
        foreach (var sheet in plan.Sheets)
        {
            CheckLeft(sheet, findings);
            CheckAreas(order, sheet, findings);
            CheckTrim(order, sheet, findings);
            foreach (var offcut in sheet.Offcuts)
            {
                CheckKept(order, sheet, offcut, findings);
            }
        }

        return findings.All;
    }

    private static void CheckLeft(SheetFacts sheet, Findings findings)
    {
        var left = CutReplay.Of(sheet, findings).Left.ToHashSet();
        foreach (var box in sheet.Pieces.Select(piece => piece.Box).Concat(sheet.Offcuts.Select(offcut => offcut.Box)))
        {
            findings.Expect(left.Remove(box), sheet.Where, $"{box} is not what the cuts leave");
        }

        foreach (var box in left)
        {
            findings.Expect(false, sheet.Where, $"the cuts leave {box}, which is neither piece nor offcut");
        }
    }

    private static void CheckAreas(OrderFacts order, SheetFacts sheet, Findings findings)
    {
        var told = sheet.Pieces.Select(piece => piece.Box.Area)
            .Concat(sheet.Offcuts.Where(offcut => offcut.Kept).Select(offcut => offcut.Box.Area))
            .Aggregate((Int128)0, (a, b) => a + b);
        decimal rest = (decimal)(sheet.Box.Area - told) / order.Units.SquareStepsPerArea;
        findings.Expect(
            Math.Abs(rest - sheet.Waste) <= 0.0001m, sheet.Where, $"kerf, trim and scrap are {sheet.Waste}, but {rest} is neither piece nor kept");
    }

    private static void CheckTrim(OrderFacts order, SheetFacts sheet, Findings findings)
    {
        if (!order.Boards.TryGetValue(sheet.Board, out var board))
        {
            return;
        }

        long trim = board.EdgeTrim;
        var good = new Box(trim, trim, sheet.Box.Width - (2 * trim), sheet.Box.Height - (2 * trim));
        foreach (var piece in sheet.Pieces)
        {
            findings.Expect(piece.Box.IsInside(good), sheet.Where, $"piece {piece.Mark} {piece.Box} lies in the edge trim");
        }
    }

    private static void CheckKept(OrderFacts order, SheetFacts sheet, OffcutFacts offcut, Findings findings)
    {
        bool large = offcut.Box.Holds(order.SmallestKept.A, order.SmallestKept.B);
        findings.Expect(
            large == offcut.Kept, sheet.Where, $"offcut {offcut.Box} is {(offcut.Kept ? "kept though too small" : "thrown away though large enough")}");
    }
}
