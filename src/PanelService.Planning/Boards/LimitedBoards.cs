// Problem: boards planned under what saw, person, car and the supplier's saw can do.
// Idea:    as long as the supplier's kerf is the saw's, first cuts cost nothing: whatever cuts a sheet apart can begin at the
//          supplier's until every part is small enough. So the engine plans as always, and every pattern is laid out under the
//          limits. Where one cannot be, it plans again within them: no cut wider than the fence reaches, sheets smaller by what
//          the supplier's wider kerf takes, at last everything at the wider kerf. What still cannot be cut is taken apart.
//          The first plan's bound holds for plans within limits too. Where the supplier's kerf is the narrower one it does
//          not, and the bound is that of sheets larger by what the narrower kerf can save at most.
// Cost:    one run of the engine where the limits bind nowhere, else up to six.
// Not:     the least price where limits bind: the bound tells how far from it at most.
using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Orders;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Boards;

/// <summary>Plans boards under limits.</summary>
internal sealed class LimitedBoards
{
    // How many first cuts run across a sheet and along it, as far as it is told apart.
    private static readonly ImmutableArray<(int Across, int Along)> _shrinks = [(1, 0), (0, 1), (1, 1), (2, 0), (0, 2), (2, 1), (1, 2), (2, 2), (3, 3)];

    private const int NoStock = -1;

    // How many patterns are still tried after a stop: each takes some hundredths of a second where it cannot be cut.
    private const int MostAfterStop = 300;

    private static readonly Turning[] Lies = [Turning.Upright, Turning.Turned];

    private readonly Order _order;
    private readonly ImmutableArray<BoardStock> _stocks;
    private readonly CuttingProblem _problem;
    private readonly CancellationToken _cancellation;
    private readonly ImmutableArray<(long Width, long Height)> _sizes;
    private int _triedAfterStop;

    private LimitedBoards(Order order, ImmutableArray<BoardStock> stocks, CuttingProblem problem, CancellationToken cancellation)
    {
        (_order, _stocks, _problem, _cancellation) = (order, stocks, problem, cancellation);
        _sizes = [.. problem.Pieces.Select(piece => (piece.Width, piece.Height))];
    }

    /// <summary>Plans.</summary>
    /// <param name="order">The order.</param>
    /// <param name="stocks">The boards, first of the problem's stocks.</param>
    /// <param name="problem">What is to be cut from what.</param>
    /// <param name="search">Whom to tell, and when to stop.</param>
    /// <exception cref="OperationCanceledException">A stop came, and the best so far cannot be cut as it is.</exception>
    public static CuttingResult Plan(Order order, ImmutableArray<BoardStock> stocks, CuttingProblem problem, Search search) =>
        stocks.Any(stock => stock.IsLimited)
            ? new LimitedBoards(order, stocks, problem, search.Cancellation).Plan()
            : CuttingPlanner.Plan(problem, order.Effort, search.Progress, search.Cancellation);

    /// <summary>Whether every pattern can be cut within its board's limits.</summary>
    /// <param name="result">Patterns; what comes after the boards among the stocks is not cut.</param>
    /// <param name="stocks">The boards.</param>
    /// <param name="problem">The problem.</param>
    public static bool CanCut(CuttingResult result, ImmutableArray<BoardStock> stocks, CuttingProblem problem)
    {
        ImmutableArray<(long Width, long Height)> sizes = [.. problem.Pieces.Select(piece => (piece.Width, piece.Height))];
        return result.Patterns.All(use => use.Stock >= stocks.Length || CanCut(use.Block, stocks[use.Stock], sizes, problem.Kerf));
    }

    private static bool CanCut(Block block, BoardStock stock, ImmutableArray<(long Width, long Height)> sizes, long kerf) =>
        !stock.IsLimited || SheetCutter.TryCut(block, stock.ToFrame(Measures.Length.FromSteps(kerf)), sizes) is not null;

    private CuttingResult Plan()
    {
        var free = Run(_problem);
        if (!free.Complete)
        {
            return free;
        }

        long bound = Math.Min(free.LeastPossible, LeastWithNarrowKerf());
        bool canBeCut = CanCut(free, _stocks, _problem);
        if (canBeCut && (Wider >= 0 || free.Spent <= bound))
        {
            return free with { LeastPossible = bound };
        }

        var (best, limited) = Within(canBeCut ? free : null, bound);
        best ??= TakenApart(free);
        bool isRaised = limited?.LeastPossible > bound;
        return best with
        {
            LeastPossible = best.Complete ? Math.Min(best.Spent, isRaised ? limited!.LeastPossible : bound) : 0,
            Proof = isRaised ? limited!.Proof : free.Proof,
            StoppedEarly = best.StoppedEarly || free.StoppedEarly || _cancellation.IsCancellationRequested,
        };
    }

    /// <summary>How much wider the supplier's kerf is than the saw's.</summary>
    private long Wider => _order.Saw.SupplierKerf.Steps - _problem.Kerf;

    private CuttingResult Run(CuttingProblem problem) => CuttingPlanner.Plan(problem, _order.Effort, null, _cancellation);

