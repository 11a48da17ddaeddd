// Problem: some lines may be bought ready-made; which of them, and how many, so that the whole batch is cheapest?
// Idea:    for a decision what is bought, boards, cloth and liquids are planned by themselves. Decisions tried: none;
//          all; each line wholly; what the engine takes when ready-made panels are offered to it as stocks of the panel's
//          size, priced at a part of the shop's price; then single lines are turned as long as that saves.
//          Bound: part each shop price p into a part for the boards, one for the cloth and one for the liquids. Whatever
//          is bought, boards with ready-made ones at their part, cloth likewise and liquids likewise each cost at
//          least their own bound, and the parts add up to p: the sum of the three bounds them all. The best of a few
//          partings is taken. The liquids' part is nothing, so they count for lines that must be made.
// Source:  Lagrangean decomposition: Guignard and Kim, Mathematical Programming 39, 1987.
// Cost:    a few engine runs a line that may be bought; none beyond the one plan where no line may.
// Not:     the best decision of all; the bound says by how much at most it is missed.
using System.Collections.Immutable;
using PanelService.Planning.Boards;
using PanelService.Planning.Cloth;
using PanelService.Planning.Liquids;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Batches;

/// <summary>The cheapest batch found, and what no batch can spend less than.</summary>
/// <param name="Best">The batch.</param>
/// <param name="LeastPossible">The bound over everything that may be made or bought.</param>
internal sealed record BatchChoice(Batch Best, Money LeastPossible);

/// <summary>Decides what is made and what is bought.</summary>
internal sealed class BatchPlanner
{
    private const int MostTurns = 40;

    private readonly Order _order;
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
        _maker = new BatchMaker(order, _search);
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
        var least = Money.Zero;
        foreach (var boardPart in BoardParts())
        {
            var bound = BoundAndTry(boardPart);
            least = bound > least ? bound : least;
        }

        TurnSingleLines();
        return new BatchChoice(_best, _best.Complete && least > _best.Spent ? _best.Spent : least);
    }

    private void TryWholeLines()
    {
        Try([.. _buyable.Aggregate(_nothing, (bought, line) => bought.SetItem(line, _maker.Wanted[line]))]);
        foreach (int line in _buyable.Take(MostTurns))
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
            foreach (int line in _buyable.Take(turnsLeft))
            {
                int other = _best.Bought[line] == 0 ? _maker.Wanted[line] : 0;
                better |= Try(_best.Bought.SetItem(line, other));
                turnsLeft--;
            }
        }
    }

    private bool Try(ImmutableArray<int> bought)
    {
        var batch = _maker.Make(bought);
        bool better = batch.Complete && (!_best.Complete || batch.Spent < _best.Spent);
        _best = better ? batch : _best;
        return better;
    }

    /// <summary>The parts of the shop prices tried for the boards, as shares from 0 to 1.</summary>
    private IEnumerable<Func<PanelLine, decimal>> BoardParts()
    {
        yield return line => line.NeedsCloth ? line.NeedsBoard ? BoardShare() : 0 : 1;
        if (_buyable.Any(i => _order.Panels[i] is { NeedsBoard: true, NeedsCloth: true }))
        {
            yield return line => line.NeedsBoard ? line.NeedsCloth ? 0.5m : 1 : 0;
        }
    }

    /// <summary>How much of what boards and cloth cost together the boards cost, in the best batch.</summary>
    private decimal BoardShare()
    {
        long boards = _best.Boards.Outcome.Spent.Minor;
        long cloth = _best.Cloth.Outcome.Spent.Minor;
        return boards + cloth == 0 ? 0.5m : (decimal)boards / (boards + cloth);
    }

    private Money BoundAndTry(Func<PanelLine, decimal> boardPart)
    {
        var parts = _order.Panels.Select(line => PartOf(line, boardPart)).ToImmutableArray();
        var boards = BoardPlanner.Plan(_order, _maker.Wanted, [.. parts.Select(part => part?.Board)], _search);
        var cloth = ClothPlanner.Plan(_order, _maker.Wanted, [.. parts.Select(part => part?.Cloth)], _search);
        var liquids = LiquidPlanner.Plan(_order, MustBeMade());
        if (boards.Outcome.Complete)
        {
            Try(boards.Outcome.Ready);
        }

        if (cloth.Outcome.Complete)
        {
            Try(cloth.Outcome.Ready);
        }

        return boards.Outcome.LeastPossible + cloth.Outcome.LeastPossible + liquids.LeastPossible;
    }

    private static (Money Board, Money Cloth)? PartOf(PanelLine line, Func<PanelLine, decimal> boardPart)
    {
        if (line is not { MayBuy: true, ShopPrice: { } price })
        {
            return null;
        }

        var board = new Money((long)Math.Floor(price.Minor * boardPart(line)));
        return (board, price - board);
    }

    private ImmutableArray<int> MustBeMade() =>
        [.. _maker.Wanted.Select((wanted, line) => _buyable.Contains(line) ? 0 : wanted)];
}
