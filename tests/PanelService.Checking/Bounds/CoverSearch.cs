// Problem: can all pieces be cut from just so many of each stock?
// Idea:    first every plan, where the sets of pieces are few enough: SetFronts tells what fits, then one stock rectangle
//          after another takes away what it can from every rest that the ones before may leave. Else a free packing by a
//          constraint solver, without the guillotine rule: where that is impossible, cutting is.
// Cost:    sets² a stock rectangle; the packing is given a fixed amount of deterministic time.
namespace PanelService.Checking.Bounds;

/// <summary>Decides counts of stocks.</summary>
internal sealed class CoverSearch
{
    private const double MostPairs = 4_000_000;

    private readonly BoundCase _case;
    private readonly int[][] _groups;
    private readonly PieceSets? _sets;
    private readonly SetFronts?[] _fronts;
    private readonly bool[]?[] _fits;

    /// <summary>Prepares.</summary>
    /// <param name="problem">The case.</param>
    /// <param name="groups">Stocks on which all pieces may lie alike.</param>
    public CoverSearch(BoundCase problem, int[][] groups)
    {
        _case = Joined(problem);
        _groups = groups;
        _fronts = new SetFronts?[groups.Length];
        _fits = new bool[]?[problem.Stocks.Length];
        _sets = PieceSets.Pairs(_case.Pieces.Select(piece => piece.Demand)) <= MostPairs
            ? new PieceSets([.. _case.Pieces.Select(piece => piece.Demand)])
            : null;
    }

    /// <summary>Decides.</summary>
    /// <param name="counts">At most so many of each stock.</param>
    /// <returns>Whether there is a plan; null: not known.</returns>
    public bool? HasPlan(int[] counts) => _sets is null ? FreePacking.IsPossible(_case, counts) == false ? false : null : ByAllPlans(counts, _sets);

    private bool ByAllPlans(int[] counts, PieceSets sets)
    {
        var rests = new HashSet<int> { sets.Count - 1 };
        for (int stock = 0; stock < counts.Length; stock++)
        {
            for (int copy = 0; copy < counts[stock] && !rests.Contains(0); copy++)
            {
                int before = rests.Count;
                rests = After(rests, FitsOf(stock, sets), sets);
                if (rests.Count == before && copy > _case.PieceCount)
                {
                    break;
                }
            }
        }

        return rests.Contains(0);
    }

    // What a rectangle may leave, with those left out that hold another one.
    private static HashSet<int> After(HashSet<int> rests, bool[] fits, PieceSets sets)
    {
        var after = new HashSet<int>();
        foreach (int rest in rests)
        {
            after.Add(rest);
            if (fits[rest])
            {
                return [0];
            }

            foreach (int part in sets.PartsOf(rest))
            {
                if (fits[part])
                {
                    after.Add(rest - part);
                }
            }
        }

        return after;
    }

    private bool[] FitsOf(int stock, PieceSets sets)
    {
        if (_fits[stock] is { } known)
        {
            return known;
        }

        int group = Array.FindIndex(_groups, g => g.Contains(stock));
        var fronts = _fronts[group] ??= new SetFronts(_case, sets, _groups[group]);
        var (width, height) = (_case.Stocks[stock].Width + _case.Kerf, _case.Stocks[stock].Height + _case.Kerf);
        return _fits[stock] = [.. Enumerable.Range(0, sets.Count).Select(set => fronts.Fits(set, width, height))];
    }

    /// <summary>The case with equal pieces made one.</summary>
    private static BoundCase Joined(BoundCase problem) => problem with
    {
        Pieces = [.. problem.Pieces
            .GroupBy(piece => (piece.Width, piece.Height, Ways: string.Join(';', piece.On)))
            .Select(group => group.First() with { Demand = group.Sum(piece => piece.Demand) })],
    };
}
