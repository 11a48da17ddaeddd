using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Search;

/// <summary>Takes out of a plan what is cut too much: every type exactly as often as demanded.</summary>
internal static class ExactDemand
{
    /// <summary>Makes a plan exact. Stocks that nothing is left on are not used.</summary>
    /// <param name="uses">The plan; it may hold too much of anything.</param>
    /// <param name="model">The model.</param>
    /// <returns>The exact plan, and how many pieces it lacks.</returns>
    public static (List<ColumnUse> Uses, int Missing) Of(IEnumerable<ColumnUse> uses, Model model)
    {
        int[] open = [.. model.Demand];
        var exact = new List<ColumnUse>();

        // Dear stocks first: what is too much then falls off the cheapest ones, and may free one of them.
        foreach (var (column, copies) in uses.OrderByDescending(u => model.Stock(u.Column.Stock).Price))
        {
            int whole = copies;
            for (int t = 0; t < open.Length; t++)
            {
                whole = column.Counts[t] > 0 ? Math.Min(whole, open[t] / column.Counts[t]) : whole;
            }

            if (whole > 0)
            {
                exact.Add(new ColumnUse(column, whole));
                Take(open, column.Counts, whole);
            }

            for (int copy = whole; copy < copies && BlockMath.Prune(column.Block, open) is { } block; copy++)
            {
                exact.Add(new ColumnUse(column with { Block = block, Counts = BlockMath.Counts(block, open.Length) }, 1));
            }
        }

        return (exact, open.Sum());
    }

    private static void Take(int[] open, int[] counts, int copies)
    {
        for (int t = 0; t < open.Length; t++)
        {
            open[t] -= copies * counts[t];
        }
    }
}
