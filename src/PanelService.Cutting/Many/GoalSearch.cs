// Problem: the cheapest whole plan for many different pieces, one or two of each, over several stocks.
// Idea:    the goal is always a plan cheaper than the best. Of the best plan the emptiest bins are dropped until the rest costs less than
//          the goal; their pieces are out. Then ruin and recreate: loosen a few bins, lay everything in again, keep
//          the change unless it is worse than what was accepted some hundred steps ago. When nothing is out any more the goal is
//          reached, and the next one is set.
// Source:  goal-driven ruin and recreate: Gardeyn and Wauters, EJOR 302 (2022); late acceptance: Burke and Bykov, EJOR
//          258 (2017).
// Cost:    some hundred thousand insertions a second on plans of 100 pieces; stands still when the work allowed is done,
//          and can go on from there.
// Not:     a bound.
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Many;

/// <summary>Searches plans of many different pieces by ruin and recreate.</summary>
internal sealed class GoalSearch
{
    private const int Starts = 12;
    private const int Memory = 200;

    // A quarter of a second: for thousands of pieces fewer starts have to do.
    private const long MostOfStart = 250_000;

    // Measured on plans of 10 to 700 pieces, from 3 to 60 sheets.
    private const int LooksOfNode = 20;
    private const int LooksOfUnit = 1000;
    private const double GatheredWeight = 0.05;

    // In sheets: a packing that is worse than the best by no more than this is among the best.
    private const double CloseToBest = 0.01;

    private readonly PieceTable _table;
    private readonly SeededRandom _random;
    private readonly Recreate _recreate;
    private readonly Ruin _ruin;
    private readonly double[] _accepted = new double[Memory];
    private readonly ColumnPool? _sheets;
    private Packing? _packing;
    private long _below = long.MaxValue;
    private bool _aimed;
    private double _now;
    private double _least = double.PositiveInfinity;
    private int _step;
    private long _counted;

    /// <summary>Makes it.</summary>
    /// <param name="table">Pieces and stocks; only read, so that several searches may share it.</param>
    /// <param name="seed">Another seed gives another search.</param>
    /// <param name="sheets">Gets the sheets of the best packings, those with pieces out too; null: nobody wants them.</param>
    public GoalSearch(PieceTable table, ulong seed, ColumnPool? sheets = null)
    {
        (_table, _random, _sheets) = (table, new SeededRandom(seed), sheets);
        _recreate = new Recreate(table, _random);
        _ruin = new Ruin(_random);
    }

    /// <summary>Goes on with the search where it stands.</summary>
    /// <param name="below">Only plans cheaper than this are wanted; <see cref="long.MaxValue"/>: any.</param>
    /// <param name="bound">No plan is cheaper; the search ends there, and at 0: nothing costs less than nothing.</param>
    /// <param name="meter">The work allowed until the next call; the first packings are made whatever it says.</param>
    /// <returns>The plans found, each cheaper than the one before.</returns>
    public List<List<ColumnUse>> Advance(long below, long bound, WorkMeter meter)
    {
        var found = new List<List<ColumnUse>>();
        bound = Math.Max(bound, 0);
        if (below <= 0)
        {
            return found;
        }

        var packing = _packing ??= Start(below, meter);
        if (below < _below)
        {
            _below = below;
            _aimed &= packing.Price < below;
        }

        while (true)
        {
            if (packing.OutCount == 0 && packing.Price < _below)
            {
                (_below, _aimed) = (packing.Price, false);
                found.Add(packing.Columns());
                if (_below <= bound)
                {
                    return found;
                }
            }

            if (meter.Exhausted)
            {
                return found;
            }

            if (_aimed)
            {
                Step(packing, meter);
            }
            else
            {
                Aim(packing);
            }
        }
    }

    /// <summary>The best of some packings made from nothing.</summary>
    private Packing Start(long below, WorkMeter meter)
    {
        Packing? best = null;
        long before = meter.Left;
        for (int start = 0; start < Starts && (best is null || (!meter.Stopped && before - meter.Left < MostOfStart)); start++)
        {
            var packing = new Packing(_table);
            packing.Begin();
            _recreate.Run(packing, below);
            Spend(packing, meter);
            if (best is null || packing.OutArea < best.OutArea
                || (packing.OutArea <= best.OutArea && packing.Price < best.Price))
            {
                best = packing;
            }
        }

        return best!;
    }

    /// <summary>Sets out for a plan below the goal.</summary>
    private void Aim(Packing packing)
    {
        DropEmptiest(packing, _below);
        packing.Begin();
        _recreate.Run(packing, _below);
        (_now, _step, _aimed) = (packing.Badness(GatheredWeight), 0, true);
        Array.Fill(_accepted, _now);
    }

    /// <summary>Ruin and recreate once.</summary>
    private void Step(Packing packing, WorkMeter meter)
    {
        packing.Begin();
        _ruin.Run(packing);
        _recreate.Run(packing, _below);
        double next = packing.Badness(GatheredWeight);
        int at = _step++ % Memory;
        if (next <= _now || next <= _accepted[at])
        {
            _now = next;
            KeepSheets(packing);
        }
        else
        {
            packing.TakeBack();
        }

        _accepted[at] = Math.Min(_accepted[at], _now);
        Spend(packing, meter);
    }

    private void KeepSheets(Packing packing)
    {
        if (_sheets is not null && _now < _least + CloseToBest)
        {
            _least = Math.Min(_least, _now);
            packing.Columns().ForEach(use => _sheets.Add(use.Column));
        }
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

    private void Spend(Packing packing, WorkMeter meter)
    {
        long counted = _recreate.Looked + (LooksOfNode * packing.Walked);
        meter.Spend(1 + Math.Max(0, (counted - _counted) / LooksOfUnit));
        _counted = counted;
    }
}
