namespace PanelService.Planning.Tests.Boards;

/// <summary>
/// The least price of a small order under limits, by trying every cut at every half inch: at the supplier's as long as a part
/// is too large to take home, then at the saw, where one side of every cut has to lie at the fence. A panel is there when a
/// part measures exactly what it does. Written for the tests alone; it shares no idea with the planner.
/// </summary>
internal sealed class LimitedByForce(IReadOnlyList<(int Width, int Height, int Count)> panels, LimitedByForce.Limits limits)
{
    private readonly Dictionary<(int, int, bool), HashSet<int>> _sets = [];

    /// <summary>Everything in half inches; int.MaxValue: no limit.</summary>
    internal sealed record Limits(int Kerf, int SupplierKerf, int FenceReach, (int A, int B) Handled);

    /// <summary>The least price; null where the demand cannot be met.</summary>
    /// <param name="sheets">Sizes and prices, any number of each for sale.</param>
    public int? Least(IReadOnlyList<(int Width, int Height, int Price)> sheets)
    {
        var best = new Dictionary<int, int> { [0] = 0 };
        var open = new PriorityQueue<int, int>();
        open.Enqueue(0, 0);
        int all = Packed([.. panels.Select(panel => panel.Count)]);
        while (open.TryDequeue(out int made, out int price))
        {
            if (made == all)
            {
                return price;
            }

            foreach (var (width, height, each) in sheets.Where(_ => price == best[made]))
            {
                foreach (int set in Sets(width, height, AtHome(width, height)))
                {
                    int next = Added(made, set);
                    if (next != made && price + each < best.GetValueOrDefault(next, int.MaxValue))
                    {
                        best[next] = price + each;
                        open.Enqueue(next, price + each);
                    }
                }
            }
        }

        return null;
    }

    private HashSet<int> Sets(int width, int height, bool atHome)
    {
        if (width <= 0 || height <= 0)
        {
            return [0];
        }

        if (_sets.TryGetValue((width, height, atHome), out var known))
        {
            return known;
        }

        var found = new HashSet<int> { 0 };
        for (int i = 0; atHome && i < panels.Count; i++)
        {
            var (w, h, _) = panels[i];
            if ((w == width && h == height) || (h == width && w == height))
            {
                found.Add(1 << (4 * i));
            }
        }

        int kerf = atHome ? limits.Kerf : limits.SupplierKerf;
        for (int at = 1; at < width; at++)
        {
            Part(found, atHome, (at, height), (width - kerf - at, height), at, width - kerf - at);
        }

        for (int at = 1; at < height; at++)
        {
            Part(found, atHome, (width, at), (width, height - kerf - at), at, height - kerf - at);
        }

        _sets[(width, height, atHome)] = found;
        return found;
    }

    private void Part(HashSet<int> found, bool atHome, (int Width, int Height) near, (int Width, int Height) far, int nearSide, int farSide)
    {
        bool canBeMade = !atHome || nearSide <= limits.FenceReach || (farSide > 0 && farSide <= limits.FenceReach);
        if (!canBeMade)
        {
            return;
        }

        foreach (int one in Sets(near.Width, near.Height, atHome || AtHome(near.Width, near.Height)))
        {
            foreach (int other in Sets(far.Width, far.Height, atHome || AtHome(far.Width, far.Height)))
            {
                found.Add(Added(one, other));
            }
        }
    }

    private bool AtHome(int width, int height) =>
        (width <= limits.Handled.A && height <= limits.Handled.B) || (width <= limits.Handled.B && height <= limits.Handled.A);

    private int Added(int one, int other) => Packed([.. panels.Select((panel, i) => Math.Min(panel.Count, CountOf(one, i) + CountOf(other, i)))]);

    private static int CountOf(int set, int panel) => (set >> (4 * panel)) & 15;

    private static int Packed(int[] counts) => counts.Select((count, i) => count << (4 * i)).Sum();
}
