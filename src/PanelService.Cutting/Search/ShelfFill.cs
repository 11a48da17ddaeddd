// Problem: a whole plan at once for an order of any size, in which types share sheets.
// Idea:    shelves from edge to edge: the highest type that is still wanted gives a shelf its height, and it and the lower
//          ones fill it, as many above one another as go in. As many copies of a sheet as the demand allows. Of the stocks with
//          the cheapest area the one whose filled area comes out cheapest.
// Source:  shelf algorithms, next fit by falling heights: Coffman, Garey, Johnson and Tarjan, SIAM J. Computing 9 (1980).
// Cost:    types × shelves for every stock tried, and that for every different sheet.
// Not:     good where pieces are large; there plain rows may be cheaper (PlainFill).
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Search;

/// <summary>A plan of sheets cut into shelves.</summary>
/// <param name="model">The model.</param>
internal sealed class ShelfFill(Model model)
{
    private const int MostStocksTried = 6;

    private readonly int[] _stocks = [.. Enumerable.Range(0, model.Stocks.Length).OrderBy(s => model.Stock(s).Price / model.StockArea(s)).ThenBy(s => s)];

    /// <summary>Fills.</summary>
    /// <param name="demand">What is wanted.</param>
    /// <param name="available">How many of each stock there are; <see cref="StockBox.Unlimited"/> for any number.</param>
    /// <returns>The columns used; they may leave something missing where the stocks are used up. Null where a sheet of shelves
    /// cannot be cut.</returns>
    public List<ColumnUse>? Run(int[] demand, int[] available)
    {
        int[] open = [.. demand];
        int[] left = [.. available];
        var uses = new List<ColumnUse>();
        while (Largest(open) is { } largest)
        {
            if (Cheapest(open, left, largest) is not { } column)
            {
                // Nothing that is left holds it: it is missing, and nothing else waits for it.
                open[largest] = 0;
                continue;
            }

            if (!model.CanCut(column.Block))
            {
                return null;
            }

            uses.Add(StockBox.TakeAll(column, open, left));
        }

        return uses;
    }

    private int? Largest(int[] open)
    {
        int largest = -1;
        for (int t = 0; t < open.Length; t++)
        {
            largest = open[t] > 0 && (largest < 0 || model.PieceArea(t) > model.PieceArea(largest)) ? t : largest;
        }

        return largest < 0 ? null : largest;
    }

    /// <summary>The sheet whose filled area is cheapest, of the first few stocks that hold a type.</summary>
    private Column? Cheapest(int[] open, int[] left, int largest)
    {
        Column? best = null;
        double least = double.PositiveInfinity;
        foreach (int s in _stocks.Where(s => left[s] > 0 && Lie(s, largest) is not null).Take(MostStocksTried))
        {
            var column = Sheet(s, open);
            double each = model.Stock(s).Price / column.Counts.Select((count, t) => count * model.PieceArea(t)).Sum();
            (best, least) = each < least ? (column, each) : (best, least);
        }

        return best;
    }

    /// <summary>How a type lies on a shelf of a stock: lower rather than higher; null where it does not fit. Sizes with the kerf.</summary>
    private Lying? Lie(int stock, int type)
    {
        var piece = model.Types[type];
        var (width, height, kerf) = (piece.Width + model.Kerf, piece.Height + model.Kerf, model.Kerf);
        var ways = piece.On[model.Stocks[stock]];
        bool Fits(Turning way, long across, long along) =>
            ways.HasFlag(way) && across <= model.Stock(stock).Width + kerf && along <= model.Stock(stock).Height + kerf;

        Lying? upright = Fits(Turning.Upright, width, height) ? new Lying(type, false, width, height) : null;
        Lying? turned = Fits(Turning.Turned, height, width) ? new Lying(type, true, height, width) : null;
        return upright is null || (turned is not null && turned.Height < upright.Height) ? turned : upright;
    }

    /// <summary>One sheet of shelves; it holds at least the largest type.</summary>
    private Column Sheet(int stock, int[] open)
    {
        int[] rest = [.. open];
        var lying = Enumerable.Range(0, rest.Length)
            .Where(t => rest[t] > 0)
            .Select(t => Lie(stock, t))
            .OfType<Lying>()
            .OrderByDescending(one => one.Height).ThenByDescending(one => one.Width).ThenBy(one => one.Type)
            .ToArray();
        var shelves = new List<Block>();
        long room = model.Stock(stock).Height + model.Kerf;
        int places = PlainFill.MostInOneBlock;
        while (places > 0 && Array.Find(lying, one => rest[one.Type] > 0 && one.Height <= room) is { } first)
        {
            shelves.Add(Shelf(lying, first.Height, model.Stock(stock).Width + model.Kerf, rest, ref places));
            room -= first.Height;
        }

        return new Column(stock, [.. open.Select((count, t) => count - rest[t])], Stack(Axis.Y, shelves));
    }

    private static Block Shelf(Lying[] lying, long height, long room, int[] rest, ref int places)
    {
        var parts = new List<Block>();
        foreach (var (type, turned, width, own) in lying.Where(one => one.Height <= height))
        {
            while (rest[type] > 0 && width <= room && places > 0)
            {
                int above = (int)Math.Min(Math.Min(height / own, rest[type]), places);
                parts.Add(Stack(Axis.Y, [.. Enumerable.Repeat<Block>(new PieceBlock(type, turned), above)]));
                (rest[type], places, room) = (rest[type] - above, places - above, room - width);
            }
        }

        return Stack(Axis.X, parts);
    }

    private static Block Stack(Axis axis, List<Block> parts) => parts is [var only] ? only : new StackBlock(axis, [.. parts]);

    /// <summary>A type as it lies on a shelf; sizes with the kerf.</summary>
    private sealed record Lying(int Type, bool Turned, long Width, long Height);
}
