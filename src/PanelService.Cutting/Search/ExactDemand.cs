// Problem: a plan covers the demand and holds some pieces too often; it is to hold each exactly as often as demanded.
// Idea:    sheet by sheet, the dear ones first, everything no longer wanted is taken out of its pattern; copies that come out
//          alike stay together. What is left on the cheapest sheets in the end may be nothing, and such a sheet is saved.
// Source:  ours.
// Cost:    patterns × types, and a pattern pruned where it holds too much.
// Not:     the cheapest of all exact plans within it: sheets of one price keep their order.
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
            for (int left = copies; left > 0 && Wanted(column, open) is { } wanted;)
            {
                int alike = left;
                for (int t = 0; t < open.Length; t++)
                {
                    alike = wanted.Counts[t] > 0 ? Math.Min(alike, open[t] / wanted.Counts[t]) : alike;
                }

                exact.Add(new ColumnUse(wanted, alike));
                Take(open, wanted.Counts, alike);
                left -= alike;
            }
        }

        return (exact, open.Sum());
    }

    /// <summary>The column without what is no longer wanted; null where nothing of it is.</summary>
    private static Column? Wanted(Column column, int[] open)
    {
        bool whole = true;
        for (int t = 0; t < open.Length; t++)
        {
            whole &= column.Counts[t] <= open[t];
        }

        if (whole)
        {
            return column;
        }

        int[] room = [.. open];
        var block = BlockMath.Prune(column.Block, room);
        return block is null ? null : column with { Block = block, Counts = BlockMath.Counts(block, open.Length) };
    }

    private static void Take(int[] open, int[] counts, int copies)
    {
        for (int t = 0; t < open.Length; t++)
        {
            open[t] -= copies * counts[t];
        }
    }
}
