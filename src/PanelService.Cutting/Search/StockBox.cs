namespace PanelService.Cutting.Search;

/// <summary>How many of each stock may be used: a box of counts.</summary>
/// <param name="Least">Per stock: at least so many.</param>
/// <param name="Most">Per stock: at most so many; <see cref="Unlimited"/> for any number.</param>
internal sealed record StockBox(int[] Least, int[] Most)
{
    /// <summary>Stands for any number.</summary>
    public const int Unlimited = int.MaxValue;

    /// <summary>The box of a model's own limits.</summary>
    /// <param name="model">The model.</param>
    public static StockBox Of(Model model) => new(
        new int[model.Stocks.Length],
        [.. Enumerable.Range(0, model.Stocks.Length).Select(s => model.Stock(s).Limit ?? Unlimited)]);

    /// <summary>Takes stocks that are used off what is left of them; of an unlimited stock there is always as much left.</summary>
    /// <param name="left">How many of each stock are left.</param>
    /// <param name="stock">The stock used.</param>
    /// <param name="copies">How many of it.</param>
    public static void TakeOff(int[] left, int stock, int copies) => left[stock] -= left[stock] == Unlimited ? 0 : copies;

    /// <summary>Uses a column as often as demand and stock allow, and takes that off both.</summary>
    /// <param name="column">The column; it holds something.</param>
    /// <param name="open">What is still wanted of each type.</param>
    /// <param name="left">How many of each stock are left.</param>
    public static ColumnUse TakeAll(Column column, int[] open, int[] left)
    {
        int copies = left[column.Stock];
        for (int t = 0; t < open.Length; t++)
        {
            copies = column.Counts[t] > 0 ? Math.Min(copies, open[t] / column.Counts[t]) : copies;
        }

        for (int t = 0; t < open.Length; t++)
        {
            open[t] -= copies * column.Counts[t];
        }

        TakeOff(left, column.Stock, copies);
        return new ColumnUse(column, copies);
    }
}