    /// <summary>The cheapest plan of some problems whose plans are likely to keep to the limits, and one with a bound for all that do.</summary>
    private (CuttingResult? Best, CuttingResult? Limited) Within(CuttingResult? best, long bound)
    {
        CuttingResult? limited = null;
        foreach (var problem in Narrower())
        {
            var result = Run(problem);
            if (result.Complete && IsOnlyTheFence)
            {
                limited = result;
                bound = Math.Max(bound, result.LeastPossible);
            }

            if (result.Complete && (best is null || result.Spent < best.Spent) && CanCut(result, _stocks, _problem))
            {
                best = result;
            }

            if (best is not null && best.Spent <= bound)
            {
                break;
            }
        }

        return (best, limited);
    }

    /// <summary>With no cut made elsewhere the engine knows every limit, but for strips too narrow for the fence.</summary>
    private bool IsOnlyTheFence => _stocks.All(stock => stock.First is null);

    private IEnumerable<CuttingProblem> Narrower()
    {
        var fenced = _problem with { FenceReach = _order.Saw.FenceReach?.Steps };
        if (fenced.FenceReach is not null)
        {
            yield return fenced;
        }

        if (IsOnlyTheFence || Wider == 0)
        {
            yield break;
        }

        foreach (var (across, along) in Wider > 0 ? _shrinks : [.. _shrinks.Reverse()])
        {
            yield return fenced with { Stocks = Resized(_ => (-across * Wider, -along * Wider)) };
        }

        if (Wider > 0)
        {
            yield return fenced with { Kerf = _order.Saw.SupplierKerf.Steps };
        }
    }

    private ImmutableArray<Stock> Resized(Func<Stock, (long Width, long Height)> by) =>
    [
        .. _problem.Stocks.Select((stock, i) => i < _stocks.Length && _stocks[i].First is not null
            ? stock with { Width = Math.Max(1, stock.Width + by(stock).Width), Height = Math.Max(1, stock.Height + by(stock).Height) }
            : stock),
    ];

    /// <summary>
    /// A supplier's kerf narrower than the saw's lets a sheet hold more. Along any line across a sheet lie no more than so many
    /// pieces, with one cut less between them.
    /// </summary>
    private long LeastWithNarrowKerf()
    {
        long narrower = -Wider;
        if (IsOnlyTheFence || narrower <= 0)
        {
            return long.MaxValue;
        }

        long smallest = _sizes.Min(size => Math.Min(size.Width, size.Height)) + _order.Saw.SupplierKerf.Steps;
        var larger = Resized(stock => (Saved(stock.Width), Saved(stock.Height)));
        return Run(_problem with { Stocks = larger }).LeastPossible;

        long Saved(long extent) => Math.Max(0, ((extent + _order.Saw.SupplierKerf.Steps) / smallest) - 1) * narrower;
    }

    /// <summary>The plan with every pattern that cannot be cut shared out over more sheets, as far as there are any.</summary>
    private CuttingResult TakenApart(CuttingResult free)
    {
        int?[] left = [.. _problem.Stocks.Select(stock => stock.Limit)];
        int[] missing = [.. free.Missing];
        var patterns = ImmutableArray.CreateBuilder<PatternUse>();
        foreach (var use in free.Patterns.SelectMany(Apart))
        {
            int copies = use.Stock == NoStock ? 0 : Math.Min(use.Copies, left[use.Stock] ?? use.Copies);
            if (use.Stock != NoStock)
            {
                left[use.Stock] -= copies;
            }

            if (copies > 0)
            {
                patterns.Add(use with { Copies = copies });
            }

            AddPieces(use.Block, missing, use.Copies - copies);
        }

        return free with
        {
            Patterns = patterns.ToImmutable(),
            Missing = [.. missing],
            Spent = patterns.Sum(use => use.Copies * _problem.Stocks[use.Stock].Price),
        };
    }

    private IEnumerable<PatternUse> Apart(PatternUse use)
    {
        if (_cancellation.IsCancellationRequested && ++_triedAfterStop > MostAfterStop)
        {
            throw new OperationCanceledException("A plan of so many patterns cannot be taken apart after a stop.", _cancellation);
        }

        if (use.Stock >= _stocks.Length || CanCut(use.Block, _stocks[use.Stock], _sizes, _problem.Kerf))
        {
            return [use];
        }

        return use.Block is StackBlock stack ? stack.Parts.SelectMany(part => Apart(use with { Block = part })) : [Alone(use)];
    }

    /// <summary>A single piece on the cheapest board it can be cut from; a use of nothing where there is none.</summary>
    private PatternUse Alone(PatternUse use)
    {
        int piece = ((PieceBlock)use.Block).Piece;
        var ways =
            from stock in Enumerable.Range(0, _stocks.Length).OrderBy(s => _problem.Stocks[s].Price)
            where _problem.Stocks[stock].Limit is null
            from lies in Lies
            where _problem.Pieces[piece].On[stock].HasFlag(lies)
            let block = new PieceBlock(piece, lies == Turning.Turned)
            where CanCut(block, _stocks[stock], _sizes, _problem.Kerf)
            select use with { Stock = stock, Block = block };
        return ways.FirstOrDefault() ?? use with { Stock = NoStock };
    }

    private static void AddPieces(Block block, int[] counts, int copies)
    {
        if (block is StackBlock stack)
        {
            foreach (var part in stack.Parts)
            {
                AddPieces(part, counts, copies);
            }
        }
        else
        {
            counts[((PieceBlock)block).Piece] += copies;
        }
    }
}
