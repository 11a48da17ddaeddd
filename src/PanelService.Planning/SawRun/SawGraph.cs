using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun;

/// <summary>
/// All cuts of a batch with what must come first: a cut's workpiece is the whole sheet, or a part that exactly one
/// earlier cut leaves (parts only ever get smaller, so no two cuts leave the same rectangle).
/// </summary>
internal static class SawGraph
{
    /// <summary>Builds the graph.</summary>
    /// <param name="sheets">The sheets.</param>
    public static ImmutableArray<SawNode> Of(ImmutableArray<SheetLayout> sheets)
    {
        var sizes = sheets.SelectMany(sheet => sheet.Pieces).SelectMany(piece => new[] { piece.Width, piece.Height }).ToHashSet();
        var nodes = ImmutableArray.CreateBuilder<SawNode>();
        foreach (var sheet in sheets)
        {
            AddSheet(nodes, sheet, sizes);
        }

        return nodes.ToImmutable();
    }

    private static void AddSheet(ImmutableArray<SawNode>.Builder nodes, SheetLayout sheet, HashSet<Length> sizes)
    {
        int first = nodes.Count;
        var byWorkpiece = new Dictionary<(Length X, Length Y, Length Width, Length Height), int>();
        for (int i = 0; i < sheet.Cuts.Length; i++)
        {
            var cut = sheet.Cuts[i];
            byWorkpiece.Add((cut.X, cut.Y, cut.Width, cut.Height), first + i);
        }

        var left = sheet.Cuts.Select(cut => Parts(cut, sheet.Kerf)
            .Where(byWorkpiece.ContainsKey)
            .Select(part => byWorkpiece[part])
            .ToImmutableArray()).ToList();
        var later = left.SelectMany(next => next).ToHashSet();
        for (int i = 0; i < sheet.Cuts.Length; i++)
        {
            var cut = sheet.Cuts[i];
            nodes.Add(new SawNode(sheet.Number, cut, Fences(cut, sheet.Kerf, sizes), left[i], !later.Contains(first + i)));
        }
    }

    private static IEnumerable<(Length X, Length Y, Length Width, Length Height)> Parts(SheetCut cut, Length kerf)
    {
        var (near, far) = Kept(cut, kerf);
        if (cut.Axis == Axis.X)
        {
            yield return (cut.X, cut.Y, near, cut.Height);
            yield return (cut.At + kerf, cut.Y, far, cut.Height);
        }
        else
        {
            yield return (cut.X, cut.Y, cut.Width, near);
            yield return (cut.X, cut.At + kerf, cut.Width, far);
        }
    }

    private static (Length Near, Length Far) Kept(SheetCut cut, Length kerf)
    {
        var (start, extent) = cut.Axis == Axis.X ? (cut.X, cut.Width) : (cut.Y, cut.Height);
        return (cut.At - start, start + extent - cut.At - kerf);
    }

    /// <summary>
    /// A part of a panel's size belongs between fence and blade, so that panels match; else the smaller part does.
    /// The strip trimmed off a factory edge never does: it falls free.
    /// </summary>
    private static ImmutableArray<Length> Fences(SheetCut cut, Length kerf, HashSet<Length> sizes)
    {
        var (near, far) = Kept(cut, kerf);
        if (cut.IsTrim)
        {
            return [Length.Max(near, far)];
        }

        ImmutableArray<Length> sides = [.. new[] { Length.Min(near, far), Length.Max(near, far) }.Where(side => side > Length.Zero).Distinct()];
        ImmutableArray<Length> ofPanels = [.. sides.Where(sizes.Contains)];
        return ofPanels.IsEmpty ? sides : ofPanels;
    }
}
