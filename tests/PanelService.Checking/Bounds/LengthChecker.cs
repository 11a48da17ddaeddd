// Problem: is a bound over sheets and goods sold by length what it says? The engine that found it is not asked.
// Idea:    as BoundChecker: find counts below the claim that nothing checked so far forbids (AffordableCounts), check a
//          statement that is said to forbid them, look again. What n steps hold is a rectangle n steps long: every length is
//          a stock of CapTable's, one table for all. Counts said to be impossible are decided by CoverSearch.
//          Steps bought apart are no more than the same steps in one piece, since pieces laid end to end fit in that.
// Cost:    a table an inequality needed.
using System.Collections.Immutable;
using System.Globalization;

namespace PanelService.Checking.Bounds;

/// <summary>Checks bounds of cloth.</summary>
public sealed class LengthChecker
{
    private readonly LengthCase _case;
    private readonly StatedLengths _stated;
    private readonly int[] _most;
    private readonly (int Good, int Count)[] _rungs;
    private readonly Lazy<CapTable[]> _tables;
    private readonly AffordableCounts _counts;
    private readonly HashSet<StatedHolds> _seen = new(ReferenceEqualityComparer.Instance);
    private BoundCase? _ladder;
    private string? _open;

    private LengthChecker(LengthCase problem, StatedLengths stated)
    {
        (_case, _stated) = (problem, stated);
        _most = [.. problem.Goods.Select(good => Most(good, stated.Claim - 1))];

        // Of a sheet one is enough: so many hold so many times as much.
        _rungs = [.. Enumerable.Range(0, _most.Length)
            .SelectMany(g => Enumerable.Range(1, problem.Goods[g].ByLength ? _most[g] : Math.Min(1, _most[g])).Select(n => (g, n)))];
        _tables = new(Tables);
        _counts = new AffordableCounts(problem, _most);
    }

    /// <summary>Checks a bound.</summary>
    /// <param name="problem">The case.</param>
    /// <param name="stated">What is said of it.</param>
    /// <param name="all">Whether also what the claim does not need is checked.</param>
    public static BoundVerdict Check(LengthCase problem, StatedLengths stated, bool all = false)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(stated);
        if (stated.Claim > problem.Spent || problem.LeastPossible > stated.Claim)
        {
            return BoundVerdict.Wrong(Text($"no plan is said to cost less than {stated.Claim}, bound {problem.LeastPossible}; one costs {problem.Spent}"));
        }

