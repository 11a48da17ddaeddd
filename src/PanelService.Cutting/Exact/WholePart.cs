using PanelService.Cutting.Search;

namespace PanelService.Cutting.Exact;

/// <summary>Whole uses taken off a demand, with what they leave of it and of the stocks.</summary>
/// <param name="Uses">The uses.</param>
/// <param name="Open">What is still wanted.</param>
/// <param name="Left">The stocks still there.</param>
internal sealed record WholePart(IReadOnlyList<ColumnUse> Uses, int[] Open, int[] Left)
{
    /// <summary>Takes what a relaxation uses whole times off.</summary>
    /// <param name="uses">How often each column is used, in fractions.</param>
    /// <param name="demand">What is wanted.</param>
    /// <param name="counts">The stocks there are.</param>
    /// <param name="keep">So many stocks are left at least; and types that may be held too often, since they are worth next to nothing.</param>
    public static WholePart Of((Column Column, double Copies)[] uses, int[] demand, int[] counts, (int Stocks, int[] Light) keep)
    {
        int[] open = [.. demand];
        int[] left = [.. counts];
        var whole = new List<ColumnUse>();
        foreach (var (column, copies) in uses.OrderByDescending(use => use.Copies))
        {
            int times = (int)Math.Min(Math.Floor(copies), left.Sum() - keep.Stocks);
            for (int t = 0; t < open.Length; t++)
            {
                times = column.Counts[t] > 0 && !keep.Light.Contains(t) ? Math.Min(times, open[t] / column.Counts[t]) : times;
            }

            if (times > 0)
            {
                whole.Add(new ColumnUse(column, times));
                left[column.Stock] -= times;
                column.TakeOff(open, times);
            }
        }

        return new WholePart(whole, open, left);
    }
}
