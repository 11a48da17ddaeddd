using PanelService.Cutting.Search;

namespace PanelService.Cutting.Many;

/// <summary>
/// The pieces and stocks of a model as plain whole numbers, each size grown by one kerf. A shape is a type the way
/// it lies: twice the type, one more where turned.
/// </summary>
internal sealed class PieceTable
{
    /// <summary>No size may reach this, kerf included.</summary>
    public const long LargestSize = 1 << 30;

    private readonly bool[][] _mayLie;

    /// <summary>Makes the table of a whole order; see <see cref="Holds"/>.</summary>
    /// <param name="model">The model.</param>
    public PieceTable(Model model)
        : this(model, model.Demand, StockBox.Of(model).Most)
    {
    }

    /// <summary>Makes the table of a part of an order; see <see cref="Holds"/>.</summary>
    /// <param name="model">The model.</param>
    /// <param name="demand">How many of each type are wanted.</param>
    /// <param name="most">How many of each stock there are; <see cref="StockBox.Unlimited"/> for any number.</param>
    public PieceTable(Model model, int[] demand, int[] most)
    {
        int kerf = (int)model.Kerf;
        Types = model.Types.Length;
        Pieces = demand.Sum();
        Demand = demand;
        Width = new int[2 * Types];
        Height = new int[2 * Types];
        Area = new double[Types];
        for (int t = 0; t < Types; t++)
        {
            var (width, height) = model.Sizes[t];
            Width[2 * t] = Height[(2 * t) + 1] = (int)width + kerf;
            Height[2 * t] = Width[(2 * t) + 1] = (int)height + kerf;
            Area[t] = (double)Width[2 * t] * Height[2 * t];
        }

        Stocks = [.. Enumerable.Range(0, model.Stocks.Length).Select(s =>
            new StockSize((int)model.Stock(s).Width + kerf, (int)model.Stock(s).Height + kerf, model.Stock(s).Price, most[s]))];
        StockArea = Stocks.Average(s => (double)s.Width * s.Height);
        _mayLie = [.. Enumerable.Range(0, model.Stocks.Length).Select(s => MayLieOn(model, s))];
    }

    /// <summary>How many types there are.</summary>
    public int Types { get; }

    /// <summary>How many pieces there are in all.</summary>
    public int Pieces { get; }

    /// <summary>Demand per type.</summary>
    public int[] Demand { get; }

    /// <summary>Width per shape.</summary>
    public int[] Width { get; }

    /// <summary>Height per shape.</summary>
    public int[] Height { get; }

    /// <summary>Area per type.</summary>
    public double[] Area { get; }

    /// <summary>The stocks.</summary>
    public StockSize[] Stocks { get; }

    /// <summary>The stocks' mean area.</summary>
    public double StockArea { get; }

    /// <summary>Whether a model's sizes are within what the table holds.</summary>
    /// <param name="model">The model.</param>
    public static bool Holds(Model model) =>
        model.Sizes.All(size => Math.Max(size.Width, size.Height) + model.Kerf < LargestSize)
        && Enumerable.Range(0, model.Stocks.Length).All(s => Math.Max(model.Stock(s).Width, model.Stock(s).Height) + model.Kerf < LargestSize);

    /// <summary>Whether a shape may lie on a stock; it fits there then.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="shape">The shape.</param>
    public bool MayLie(int stock, int shape) => _mayLie[stock][shape];

    private bool[] MayLieOn(Model model, int stock)
    {
        var may = new bool[2 * Types];
        for (int t = 0; t < Types; t++)
        {
            var turning = model.Types[t].On[model.Stocks[stock]];
            bool upright = turning.HasFlag(Turning.Upright) && Fits(2 * t, stock);
            may[2 * t] = upright;
            may[(2 * t) + 1] = turning.HasFlag(Turning.Turned) && Fits((2 * t) + 1, stock)
                && !(upright && Width[2 * t] == Height[2 * t]);
        }

        return may;
    }

    private bool Fits(int shape, int stock) => Width[shape] <= Stocks[stock].Width && Height[shape] <= Stocks[stock].Height;
}

/// <summary>A stock.</summary>
/// <param name="Width">Usable width and one kerf.</param>
/// <param name="Height">Usable height and one kerf.</param>
/// <param name="Price">Price of one.</param>
/// <param name="Limit">How many there are; <see cref="int.MaxValue"/> for any number.</param>
internal readonly record struct StockSize(int Width, int Height, long Price, int Limit);
