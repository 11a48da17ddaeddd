using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;
using PanelService.Planning.SawRun.Graph;

namespace PanelService.Planning.SawRun;

/// <summary>Reads what must come out of a sheet from its layout.</summary>
internal static class SheetReading
{
    /// <summary>The shape of a part of a sheet, with its ways of cutting added to a graph.</summary>
    /// <param name="graph">The graph.</param>
    /// <param name="sheet">The layout.</param>
    /// <param name="part">The part.</param>
    /// <param name="all">Whether waste must come out as it does, too, or joined to what lies beside it.</param>
    public static CutShape Into(CutGraph graph, SheetLayout sheet, SheetPart part, bool all)
    {
        long kerf = sheet.Kerf.Steps;
        var whole = part.At with { Width = part.At.Width + kerf, Height = part.At.Height + kerf };
        var panels = sheet.Pieces.Select(piece => (piece.X.Steps, piece.Y.Steps, piece.Width.Steps + kerf, piece.Height.Steps + kerf)).ToHashSet();
        NeededPart PartOf(Rectangle at) => panels.Contains((at.X, at.Y, at.Width, at.Height)) ? NeededPart.Panel(at) : NeededPart.Leftover(at);
        if (part.Cuts.IsEmpty)
        {
            return graph.Of(whole.Width, whole.Height, [PartOf(whole)]);
        }

        var edges = sheet.EdgeTrim.Steps == 0 ? SheetEdges.None : part.Factory;
        var good = Trimmed(whole, edges, sheet.EdgeTrim.Steps);
        var kept = sheet.Offcuts.Where(offcut => offcut.Kept).Select(offcut => (offcut.X.Steps, offcut.Y.Steps)).ToHashSet();
        NeededPart[] needed = [.. Parts(sheet, part)
            .Where(one => IsIn(one, good))
            .Select(PartOf)
            .Where(one => all || one.Panels > 0 || (one.Width > kerf && one.Height > kerf && kept.Contains((one.X, one.Y))))];
        var inner = graph.Of(good.Width, good.Height, needed);
        if (graph.IsFarBeyond && graph.Rules.FenceReach < Math.Max(good.Width, good.Height))
        {
            graph.Follow(good, needed, part.Cuts.ToDictionary(cut => WorkpieceOf(cut, kerf), cut => (cut.Axis, cut.At.Steps + kerf)));
        }

        return graph.Trimmed(whole.Width, whole.Height, (edges, sheet.EdgeTrim.Steps), inner);
    }

    private static Rectangle Trimmed(Rectangle whole, SheetEdges edges, long trim)
    {
        long left = edges.HasFlag(SheetEdges.Left) ? trim : 0;
        long bottom = edges.HasFlag(SheetEdges.Bottom) ? trim : 0;
        return new Rectangle(
            whole.X + left,
            whole.Y + bottom,
            whole.Width - left - (edges.HasFlag(SheetEdges.Right) ? trim : 0),
            whole.Height - bottom - (edges.HasFlag(SheetEdges.Top) ? trim : 0));
    }

    private static bool IsIn(Rectangle part, Rectangle whole) =>
        part.X >= whole.X && part.Y >= whole.Y
        && part.X + part.Width <= whole.X + whole.Width && part.Y + part.Height <= whole.Y + whole.Height;

    private static Rectangle WorkpieceOf(SheetCut cut, long kerf) =>
        new(cut.X.Steps, cut.Y.Steps, cut.Width.Steps + kerf, cut.Height.Steps + kerf);

    /// <summary>Everything the cuts leave of a part, grown by one kerf, dust included: together all of it.</summary>
    private static List<Rectangle> Parts(SheetLayout sheet, SheetPart part)
    {
        long kerf = sheet.Kerf.Steps;
        var parts = new List<Rectangle> { part.At with { Width = part.At.Width + kerf, Height = part.At.Height + kerf } };
        foreach (var cut in part.Cuts)
        {
            var workpiece = WorkpieceOf(cut, kerf);
            if (!parts.Remove(workpiece))
            {
                throw new InvalidOperationException($"Cut {cut.Number} of sheet {sheet.Number} has no workpiece.");
            }

            var (near, far) = CutGraph.Parted(workpiece, cut.Axis, cut.At.Steps + kerf);
            parts.Add(near);
            parts.Add(far);
        }

        return parts;
    }
}
