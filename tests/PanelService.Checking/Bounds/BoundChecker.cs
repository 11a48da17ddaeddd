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

    private BoundChecker(BoundCase problem, StatedProof stated)
    {
        (_case, _stated) = (problem, stated);
        _groups = [.. Enumerable.Range(0, problem.Stocks.Length)
            .GroupBy(s => string.Join(';', problem.Pieces.Select(piece => piece.On[s])), StringComparer.Ordinal)
            .Select(group => group.ToArray())];
        _tables = new(() => [.. _groups.Select(group => new CapTable(_case, group, CapTable.Quick))]);
        _finer = [.. _groups.Select(group => new Lazy<CapTable>(() => new CapTable(_case, group, CapTable.Slow)))];
        _cover = new(() => new CoverSearch(_case, _groups));
    }

    /// <summary>Checks a bound.</summary>
    /// <param name="problem">The case.</param>
    /// <param name="stated">What is said of it.</param>
    /// <param name="all">Whether also what the claim does not need is checked.</param>
    public static BoundVerdict Check(BoundCase problem, StatedProof stated, bool all = false)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(stated);
        return new BoundChecker(problem, stated).Run(all);
    }

    private BoundVerdict Run(bool all)
    {
        if (_stated.Claim > _case.Spent || _case.LeastPossible > _stated.Claim)
        {
            return BoundVerdict.Wrong(Text($"no plan is said to cost less than {_stated.Claim}, bound {_case.LeastPossible}; one costs {_case.Spent}"));
        }

        var wrong = all ? Everything() : null;
        return wrong ?? Claim();
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
            if (Take([.. counts]) is { Finding: BoundFinding.Wrong } wrong)
            {
                return wrong;
            }
        }

        return null;
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

        int open = Enumerable.Range(0, caps.Length).FirstOrDefault(s => caps[s] > inequality.Caps[s], -1);
        _open = open < 0 ? _open : Text($"cap {inequality.Caps[open]} of stock {open}, computed again as {caps[open]} at most");
        _known.Inequalities.Add((caps, Needed(inequality)));
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
            if (cap > stated && IsWitness(table, stock, inequality.Values))
            {
                return BoundVerdict.Wrong(Text($"a pattern of stock {stock} is worth {cap}, the cap is {stated}"));
            }

            caps[stock] = Math.Max(stated, caps[stock] > stated ? Math.Min(caps[stock], cap) : cap);
        }

        return null;
    }

    /// <summary>Whether the table's best pattern is one that a plan can have.</summary>
    private bool IsWitness(CapTable table, int stock, ImmutableArray<long> values)
    {
        if (!table.Exact)
        {
            return false;
        }

        int[] counts = table.Pattern(stock, values);
        return Enumerable.Range(0, counts.Length).All(i => counts[i] <= _case.Pieces[i].Demand);
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
