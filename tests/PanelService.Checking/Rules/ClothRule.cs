using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>Rule 7: cloth pieces with their margins, inside the selvedges, apart, and partable by straight cuts.</summary>
internal static class ClothRule
{
    public static IEnumerable<Violation> Check(OrderFacts order, PlanFacts plan)
    {
        var findings = new Findings(Rule.Cloth);
        findings.Expect(
            plan.Cloth.Select(layout => layout.Number).SequenceEqual(Enumerable.Range(1, plan.Cloth.Count)), "cloth", $"is not numbered 1 to {plan.Cloth.Count}");
        foreach (var layout in plan.Cloth)
        {
            foreach (var piece in layout.Pieces)
            {
                CheckPiece(order, plan, layout, piece, findings);
            }

            CheckApart(layout, findings);
            foreach (var offcut in layout.Offcuts)
            {
                bool large = offcut.Box.Holds(order.SmallestCloth.A, order.SmallestCloth.B);
                findings.Expect(offcut.Box.IsInside(layout.Box), layout.Where, $"offcut {offcut.Box} lies outside the cloth");
                findings.Expect(large == offcut.Kept, layout.Where, $"offcut {offcut.Box} is {(offcut.Kept ? "kept though too small" : "thrown away though large enough")}");
            }
        }

        return findings.All;
    }

    private static void CheckPiece(OrderFacts order, PlanFacts plan, ClothLayoutFacts layout, PieceFacts piece, Findings findings)
    {
        if (plan.Panel(piece.Mark) is not { } panel || !order.Cloths.TryGetValue(layout.Cloth, out var cloth))
        {
            return;
        }

        long width = Allowed(panel.CutWidth + order.Margins.Across, order.Shrinkage.Across);
        long height = Allowed(panel.CutHeight + order.Margins.Along, order.Shrinkage.Along);
        bool measures = piece.Turned
            ? piece.Box.Width == height && piece.Box.Height == width
            : piece.Box.Width == width && piece.Box.Height == height;
        findings.Expect(measures, layout.Where, $"piece {piece.Mark} {piece.Box} does not measure cut size and two margins, {width} x {height} steps");
        findings.Expect(!(piece.Turned && cloth.WarpBinds), layout.Where, $"piece {piece.Mark} lies across the warp");
        long selvedge = layout.Remnant is null ? cloth.Selvedge : 0;
        var usable = layout.Box with { X = selvedge, Width = layout.Box.Width - (2 * selvedge) };
        findings.Expect(piece.Box.IsInside(usable), layout.Where, $"piece {piece.Mark} {piece.Box} lies outside what is usable, {usable}");
    }

    private static long Allowed(long length, decimal percent) =>
        (long)Math.Round(length * (100 + percent) / 100, MidpointRounding.AwayFromZero);

    private static void CheckApart(ClothLayoutFacts layout, Findings findings)
    {
        Box[] pieces = [.. layout.Pieces.Select(piece => piece.Box)];
        Box[] all = [.. pieces, .. layout.Offcuts.Select(offcut => offcut.Box)];
        foreach (var (one, other) in Overlaps(all))
        {
            findings.Expect(false, layout.Where, $"{one} and {other} overlap");
        }

        findings.Expect(Partable.ByStraightCuts(pieces), layout.Where, $"no straight cuts from edge to edge part its pieces");
    }

    private static IEnumerable<(Box One, Box Other)> Overlaps(Box[] boxes)
    {
        Box[] sorted = [.. boxes.OrderBy(box => box.Y)];
        for (int i = 0; i < sorted.Length; i++)
        {
            for (int j = i + 1; j < sorted.Length && sorted[j].Y < sorted[i].Top; j++)
            {
                if (sorted[i].Overlaps(sorted[j]))
                {
                    yield return (sorted[i], sorted[j]);
                }
            }
        }
    }
}
