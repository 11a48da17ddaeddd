namespace PanelService.Cutting.Lengths;

/// <summary>
/// What is left to do for fixed goods: pieces still wanted, and of every long rectangle the length that is free, of short
/// ones how many are.
/// </summary>
internal sealed class Rooms
{
    private readonly List<(int Rectangle, Part Part)> _placed = [];

    private Rooms(int[] demand, int[] stocks, long[] free) => (Demand, Stocks, Free) = (demand, stocks, free);

    /// <summary>Per type: how many are still wanted.</summary>
    public int[] Demand { get; }

    /// <summary>Per rectangle its stock, equal stocks one after the other.</summary>
    public int[] Stocks { get; }

    /// <summary>Per rectangle the length that is free.</summary>
    public long[] Free { get; }

    /// <summary>What lies in which rectangle, in the order it was placed.</summary>
    public IReadOnlyList<(int Rectangle, Part Part)> Placed => _placed;

    /// <summary>Nothing placed.</summary>
    /// <param name="demand">How many of each type are wanted.</param>
    /// <param name="lengths">Length of the rectangles of each stock.</param>
    /// <param name="counts">How many of them.</param>
    public static Rooms Of(int[] demand, long[] lengths, int[] counts)
    {
        int[] stocks = [.. Enumerable.Range(0, counts.Length).SelectMany(s => Enumerable.Repeat(s, counts[s]))];
        return new Rooms([.. demand], stocks, [.. stocks.Select(s => lengths[s])]);
    }

    /// <summary>The same once more, to go on from.</summary>
    public Rooms Copy()
    {
        var copy = new Rooms([.. Demand], Stocks, [.. Free]);
        copy._placed.AddRange(_placed);
        return copy;
    }

    /// <summary>Whether a part holds no more than is wanted.</summary>
    /// <param name="part">The part.</param>
    public bool Wants(Part part)
    {
        for (int t = 0; t < Demand.Length; t++)
        {
            if (part.Counts[t] > Demand[t])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The rectangle of a part's stock with the most length free; −1 where none has room.</summary>
    /// <param name="part">The part.</param>
    public int RoomFor(Part part)
    {
        int best = -1;
        for (int r = 0; r < Stocks.Length; r++)
        {
            best = Stocks[r] == part.Stock && Free[r] >= part.Length && (best < 0 || Free[r] > Free[best]) ? r : best;
        }

        return best;
    }

    /// <summary>Places a part; what it holds beyond the demand counts for nothing.</summary>
    /// <param name="rectangle">Where.</param>
    /// <param name="part">The part.</param>
    /// <param name="whole">Whether nothing else goes into the rectangle.</param>
    public void Place(int rectangle, Part part, bool whole)
    {
        _placed.Add((rectangle, part));
        Free[rectangle] = whole ? 0 : Free[rectangle] - part.Length;
        for (int t = 0; t < Demand.Length; t++)
        {
            Demand[t] = Math.Max(0, Demand[t] - part.Counts[t]);
        }
    }
}
