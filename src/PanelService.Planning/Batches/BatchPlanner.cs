// Problem: some lines may be bought ready-made; which of them, and how many, so that the whole batch is cheapest?
// Idea:    branch and bound over boxes of decisions, the lowest bound first (BuyBox, BoxBound). For one decision boards,
//          cloth and liquids are planned by themselves, and their bounds add up. Decisions tried: none; all; each line
//          wholly; what boards or cloth alone would buy in each box; then single lines are turned as long as that saves.
//          Decisions are compared by quick plans; the best is planned again with the order's effort.
// Source:  Lagrangean decomposition: Guignard and Kim, Mathematical Programming 39, 1987.
// Cost:    two quick engine runs a box and a decision, both limited in number; the one plan where no line may be bought.
// Not:     the best decision of all where the boxes run out; the bound says by how much at most it is missed.
using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Batches;

/// <summary>Decides what is made and what is bought.</summary>
internal sealed class BatchPlanner
{
    private readonly Order _order;
    private readonly Order _quick;
    private readonly Search _search;
    private readonly BatchMaker _maker;
    private readonly ImmutableArray<int> _buyable;
    private readonly ImmutableArray<int> _nothing;
    private Batch _best;

    private BatchPlanner(Order order, Search search)
    {
        _order = order;
        _buyable = [.. Enumerable.Range(0, order.Panels.Length).Where(i => order.Panels[i] is { MayBuy: true, ShopPrice: not null })];

        // With panels to buy, no single run's bound holds for the batch.
        _search = _buyable.IsEmpty ? search : search.Quietly();
        _quick = _buyable.IsEmpty ? order : order with { Effort = Effort.Quick };
        _maker = new BatchMaker(_quick, _search);
        _nothing = [.. new int[order.Panels.Length]];
        _best = _maker.Make(_nothing);
    }

    /// <summary>Chooses.</summary>
    public static BatchChoice Cheapest(Order order, Search search) => new BatchPlanner(order, search).Choose();

    private BatchChoice Choose()
    {
        if (_buyable.IsEmpty)
        {
            return new BatchChoice(_best, _best.LeastAsMade);
        }

        TryWholeLines();
        TurnSingleLines();
        var least = SearchBoxes();
        var best = WithFullEffort();
        return new BatchChoice(best, best.Complete && least > best.Spent ? best.Spent : least);
    }

    private int MostTurns => _order.Effort == Effort.Quick ? 8 : 20;

    private int MostBoxes => _order.Effort switch
    {
        Effort.Quick => 8,
        Effort.Steady => 24,
        _ => 120,
    };

    private void TryWholeLines()
    {
        Try([.. _buyable.Aggregate(_nothing, (bought, line) => bought.SetItem(line, _maker.Wanted[line]))]);
        foreach (int line in WhileSearching(_buyable.Take(MostTurns)))
        {
            Try(_nothing.SetItem(line, _maker.Wanted[line]));
        }
    }

    private void TurnSingleLines()
    {
        int turnsLeft = MostTurns;
        bool better = true;
        while (better && turnsLeft > 0 && !_search.Cancellation.IsCancellationRequested)
        {
            better = false;
            foreach (int line in WhileSearching(_buyable.Take(turnsLeft)))
            {
                int other = _best.Bought[line] == 0 ? _maker.Wanted[line] : 0;
                better |= Try(_best.Bought.SetItem(line, other));
                turnsLeft--;
            }
        }
    }

    private IEnumerable<int> WhileSearching(IEnumerable<int> lines) => lines.TakeWhile(_ => !_search.Cancellation.IsCancellationRequested);

    private bool Try(ImmutableArray<int> bought)
    {
        var batch = _maker.Make(bought);
        bool better = batch.Complete && (!_best.Complete || batch.Spent < _best.Spent);
        _best = better ? batch : _best;
        return better;
    }

    /// <summary>Takes boxes apart, the lowest bound first, and returns the lowest bound that is left.</summary>
    private Money SearchBoxes()
    {
        var open = new PriorityQueue<(BuyBox Box, BoxBound Bound), (Money, int)>();
        var closed = new Money(long.MaxValue);
        int boxes = 0;
        Add(new BuyBox(_nothing, [.. _nothing.Select((_, i) => _buyable.Contains(i) ? _maker.Wanted[i] : 0)]), Money.Zero);
        while (open.TryPeek(out var next, out _) && boxes < MostBoxes && !_search.Cancellation.IsCancellationRequested)
        {
            if (_best.Complete && next.Bound.LeastPossible >= _best.Spent)
            {
                break;
            }

            open.Dequeue();
            var (first, second) = next.Box.Split(LineToSplit(next.Box, next.Bound));
            Add(first, next.Bound.LeastPossible);
            Add(second, next.Bound.LeastPossible);
        }

        return open.TryPeek(out var lowest, out _) && lowest.Bound.LeastPossible < closed ? lowest.Bound.LeastPossible : closed;

        void Add(BuyBox box, Money atLeast)
        {
            boxes++;
            var bound = BoundOf(box);
            bound = bound.LeastPossible < atLeast ? bound with { LeastPossible = atLeast } : bound;
            if (box.IsPoint)
            {
                closed = bound.LeastPossible < closed ? bound.LeastPossible : closed;
            }
            else
            {
                open.Enqueue((box, bound), (bound.LeastPossible, boxes));
            }
        }
    }

    private BoxBound BoundOf(BuyBox box)
    {
        if (box.IsPoint)
        {
            Try(box.Least);
            return new BoxBound(_maker.Make(box.Least).LeastAsMade, null, null);
        }

        var bound = BoxBound.Of(_quick, box, BoardShare(), _search);
        foreach (var bought in new[] { bound.ByBoards, bound.ByCloth }.OfType<ImmutableArray<int>>())
        {
            Try(bought);
        }

        return bound;
    }

    /// <summary>How much of what boards and cloth cost together the boards cost, in the best batch.</summary>
    private decimal BoardShare()
    {
        long boards = _best.Boards.Outcome.Spent.Minor;
        long cloth = _best.Cloth.Outcome.Spent.Minor;
        return boards + cloth == 0 ? 0.5m : (decimal)boards / (boards + cloth);
    }

    /// <summary>The line boards and cloth disagree on most; else the one with the most money in the box.</summary>
    private int LineToSplit(BuyBox box, BoxBound bound) => _buyable
        .Where(line => box.Most[line] > box.Least[line])
        .MaxBy(line => (
            bound.ByBoards is { } boards && bound.ByCloth is { } cloth ? Math.Abs(boards[line] - cloth[line]) : 0,
            (box.Most[line] - box.Least[line]) * _order.Panels[line].ShopPrice!.Value.Minor));

    private Batch WithFullEffort()
    {
        var full = new BatchMaker(_order, _search);
        return new[] { _best, full.Make(_best.Bought), full.Make(_nothing) }
            .Where(batch => batch.Complete)
            .OrderBy(batch => batch.Spent)
            .FirstOrDefault(_best);
    }
}
