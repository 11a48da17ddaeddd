using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>Rule 3: a piece measures its line's cut size, turned or not; nominal less undersize at least.</summary>
internal static class SizeRule
{
    public static IEnumerable<Violation> Check(OrderFacts order, PlanFacts plan)
    {
        var findings = new Findings(Rule.Size);
        foreach (var panel in plan.Panels)
        {
            if (order.Line(panel.Mark) is { } line)
            {
                CheckLine(order, line, panel, findings);
            }
        }

        foreach (var sheet in plan.Sheets)
        {
            foreach (var piece in sheet.Pieces)
            {
                CheckPiece(order, plan, sheet, piece, findings);
            }
        }

        return findings.All;
    }

    private static void CheckLine(OrderFacts order, LineFacts line, PanelFacts panel, Findings findings)
    {
        string where = $"line {panel.Mark}";
        long less = line.IsWish ? 0 : order.Undersize;
        findings.Expect(panel.Width == line.Width && panel.Height == line.Height, where, $"its nominal size is not the order's");
        findings.Expect(
            panel.CutWidth >= line.Width - less && panel.CutWidth <= line.Width, where, $"cut width {panel.CutWidth} steps outside [{line.Width - less}, {line.Width}]");
        findings.Expect(
            panel.CutHeight >= line.Height - less && panel.CutHeight <= line.Height, where, $"cut height {panel.CutHeight} steps outside [{line.Height - less}, {line.Height}]");
    }

    private static void CheckPiece(OrderFacts order, PlanFacts plan, SheetFacts sheet, PieceFacts piece, Findings findings)
    {
        if (plan.Panel(piece.Mark) is not { } panel || order.Line(piece.Mark) is not { } line)
        {
            return;
        }

        var (width, height) = piece.Turned ? (panel.CutHeight, panel.CutWidth) : (panel.CutWidth, panel.CutHeight);
        findings.Expect(
            piece.Box.Width == width && piece.Box.Height == height, sheet.Where, $"piece {piece.Mark} {piece.Box} does not measure {width} x {height} steps");
        bool grain = order.Boards.TryGetValue(sheet.Board, out var board) && board.HasGrain;
        findings.Expect(!piece.Turned || (line.MayTurn && !grain), sheet.Where, $"piece {piece.Mark} is turned and may not be");
    }
}
