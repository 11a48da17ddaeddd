namespace PanelService.Cutting.Tests.Outside;

/// <summary>
/// What guillotine cuts can get out of a small rectangle, by trying every cut at every whole position. Written for
/// the tests alone, without points, bounds or dominance, so that it shares no idea with the engine that could be
/// wrong in both: a set of pieces fits a rectangle when it is one piece that fits, or when a cut parts it in two.
/// Counts of pieces are packed into one number, eight bits a piece; only sets that no other holds are kept.
/// </summary>
internal sealed class GuillotineBruteForce
{
    private readonly IReadOnlyList<Piece> pieces;
    private readonly int stock;
    private readonly int kerf;
    private readonly Dictionary<(int Width, int Height), ulong[]> known = [];

    /// <summary>Prepares for one stock of a problem.</summary>
    /// <param name="pieces">At most eight kinds; demands below 128.</param>
    /// <param name="stock">Which stock's turning holds.</param>
    /// <param name="kerf">What one cut turns to dust.</param>
    public GuillotineBruteForce(IReadOnlyList<Piece> pieces, int stock, int kerf)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(pieces.Count, 8);
        this.pieces = pieces;
        this.stock = stock;
        this.kerf = kerf;
    }

    /// <summary>Every greatest set of pieces that can be cut from a rectangle, none above its demand.</summary>
    public ulong[] Sets(int width, int height)
    {
        if (known.TryGetValue((width, height), out var sets))
        {
            return sets;
        }

        var found = new HashSet<ulong> { 0 };
        AddSingles(width, height, found);
        for (int at = 1; at <= (width - kerf) / 2; at++)
        {
            AddSums(Sets(at, height), Sets(width - kerf - at, height), found);
        }

        for (int at = 1; at <= (height - kerf) / 2; at++)
        {
            AddSums(Sets(width, at), Sets(width, height - kerf - at), found);
        }

        return known[(width, height)] = Greatest(found);
    }

    /// <summary>How many of a piece a packed set holds.</summary>
    public static int Count(ulong set, int piece) => (int)((set >> (8 * piece)) & 0xFF);

    private void AddSingles(int width, int height, HashSet<ulong> found)
    {
        for (int i = 0; i < pieces.Count; i++)
        {
            var piece = pieces[i];
            bool upright = piece.On[stock].HasFlag(Turning.Upright) && piece.Width <= width && piece.Height <= height;
            bool turned = piece.On[stock].HasFlag(Turning.Turned) && piece.Height <= width && piece.Width <= height;
            if (upright || turned)
            {
                found.Add(1UL << (8 * i));
            }
        }
    }

    private void AddSums(ulong[] some, ulong[] others, HashSet<ulong> found)
    {
        foreach (ulong one in some)
        {
            foreach (ulong other in others)
            {
                found.Add(Capped(one, other));
            }
        }
    }

    private ulong Capped(ulong one, ulong other)
    {
        ulong sum = 0;
        for (int i = 0; i < pieces.Count; i++)
        {
            sum |= (ulong)Math.Min(Count(one, i) + Count(other, i), pieces[i].Demand) << (8 * i);
        }

        return sum;
    }

    // The high bit of every byte, set before subtracting, stays set where that byte is at least as large.
    private static ulong[] Greatest(HashSet<ulong> sets)
    {
        const ulong High = 0x8080808080808080UL;
        var kept = new List<ulong>();
        foreach (ulong set in sets.OrderByDescending(Pieces))
        {
            if (!kept.Exists(other => unchecked(((other | High) - set) & High) == High))
            {
                kept.Add(set);
            }
        }

        return [.. kept];
    }

    private static int Pieces(ulong set) => Enumerable.Range(0, 8).Sum(i => Count(set, i));
}