        var checker = new LengthChecker(problem, stated);
        return (all ? checker.Everything() : null) ?? checker.Claim();
    }

    private int Most(CaseGood good, long budget)
    {
        long most = Math.Min(good.Most ?? int.MaxValue, good.ByLength ? int.MaxValue : _case.PieceCount);
        return budget < 0 ? 0 : good.Price == 0 ? (int)most : (int)Math.Min(most, good.Paid + (budget / good.Price));
    }

    private BoundVerdict? Everything() =>
        _stated.Inequalities.Select(Take).Concat(_stated.Exclusions.Select(Take)).FirstOrDefault(verdict => verdict is not null);

    private BoundVerdict Claim()
    {
        while (true)
        {
            if (!_counts.TryFind(_stated.Claim - 1, out int[]? counts))
            {
                return BoundVerdict.NotRechecked("too many counts of goods");
            }

            if (counts is null)
            {
                return BoundVerdict.Right;
            }

            if (Against(counts) is { } verdict)
            {
                return verdict;
            }
        }
    }

    private BoundVerdict? Against(int[] counts)
    {
        var inequality = _stated.Inequalities
            .Where(one => !_seen.Contains(one) && Holds(one, counts) < Needed(one))
            .MinBy(one => (double)Holds(one, counts) / (double)Needed(one));
        if (inequality is not null)
        {
            return Take(inequality);
        }

        foreach (var most in _stated.Exclusions)
        {
            if (KnownFacts.Within(counts, WithUseless(most)))
            {
                return Take(most);
            }
        }

        return _open is { } open
            ? BoundVerdict.NotRechecked(open)
            : BoundVerdict.Wrong(Text($"nothing stated forbids the counts {string.Join(' ', counts)}, which cost less than {_stated.Claim}"));
    }

    private static Int128 Holds(StatedHolds inequality, int[] counts)
    {
        Int128 sum = 0;
        for (int g = 0; g < counts.Length; g++)
        {
            // Beyond what is stated, what is stated last is all that is known to be said.
            sum += inequality.Holds[g][Math.Min(counts[g], inequality.Holds[g].Length - 1)];
        }

        return sum;
    }

    private Int128 Needed(StatedHolds inequality)
    {
        Int128 sum = 0;
        for (int i = 0; i < _case.Pieces.Length; i++)
        {
            sum += (Int128)inequality.Values[i] * _case.Pieces[i].Demand;
        }

        return sum;
    }

    /// <summary>Computes what the goods hold again.</summary>
    private BoundVerdict? Take(StatedHolds inequality)
    {
        if (!_seen.Add(inequality))
        {
            return null;
        }

        long[][] holds = [.. _most.Select(most => new long[most + 1])];
        foreach (var table in _tables.Value)
        {
            if (!table.Fill(inequality.Values))
            {
                return BoundVerdict.NotRechecked("values too large");
            }

            foreach (int stock in table.Stocks)
            {
                var (good, count) = _rungs[stock];
                long cap = table.Cap(stock, inequality.Values);
                long stated = count < inequality.Holds[good].Length ? inequality.Holds[good][count] : long.MaxValue;
                if (cap > stated && table.Exact && Worth(table, stock, inequality) is var worth && worth > stated)
                {
                    return BoundVerdict.Wrong(Text($"{count} of good {good} hold {worth}, and are said to hold {stated} at most"));
                }

                _open = cap > stated ? Text($"what {count} of good {good} hold, {stated}, computed again as {cap} at most") : _open;
                holds[good][count] = cap;
            }
        }

        for (int g = 0; g < holds.Length; g++)
        {
            for (int n = 2; n < holds[g].Length; n++)
            {
                // More steps hold no less; so many sheets so many times as much.
                holds[g][n] = _case.Goods[g].ByLength ? Math.Max(holds[g][n], holds[g][n - 1]) : checked(holds[g][1] * n);
            }
        }

        _counts.Add(holds, Needed(inequality));
        return null;
    }

    /// <summary>What a plan can have of the table's best pattern is worth.</summary>
    private long Worth(CapTable table, int stock, StatedHolds inequality) => table.Pattern(stock, inequality.Values)
        .Select((count, i) => inequality.Values[i] * Math.Min(count, _case.Pieces[i].Demand)).Sum();

    /// <summary>Decides counts that are said to be impossible.</summary>
    private BoundVerdict? Take(ImmutableArray<int> most)
    {
        int[] used = [.. Enumerable.Range(0, most.Length).Where(g => most[g] > 0)];
        var problem = CaseOf([.. used.Select(g => (g, most[g]))], most);
        int[] counts = [.. used.Select(g => _case.Goods[g].ByLength ? 1 : most[g])];
        switch (new CoverSearch(problem, Groups(problem), new KnownFacts()).HasPlan(counts))
        {
            case false:
                _counts.Exclude([.. WithUseless(most)]);
                return null;
            case true:
                return BoundVerdict.Wrong(Text($"the counts {string.Join(' ', most)} are said to be too few, and there is a plan"));
            default:
                return BoundVerdict.NotRechecked(Text($"counts {string.Join(' ', most)}"));
        }
    }

    /// <summary>Counts that hold no more than these: of a good left out, what is too small for any piece changes nothing.</summary>
    private ImmutableArray<int> WithUseless(ImmutableArray<int> most) => [.. most.Select((count, g) => count > 0 ? count : Useless(g))];

    private int Useless(int good)
    {
        int count = 0;
        while (count < _most[good] && !Fits(_case.Goods[good], good, count + 1))
        {
            count = _case.Goods[good].ByLength ? count + 1 : _most[good];
        }

        return count;
    }

    private bool Fits(CaseGood it, int good, int count)
    {
        long length = it.ByLength ? it.Extent * count : it.Extent;
        return _case.Pieces.Any(piece => (piece.On[good].Upright && piece.Width <= it.Width && piece.Height <= length)
            || (piece.On[good].Turned && piece.Height <= it.Width && piece.Width <= length));
    }

    private CapTable[] Tables()
    {
        _ladder = CaseOf(_rungs, []);
        return [.. Groups(_ladder).Select(group => new CapTable(_ladder, group, CapTable.Quick))];
    }

    /// <summary>Goods as rectangles: so many steps are one, sheets have their number.</summary>
    private BoundCase CaseOf((int Good, int Count)[] rectangles, ImmutableArray<int> sheets) => new(
        [.. rectangles.Select(one => RectangleOf(_case.Goods[one.Good], one.Count, sheets.IsDefaultOrEmpty ? 1 : sheets[one.Good]))],
        [.. _case.Pieces.Select(piece => piece with { On = [.. rectangles.Select(one => piece.On[one.Good])] })],
        Kerf: 0,
        _case.Spent,
        _case.LeastPossible);

    private static CaseStock RectangleOf(CaseGood good, int count, int sheets) => good.ByLength
        ? new CaseStock(good.Width, good.Extent * count, good.PriceOf(count), 1)
        : new CaseStock(good.Width, good.Extent, good.Price, sheets);

    private static int[][] Groups(BoundCase problem) =>
    [
        .. Enumerable.Range(0, problem.Stocks.Length)
            .GroupBy(s => string.Join(';', problem.Pieces.Select(piece => piece.On[s])), StringComparer.Ordinal)
            .Select(group => group.ToArray()),
    ];

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
