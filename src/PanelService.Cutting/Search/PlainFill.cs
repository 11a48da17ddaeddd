// Problem: a whole plan at once for an order of any size, before anything else is known.
// Idea:    every type by itself, in rows and columns, on the stock that gives the cheapest piece so; no type shares a sheet. Or
//          in shelves, where types do (ShelfFill), if that leaves less missing or is cheaper.
// Source:  common practice: what a pencil does first.
// Cost:    types × stocks, however many pieces.
// Not:     good. It is there so that a search that is stopped early has a plan to show.
namespace PanelService.Cutting.Search;

/// <summary>A plan of sheets of one type each, or of shelves.</summary>
internal static class PlainFill
{
    /// <summary>A block of more pieces would cost more memory than the plan is worth.</summary>
    public const int MostInOneBlock = 2_000;

    /// <summary>Fills.</summary>
    /// <param name="model">The model.</param>
    /// <param name="demand">What is wanted.</param>
    /// <param name="available">How many of each stock there are; <see cref="StockBox.Unlimited"/> for any number.</param>
    /// <returns>The columns used; they may leave something missing where the stocks are used up.</returns>
    public static List<ColumnUse> Run(Model model, int[] demand, int[] available)
    {
        var rows = InRows(model, demand, available);
        return new ShelfFill(model).Run(demand, available) is { } shelves && Rank(shelves).CompareTo(Rank(rows)) < 0 ? shelves : rows;

        (long Missing, long Price) Rank(List<ColumnUse> uses) => (
            demand.Select((wanted, t) => Math.Max(0, wanted - uses.Sum(use => (long)use.Copies * use.Column.Counts[t]))).Sum(),
            uses.Sum(use => (long)use.Copies * model.Stock(use.Column.Stock).Price));
    }

    private static List<ColumnUse> InRows(Model model, int[] demand, int[] available)
    {
        int[] left = [.. available];
        var uses = new List<ColumnUse>();
        for (int type = 0; type < model.Types.Length; type++)
        {
            int open = demand[type];
            while (open > 0 && Cheapest(model, left, type) is { } column)
            {
                int each = column.Counts[type];
                int copies = Math.Min(left[column.Stock], ((open - 1) / each) + 1);
                uses.Add(new ColumnUse(column, copies));
                StockBox.TakeOff(left, column.Stock, copies);
                open -= (int)Math.Min(open, (long)each * copies);
            }
        }

        return uses;
    }

    private static Column? Cheapest(Model model, int[] left, int type)
    {
        (Column Column, double Each)? best = null;
        for (int s = 0; s < left.Length; s++)
        {
            foreach (bool turned in new[] { false, true })
            {
                if (left[s] > 0 && Rows(model, s, type, turned) is { } column)
                {
                    double each = (double)model.Stock(s).Price / column.Counts[type];
                    best = best is null || each < best.Value.Each ? (column, each) : best;
                }
            }
        }

        return best?.Column;
    }

    /// <summary>Rows and columns of one type on one stock; null where it may not lie so or does not fit.</summary>
    private static Column? Rows(Model model, int stock, int type, bool turned)
    {
        var piece = model.Types[type];
        if (!piece.On[model.Stocks[stock]].HasFlag(turned ? Turning.Turned : Turning.Upright))
        {
            return null;
        }

        var (width, height) = turned ? (piece.Height, piece.Width) : (piece.Width, piece.Height);
        long across = Math.Min(MostInOneBlock, (model.Stock(stock).Width + model.Kerf) / (width + model.Kerf));
        long along = (model.Stock(stock).Height + model.Kerf) / (height + model.Kerf);
        along = across == 0 ? 0 : Math.Min(along, MostInOneBlock / across);
        if (along == 0)
        {
            return null;
        }

        var row = Stack(Axis.X, new PieceBlock(type, turned), across);
        int[] counts = new int[model.Types.Length];
        counts[type] = (int)(across * along);
        return new Column(stock, counts, Stack(Axis.Y, row, along));
    }

    private static Block Stack(Axis axis, Block part, long count) =>
        count == 1 ? part : new StackBlock(axis, [.. Enumerable.Repeat(part, (int)count)]);
}
