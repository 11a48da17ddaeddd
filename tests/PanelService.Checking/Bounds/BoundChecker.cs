// Problem: is a bound what it says? The engine that found it is not asked.
// Idea:    the claim follows from inequalities, from counts that are impossible, and from nothing else. So: find the
//          cheapest counts below the claim that nothing checked so far forbids; check a statement that is said to forbid
//          them, and look again. In the end there are none (the claim is right), or nothing stated forbids them (it does
//          not follow), or a statement is not true, or it is too much work to say.
//          A cap is computed again by CapTable; counts are decided again by CoverSearch.
// Cost:    a table an inequality needed; seconds where sizes are odd.
using System.Collections.Immutable;
using System.Globalization;

namespace PanelService.Checking.Bounds;

/// <summary>Checks bounds.</summary>
public sealed class BoundChecker
{
    private readonly BoundCase _case;
    private readonly StatedProof _stated;
    private readonly KnownFacts _known = new();
    private readonly int[][] _groups;
    private readonly Lazy<CapTable[]> _tables;
    private readonly Lazy<CapTable>[] _finer;
    private readonly Lazy<CoverSearch> _cover;
    private readonly HashSet<StatedInequality> _seen = new(ReferenceEqualityComparer.Instance);
    private string? _open;

    private BoundChecker(BoundCase problem, StatedProof stated, double mostWork)
    {
        (_case, _stated) = (problem, stated);
        _groups = [.. Enumerable.Range(0, problem.Stocks.Length)
            .GroupBy(s => string.Join(';', problem.Pieces.Select(piece => piece.On[s])), StringComparer.Ordinal)
            .Select(group => group.ToArray())];
        _tables = new(() => [.. _groups.Select(group => new CapTable(_case, group, CapTable.Quick))]);
        _finer = [.. _groups.Select(group => new Lazy<CapTable>(() => new CapTable(_case, group, mostWork)))];
        _cover = new(() => new CoverSearch(_case, _groups, _known));
    }

