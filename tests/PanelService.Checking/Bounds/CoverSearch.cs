// Problem: can all pieces be cut from just so many of each stock?
// Idea:    the piece that the fewest greatest sets hold must be on some stock: one stock rectangle after another takes one
//          of its greatest sets with that piece out of what is left. Given up where an inequality checked before shows that the
//          stocks left do not hold the rest, or where just this rest has failed with just these stocks.
//          Where the sets are too many: a free packing by a constraint solver, without the guillotine rule. Where that is
//          impossible, cutting is.
// Cost:    counts its steps; the packing is given a fixed amount of deterministic time.
namespace PanelService.Checking.Bounds;

/// <summary>Decides counts of stocks.</summary>
internal sealed class CoverSearch
{
    private const long MostSteps = 40_000_000;

    private readonly BoundCase _case;
    private readonly int[] _typeOf;
    private readonly KnownFacts _known;
    private readonly List<int[]>?[] _greatest;
    private readonly HashSet<string> _failed = new(StringComparer.Ordinal);
    private List<(Int128[] Values, long[] Caps)> _inequalities = [];
    private long _steps;

    /// <summary>Prepares.</summary>
    /// <param name="problem">The case.</param>
    /// <param name="groups">Stocks on which all pieces may lie alike.</param>
    /// <param name="known">Inequalities checked before; more may come.</param>
    public CoverSearch(BoundCase problem, int[][] groups, KnownFacts known)
    {
        _known = known;
        var types = problem.Pieces.Select((piece, i) => (piece, i))
            .GroupBy(one => (one.piece.Width, one.piece.Height, Ways: string.Join(';', one.piece.On)))
            .ToArray();
        _typeOf = new int[problem.Pieces.Length];
        for (int t = 0; t < types.Length; t++)
        {
            foreach (var (_, i) in types[t])
            {
                _typeOf[i] = t;
            }
        }

        _case = problem with
        {
            Pieces = [.. types.Select(type => type.First().piece with { Demand = type.Sum(one => one.piece.Demand) })],
        };
        _greatest = new List<int[]>?[problem.Stocks.Length];
        foreach (int[] group in groups)
        {
            var fronts = SetFronts.Of(_case, group);
            foreach (int stock in group)
            {
                _greatest[stock] = fronts?.Greatest(_case.Stocks[stock].Width + _case.Kerf, _case.Stocks[stock].Height + _case.Kerf);
            }
        }
    }

    /// <summary>Decides.</summary>
    /// <param name="counts">At most so many of each stock.</param>
    /// <returns>Whether there is a plan; null: not known.</returns>
    public bool? HasPlan(int[] counts)
    {
        if (Enumerable.Range(0, counts.Length).All(s => counts[s] == 0 || _greatest[s] is not null))
        {
            _inequalities = [.. _known.Inequalities.Select(one => (ByType(one.Values), one.Caps)).Append(ByArea())];
            _steps = 0;
            _failed.Clear();
            bool found = Covers([.. _case.Pieces.Select(piece => piece.Demand)], [.. counts]);
            if (found || _steps <= MostSteps)
            {
                return found;
            }
        }

        return FreePacking.IsPossible(_case, counts) == false ? false : null;
    }

    // Of equal pieces the least worth: what holds for more holds for less.
    private Int128[] ByType(IReadOnlyList<long> values)
    {
        var least = new Int128[_case.Pieces.Length];
        Array.Fill(least, Int128.MaxValue);
        for (int i = 0; i < values.Count; i++)
        {
            least[_typeOf[i]] = Int128.Min(least[_typeOf[i]], values[i]);
        }

        return least;
    }

    /// <summary>The most that a pattern within the demand is worth; null: not known.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="values">Per piece of the case.</param>
    public Int128? Cap(int stock, IReadOnlyList<long> values)
    {
        bool alike = Enumerable.Range(0, values.Count).All(i => values[i] == values[Array.IndexOf(_typeOf, _typeOf[i])]);
        var worth = ByType(values);
        return alike && _greatest[stock] is { } sets
            ? sets.Select(set => set.Select((count, t) => count * worth[t]).Aggregate((Int128)0, (a, b) => a + b)).DefaultIfEmpty(0).Max()
            : null;
    }

    private (Int128[] Values, long[] Caps) ByArea() => (
        [.. _case.Pieces.Select(piece => (Int128)(piece.Width + _case.Kerf) * (piece.Height + _case.Kerf))],
        [.. _case.Stocks.Select(stock => (stock.Width + _case.Kerf) * (stock.Height + _case.Kerf))]);

    private bool Covers(int[] rest, int[] left)
    {
        if (rest.All(count => count == 0))
        {
            return true;
        }

        string state = string.Join(' ', rest) + '/' + string.Join(' ', left);
        if (_steps > MostSteps || !MayHold(rest, left) || _failed.Contains(state))
        {
            return false;
        }

        int rarest = Rarest(rest, left);
        for (int stock = 0; stock < left.Length; stock++)
        {
            if (left[stock] > 0 && TryEach(stock, rarest, rest, left))
            {
                return true;
            }
        }

        _failed.Add(state);
        return false;
    }

    private bool TryEach(int stock, int rarest, int[] rest, int[] left)
    {
        left[stock]--;
        var tried = new HashSet<string>(StringComparer.Ordinal);
        foreach (int[] set in _greatest[stock]!)
        {
            _steps++;
            if (set[rarest] == 0)
            {
                continue;
            }

            int[] then = [.. rest.Select((count, i) => Math.Max(0, count - set[i]))];
            if (MayHold(then, left) && tried.Add(string.Join(' ', then)) && Covers(then, left))
            {
                return true;
            }
        }

        left[stock]++;
        return false;
    }

    private bool MayHold(int[] rest, int[] left)
    {
        foreach (var (values, caps) in _inequalities)
        {
            Int128 needed = 0;
            for (int i = 0; i < rest.Length; i++)
            {
                needed += values[i] * rest[i];
            }

            if (KnownFacts.Sum(caps, left) < needed)
            {
                return false;
            }
        }

        return true;
    }

    private int Rarest(int[] rest, int[] left) => Enumerable.Range(0, rest.Length)
        .Where(i => rest[i] > 0)
        .MinBy(i => Enumerable.Range(0, left.Length).Where(s => left[s] > 0).Sum(s => _greatest[s]!.Count(set => set[i] > 0)));
}
