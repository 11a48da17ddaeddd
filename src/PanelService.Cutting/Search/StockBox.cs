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

    /// <summary>The part of the box with at least so many of a stock.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="count">How many.</param>
    public StockBox AtLeast(int stock, int count) => this with { Least = With(Least, stock, count) };

    /// <summary>The part of the box with at most so many of a stock.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="count">How many.</param>
    public StockBox AtMost(int stock, int count) => this with { Most = With(Most, stock, count) };

    private static int[] With(int[] counts, int at, int value)
    {
        int[] copy = [.. counts];
        copy[at] = value;
        return copy;
    }
}
