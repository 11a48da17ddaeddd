using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;
using PanelService.Planning.SawRun.Graph;

namespace PanelService.Planning.SawRun;

/// <summary>Reads what must come out of a sheet from its layout.</summary>
internal static class SheetReading
{
    /// <summary>The sheet's shape, with its ways of cutting added to a graph.</summary>
    /// <param name="graph">The graph.</param>
    /// <param name="sheet">The layout.</param>
    /// <param name="all">Whether waste must come out as it does, too.</param>
    public static CutShape Into(CutGraph graph, SheetLayout sheet, bool all)
    {
        long kerf = sheet.Kerf.Steps;
        long trim = sheet.EdgeTrim.Steps;
        long width = sheet.Board.Width.Steps + kerf;
        long height = sheet.Board.Height.Steps + kerf;
        var kept = sheet.Offcuts.Where(offcut => offcut.Kept).Select(offcut => (offcut.X, offcut.Y))
            .Concat(sheet.Pieces.Select(piece => (piece.X, piece.Y))).ToHashSet();
        Rectangle[] needed = [.. Parts(sheet)
            .Where(part => part.X >= trim && part.Y >= trim
                && part.X + part.Width <= width - trim && part.Y + part.Height <= height - trim)
            .Where(part => all || (part.Width > kerf && part.Height > kerf
                && kept.Contains((Length.FromSteps(part.X), Length.FromSteps(part.Y)))))];
        return graph.Trimmed(width, height, trim, graph.Of(width - (2 * trim), height - (2 * trim), needed));
    }

    /// <summary>Everything the cuts leave, grown by one kerf, dust included: together the whole sheet.</summary>
    private static List<Rectangle> Parts(SheetLayout sheet)
    {
        long kerf = sheet.Kerf.Steps;
        var parts = new List<Rectangle> { new(0, 0, sheet.Board.Width.Steps + kerf, sheet.Board.Height.Steps + kerf) };
        foreach (var cut in sheet.Cuts.OrderBy(cut => cut.Number))
        {
            var workpiece = new Rectangle(cut.X.Steps, cut.Y.Steps, cut.Width.Steps + kerf, cut.Height.Steps + kerf);
            if (!parts.Remove(workpiece))
            {
                throw new InvalidOperationException($"Cut {cut.Number} of sheet {sheet.Number} has no workpiece.");
            }

            long end = cut.At.Steps + kerf;
            parts.AddRange(cut.Axis == Axis.X
                ? [workpiece with { Width = end - workpiece.X }, workpiece with { X = end, Width = workpiece.X + workpiece.Width - end }]
                : [workpiece with { Height = end - workpiece.Y }, workpiece with { Y = end, Height = workpiece.Y + workpiece.Height - end }]);
        }

        return parts;
    }
}
