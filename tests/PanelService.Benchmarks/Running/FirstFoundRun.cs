using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Benchmarks.Running;

/// <summary>
/// The run one would make of a plan's sheets as they come: the cuts as laid out, a part of a panel's size beside the
/// fence where there is one, and always the setting next at which most cuts are ready. What the saw step is measured against.
/// </summary>
public static class FirstFoundRun
{
    private sealed record Node(List<(SawTool Tool, Length Fence)> Settings, List<int> Next);

    /// <summary>How many distinct settings that takes.</summary>
    /// <param name="sheets">The sheets.</param>
    public static int Settings(IReadOnlyList<SheetLayout> sheets)
    {
        var sizes = sheets.SelectMany(sheet => sheet.Pieces).SelectMany(piece => new[] { piece.Width, piece.Height }).ToHashSet();
        var nodes = new List<Node>();
        var ready = new SortedSet<int>();
        foreach (var sheet in sheets)
        {
            Add(nodes, ready, sheet, sizes);
        }

        var used = new HashSet<(SawTool, Length)>();
        while (ready.Count > 0)
        {
            var setting = ready.SelectMany(node => nodes[node].Settings).GroupBy(one => one)
                .MaxBy(group => (group.Count(), group.Key.Fence, group.Key.Tool))!.Key;
            used.Add(setting);
            while (ready.Where(node => nodes[node].Settings.Contains(setting)).Cast<int?>().FirstOrDefault() is { } node)
            {
                ready.Remove(node);
                ready.UnionWith(nodes[node].Next);
            }
        }

        return used.Count;
    }

    private static void Add(List<Node> nodes, SortedSet<int> ready, SheetLayout sheet, HashSet<Length> sizes)
    {
        int first = nodes.Count;
        var byWorkpiece = sheet.Cuts.Select((cut, i) => (Key: (cut.X, cut.Y, cut.Width, cut.Height), Node: first + i)).ToDictionary(p => p.Key, p => p.Node);
        foreach (var cut in sheet.Cuts)
        {
            var (near, far) = cut.Axis == Axis.X
                ? (cut.At - cut.X, cut.X + cut.Width - cut.At - sheet.Kerf)
                : (cut.At - cut.Y, cut.Y + cut.Height - cut.At - sheet.Kerf);
            var nearPart = cut.Axis == Axis.X ? (cut.X, cut.Y, near, cut.Height) : (cut.X, cut.Y, cut.Width, near);
            var farPart = cut.Axis == Axis.X ? (cut.At + sheet.Kerf, cut.Y, far, cut.Height) : (cut.X, cut.At + sheet.Kerf, cut.Width, far);
            var tool = (cut.Axis == Axis.X ? cut.Height : cut.Width) < SawPractice.LeastAlongFence ? SawTool.Sled : SawTool.Fence;
            nodes.Add(new Node(
                [.. Sides(near, far, cut.IsTrim, sizes).Select(side => (tool, side))],
                [.. new[] { nearPart, farPart }.Where(byWorkpiece.ContainsKey).Select(part => byWorkpiece[part])]));
        }

        var later = nodes.Skip(first).SelectMany(node => node.Next).ToHashSet();
        ready.UnionWith(Enumerable.Range(first, sheet.Cuts.Length).Where(node => !later.Contains(node)));
    }

    private static List<Length> Sides(Length near, Length far, bool isTrim, HashSet<Length> sizes)
    {
        if (isTrim)
        {
            return [Length.Max(near, far)];
        }

        List<Length> sides = [.. new[] { near, far }.Where(side => side > Length.Zero).Distinct()];
        List<Length> ofPanels = [.. sides.Where(sizes.Contains)];
        return ofPanels.Count > 0 ? ofPanels : sides;
    }
}