    /// <summary>Checks a bound.</summary>
    /// <param name="problem">The case.</param>
    /// <param name="stated">What is said of it.</param>
    /// <param name="all">Whether also what the claim does not need is checked, and every cap as stated. Else it is enough
    /// that the claim follows, be it from caps somewhat larger than stated.</param>
    public static BoundVerdict Check(BoundCase problem, StatedProof stated, bool all = false)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(stated);
        var checker = new BoundChecker(problem, stated, CapTable.Slow);
        var verdict = checker.Run(all);
        return verdict.Finding == BoundFinding.NotRechecked && checker.IsCoarse
            ? new BoundChecker(problem, stated, CapTable.Last).Run(all)
            : verdict;
    }

    /// <summary>Whether a cap was computed for rounded sizes: on finer points it may come out smaller.</summary>
    private bool IsCoarse => _finer.Any(table => table.IsValueCreated && !table.Value.Exact);

    private BoundVerdict Run(bool all)
    {
        if (_stated.Claim > _case.Spent || _case.LeastPossible > _stated.Claim)
        {
            return BoundVerdict.Wrong(Text($"no plan is said to cost less than {_stated.Claim}, bound {_case.LeastPossible}; one costs {_case.Spent}"));
        }

        return (all ? Everything() : null) ?? Claim();
    }

    /// <summary>Every statement, needed or not.</summary>
    private BoundVerdict? Everything()
    {
        foreach (var inequality in _stated.Inequalities)
        {
            if (Take(inequality) is { } wrong)
            {
                return wrong;
            }
        }

        foreach (var counts in _stated.Exclusions)
        {
            if (Take([.. counts]) is { } wrong)
            {
                return wrong;
            }
        }

        return _open is { } open ? BoundVerdict.NotRechecked(open) : null;
    }

    private BoundVerdict Claim()
    {
        while (true)
        {
            var (counts, ended) = new LeastMix(_case, _known).Below(_stated.Claim);
            (counts, ended) = ended ? (counts, ended) : MixBySolver.Below(_case, _known, _stated.Claim);
            if (counts is null)
            {
                return ended ? BoundVerdict.Right : BoundVerdict.NotRechecked("too many counts of stocks");
            }

            if (Against(counts) is { } verdict)
            {
                return verdict;
            }
        }
    }

    /// <summary>Checks something that forbids counts.</summary>
    /// <returns>A verdict, where that ends it; null: the counts are forbidden now.</returns>
    private BoundVerdict? Against(int[] counts)
    {
        var inequality = _stated.Inequalities
            .Where(one => !_seen.Contains(one) && KnownFacts.Sum(one.Caps, counts) < Needed(one))
            .MinBy(one => (double)KnownFacts.Sum(one.Caps, counts) / (double)Needed(one));
        if (inequality is not null)
        {
            return Take(inequality);
        }

        int[][] excluded = [.. _stated.Exclusions.Select(e => e.ToArray()).Where(e => KnownFacts.Within(counts, e))];
        if (excluded.Length == 0 && _stated.NoneBelow >= _stated.Claim)
        {
            excluded = [Grown(counts)];
        }

        if (excluded.Length == 0)
        {
            return _open is { } open
                ? BoundVerdict.NotRechecked(open)
                : BoundVerdict.Wrong(Text($"nothing stated forbids the counts {string.Join(' ', counts)}, which cost less than {_stated.Claim}"));
        }

        // The statement itself, or just as good: that these counts are impossible.
        var first = Take(excluded[0]);
        return first is { Finding: BoundFinding.NotRechecked } && !counts.AsSpan().SequenceEqual(excluded[0]) ? Take(counts) : first;
    }

    /// <summary>The counts with more stocks, as many as cost less than the claim: what forbids these forbids many.</summary>
    private int[] Grown(int[] counts)
    {
        int[] grown = [.. counts];
        long left = _stated.Claim - 1 - _case.Stocks.Select((stock, s) => stock.Price * counts[s]).Sum();
        for (int s = 0; s < grown.Length; s++)
        {
            var (price, limit) = (_case.Stocks[s].Price, Math.Min(_case.PieceCount, _case.Stocks[s].Limit ?? int.MaxValue));
            long more = Math.Min(limit - grown[s], price == 0 ? long.MaxValue : left / price);
            grown[s] += (int)Math.Max(0, more);
            left -= Math.Max(0, more) * price;
        }

        return grown;
    }

    /// <summary>Checks that counts are impossible.</summary>
    private BoundVerdict? Take(int[] counts)
    {
        switch (_cover.Value.HasPlan(counts))
        {
            case false:
                _known.Impossible.Add(counts);
                return null;
            case true:
                return BoundVerdict.Wrong(Text($"the counts {string.Join(' ', counts)} are said to be too few, and there is a plan"));
            default:
                return BoundVerdict.NotRechecked(Text($"counts {string.Join(' ', counts)}"));
        }
    }

    /// <summary>Checks an inequality's caps. Where only an upper bound of a cap can be computed, that one is taken.</summary>
    private BoundVerdict? Take(StatedInequality inequality)
    {
        if (!_seen.Add(inequality))
        {
            return null;
        }

        long[] caps = [.. inequality.Caps];
        for (int group = 0; group < _groups.Length; group++)
        {
            if (Recompute(_tables.Value[group], inequality, caps) is { } wrong)
            {
                return wrong;
            }

            bool isOpen = _groups[group].Any(s => caps[s] > inequality.Caps[s]) && !_tables.Value[group].Exact;
            if (isOpen && Recompute(_finer[group].Value, inequality, caps) is { } wrongAfterAll)
            {
                return wrongAfterAll;
            }
        }

        if (Narrow(inequality, caps) is { } tooLow)
        {
            return tooLow;
        }

        int open = Enumerable.Range(0, caps.Length).FirstOrDefault(s => caps[s] > inequality.Caps[s], -1);
        _open = open < 0 ? _open : Text($"cap {inequality.Caps[open]} of stock {open}, computed again as {caps[open]} at most");
        _known.Inequalities.Add((inequality.Values, caps, Needed(inequality)));
        return null;
    }

    /// <summary>
    /// A table's best pattern may hold more than a plan can have. Where that is what stands above a cap, the sets of
    /// pieces a plan can have are looked through, if they are few.
    /// </summary>
    private BoundVerdict? Narrow(StatedInequality inequality, long[] caps)
    {
        foreach (int stock in Enumerable.Range(0, caps.Length).Where(s => caps[s] > inequality.Caps[s]))
        {
            if (_cover.Value.Cap(stock, inequality.Values) is { } cap)
            {
                if (cap > inequality.Caps[stock])
                {
                    return BoundVerdict.Wrong(Text($"a pattern of stock {stock} is worth {cap}, the cap is {inequality.Caps[stock]}"));
                }

                caps[stock] = inequality.Caps[stock];
            }
        }

        return null;
    }

    /// <summary>Computes the caps of a table's stocks again.</summary>
    private BoundVerdict? Recompute(CapTable table, StatedInequality inequality, long[] caps)
    {
        if (!table.Fill(inequality.Values))
        {
            return BoundVerdict.NotRechecked("values too large");
        }

        foreach (int stock in table.Stocks.Where(s => _case.Stocks[s].Limit != 0))
        {
            long cap = table.Cap(stock, inequality.Values);
            long stated = inequality.Caps[stock];
            if (cap > stated && Witness(table, stock, inequality) is { } worth)
            {
                return BoundVerdict.Wrong(Text($"a pattern of stock {stock} is worth {worth}, the cap is {stated}"));
            }

            caps[stock] = Math.Max(stated, caps[stock] > stated ? Math.Min(caps[stock], cap) : cap);
        }

        return null;
    }

    /// <summary>The table's best pattern, less what is more than a plan can have of it, worth more than stated; null: it is not.</summary>
    private long? Witness(CapTable table, int stock, StatedInequality inequality)
    {
        if (!table.Exact)
        {
            return null;
        }

        int[] counts = table.Pattern(stock, inequality.Values);
        long worth = counts.Select((count, i) => inequality.Values[i] * Math.Min(count, _case.Pieces[i].Demand)).Sum();
        return worth > inequality.Caps[stock] ? worth : null;
    }

    private Int128 Needed(StatedInequality inequality)
    {
        Int128 sum = 0;
        for (int i = 0; i < _case.Pieces.Length; i++)
        {
            sum += (Int128)inequality.Values[i] * _case.Pieces[i].Demand;
        }

        return sum;
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
