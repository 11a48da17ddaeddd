using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>
/// Whether straight cuts from edge to edge can part rectangles. A line that crosses none of them never does harm:
/// what can be parted without it can be parted after it. So every such line is taken until none is left; the
/// rectangles can be parted exactly when each then stands alone.
/// </summary>
internal static class Partable
{
    public static bool ByStraightCuts(IReadOnlyList<Box> boxes)
    {
        var open = new Stack<IReadOnlyList<Box>>([boxes]);
        while (open.TryPop(out var group))
        {
            if (group.Count <= 1)
            {
                continue;
            }

            var parts = Groups(group, box => box.X, box => box.Right);
            if (parts.Count == 1)
            {
                parts = Groups(group, box => box.Y, box => box.Top);
            }

            if (parts.Count == 1)
            {
                return false;
            }

            parts.ForEach(open.Push);
        }

        return true;
    }

    private static List<IReadOnlyList<Box>> Groups(IReadOnlyList<Box> boxes, Func<Box, long> from, Func<Box, long> to)
    {
        var groups = new List<IReadOnlyList<Box>>();
        var current = new List<Box>();
        long reach = long.MinValue;
        foreach (var box in boxes.OrderBy(from))
        {
            if (current.Count > 0 && from(box) >= reach)
            {
                groups.Add(current);
                current = [];
            }

            current.Add(box);
            reach = Math.Max(reach, to(box));
        }

        groups.Add(current);
        return groups;
    }
}
