// Problem: the cheapest whole plan for many different pieces, one or two of each, over several stocks.
// Idea:    the goal is always a plan cheaper than the best. Of the best plan the emptiest bins are dropped until the rest costs less than
//          the goal; their pieces are out. Then ruin and recreate: loosen a few bins, lay everything in again, keep
//          the change unless it is worse than what was accepted some hundred steps ago. When nothing is out any more the goal is
//          reached, and the next one is set.
// Source:  goal-driven ruin and recreate: Gardeyn and Wauters, EJOR 302 (2022); late acceptance: Burke and Bykov, EJOR
//          258 (2017).
// Cost:    some hundred thousand insertions a second on plans of 100 pieces; ends with the work allowed.
// Not:     a bound.
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Many;

/// <summary>Searches plans of many different pieces by ruin and recreate.</summary>
internal sealed class GoalSearch
{
    private const int Starts = 12;
    private const int Memory = 200;

    // Measured on plans of 10 to 700 pieces, from 3 to 60 sheets.
    private const int LooksOfNode = 20;
    private const int LooksOfUnit = 1000;
    private const double GatheredWeight = 0.05;

    private readonly PieceTable _table;
    private readonly WorkMeter _work;
    private readonly SeededRandom _random;
    private readonly Recreate _recreate;
    private readonly Ruin _ruin;
    private readonly double[] _accepted = new double[Memory];
    private long _counted;

    /// <summary>Makes it.</summary>
    /// <param name="table">Pieces and stocks.</param>
    /// <param name="work">Where work is counted.</param>
    /// <param name="seed">Another seed gives another search.</param>
    public GoalSearch(PieceTable table, WorkMeter work, ulong seed)
    {
        (_table, _work, _random) = (table, work, new SeededRandom(seed));
        _recreate = new Recreate(table, _random);
        _ruin = new Ruin(_random);
    }

    /// <summary>Searches.</summary>
    /// <param name="below">Only plans cheaper than this are wanted; <see cref="long.MaxValue"/>: any.</param>
    /// <param name="bound">No plan is cheaper; the search ends there.</param>
    /// <param name="units">The work allowed, as <see cref="WorkMeter"/> counts.</param>
    /// <param name="found">Told of every plan found, each cheaper than the one before.</param>
    public void Run(long below, long bound, long units, Action<List<ColumnUse>, long> found)
    {
        var packing = Start(below, ref units);
        while (packing.OutCount == 0 || Reach(packing, below, ref units))
        {
            below = packing.Price;
            found(packing.Columns(), below);
            if (below <= bound || units <= 0 || _work.Exhausted)
            {
                return;
            }

            DropEmptiest(packing, below);
        }
    }

    /// <summary>The best of some packings made from nothing.</summary>
    private Packing Start(long below, ref long units)
    {
        Packing? best = null;
        for (int start = 0; start < Starts && (best is null || !_work.Exhausted); start++)
        {
            var packing = new Packing(_table);
            packing.Begin();
            _recreate.Run(packing, below);
            Spend(packing, ref units);
            if (best is null || packing.OutArea < best.OutArea
                || (packing.OutArea <= best.OutArea && packing.Price < best.Price))
            {
                best = packing;
            }
        }

        return best!;
    }

    /// <summary>Ruin and recreate until nothing is out.</summary>
    /// <returns>Whether the goal was reached.</returns>
    private bool Reach(Packing packing, long below, ref long units)
    {
        packing.Begin();
        _recreate.Run(packing, below);
        double now = packing.Badness(GatheredWeight);
        Array.Fill(_accepted, now);
        for (int step = 0; packing.OutCount > 0 && units > 0 && !_work.Exhausted; step++)
        {
            packing.Begin();
            _ruin.Run(packing);
            _recreate.Run(packing, below);
            double next = packing.Badness(GatheredWeight);
            int at = step % Memory;
            if (next <= now || next <= _accepted[at])
            {
                now = next;
            }
            else
            {
                packing.TakeBack();
            }

            _accepted[at] = Math.Min(_accepted[at], now);
            Spend(packing, ref units);
        }

        return packing.OutCount == 0;
    }

    private static void DropEmptiest(Packing packing, long below)
    {
        packing.Begin();
        while (packing.Price >= below)
        {
            int worst = -1;
            for (int bin = 0; bin < packing.Bins; bin++)
            {
                if (packing.IsOpen(bin) && (worst < 0 || packing.Bin(bin).Slack > packing.Bin(worst).Slack))
                {
                    worst = bin;
                }
            }

            packing.Remove(worst, packing.Bin(worst).Root);
        }
    }

    private void Spend(Packing packing, ref long units)
    {
        long counted = _recreate.Looked + (LooksOfNode * packing.Walked);
        long spent = 1 + Math.Max(0, (counted - _counted) / LooksOfUnit);
        _counted = counted;
        units -= spent;
        _work.Spend(spent);
    }
}
