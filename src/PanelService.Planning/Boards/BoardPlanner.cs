using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Cutting.Leftovers;
using PanelService.Cutting.Settings;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Prices;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Boards;

/// <summary>Plans the boards of a batch: maps lines and boards to the cutting engine and reads its plan.</summary>
internal static class BoardPlanner
{
    /// <summary>Plans.</summary>
    /// <param name="order">The order.</param>
    /// <param name="counts">Per line: how many are to be made.</param>
    /// <param name="ready">Per line: the ready-made panels to be had here; empty: none.</param>
    /// <param name="search">Whom to tell, and when to stop.</param>
    public static BoardPlan Plan(
        Order order, ImmutableArray<int> counts, ImmutableArray<ReadyOffer?> ready, Search search) =>
        order.Panels.Zip(counts).Any(pair => pair.First.NeedsBoard && pair.Second > 0)
            ? SizeChoice.Cheaper(order, (sizes, heard) => PlanAt(order, new CutRequest(counts, sizes, ready), heard), search)
            : new BoardPlan([], [], CutOutcome.Nothing(order.Panels.Length));

    private static BoardPlan PlanAt(Order order, CutRequest request, Search search) => BoardPrices.Vary(order)
        ? BoardPrices.Cheapest(order, request, search)
        : Run(order, request, [.. BoardStock.AllOf(order).Select(stock => new BoardOffer(stock, stock.ToStock()))], search);

    /// <summary>One run of the engine.</summary>
    /// <param name="order">The order.</param>
    /// <param name="request">How many of each line at what size.</param>
    /// <param name="offers">What can be cut up, at what price.</param>
    /// <param name="search">Whom to tell, and when to stop.</param>
    public static BoardPlan Run(Order order, CutRequest request, ImmutableArray<BoardOffer> offers, Search search)
    {
        var material = new CutMaterial(
            line => order.Panels[line].NeedsBoard,
            size => (size.Width.Steps, size.Height.Steps),
            (line, stock) => offers[stock].Board.LetsOut(request.Sizes[line].Width, request.Sizes[line].Height)
                ? BoardFit.TurningOn(order.Panels[line], offers[stock].Board.Board)
                : Turning.None,
            order.Saw.Kerf.Steps);
        var task = CutTask.Of([.. offers.Select(offer => offer.Stock)], request, material);
        ImmutableArray<BoardStock> stocks = [.. offers.Select(offer => offer.Board)];
        var result = LimitedBoards.Plan(order, stocks, task.Problem, search);
        return Read(new BoardCut(stocks, task, result), order.Panels.Length);
    }

    /// <summary>The same plan with larger leftovers, where that costs nothing.</summary>
    /// <param name="order">The order.</param>
    /// <param name="plan">A whole plan without ready-made panels.</param>
    /// <param name="cancellation">Ends the search.</param>
    public static BoardPlan Gather(Order order, BoardPlan plan, CancellationToken cancellation)
    {
        if (plan.Cut is not { } cut)
        {
            return plan;
        }

        var gathered = LeftoverPlanner.Gather(
            cut.Task.Problem, cut.Result, stock => stock < cut.Stocks.Length ? cut.Stocks[stock].ToFrame(order.Saw.Kerf) : null, cancellation);
        if (cut.Stocks.Any(stock => stock.First is not null))
        {
            gathered = gathered with { Patterns = [.. gathered.Patterns.Select(use => WithFewFirstCuts(order, cut, use, cancellation))] };
        }

        return ReferenceEquals(gathered, cut.Result)
            ? plan
            : plan with
            {
                Patterns = PatternsOf(gathered, cut.Stocks),
                Cut = cut with { Result = gathered },
                Outcome = plan.Outcome with { StoppedEarly = plan.Outcome.StoppedEarly || gathered.StoppedEarly },
            };
    }

    /// <summary>The same boards cut in other patterns, that hold the lines at other sizes.</summary>
    /// <param name="order">The order.</param>
    /// <param name="plan">A whole plan without ready-made panels.</param>
    /// <param name="sizes">Per line: the size.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>A plan that buys and costs the same; null: none was found.</returns>
    public static BoardPlan? AtSizes(Order order, BoardPlan plan, ImmutableArray<CutSize> sizes, CancellationToken cancellation)
    {
        if (plan.Cut is not { } cut)
        {
            return null;
        }

        var problem = ProblemAt(cut, sizes);
        ImmutableArray<int> counts =
            [.. Enumerable.Range(0, problem.Stocks.Length).Select(stock => cut.Result.Patterns.Where(use => use.Stock == stock).Sum(use => use.Copies))];
        var result = cut.Result with { Patterns = SameStocksPlanner.Plan(problem, counts, cancellation) };
        var patterns = PatternsOf(result, cut.Stocks);
        bool same = !patterns.IsEmpty
            && BoardPrices.Cost(patterns) == BoardPrices.Cost(plan.Patterns)
            && order.Boards.All(board => Purchases.CountOf(board, patterns) == Purchases.CountOf(board, plan.Patterns));
        return same && LimitedBoards.CanCut(result, cut.Stocks, problem)
            ? plan with { Patterns = patterns, Cut = new BoardCut(cut.Stocks, cut.Task with { Problem = problem }, result) }
            : null;
    }

    /// <summary>The same plan for whatever is planned of its boards from now on: that its pieces are no smaller than they need be.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="sizes">Per line: a size at which its patterns hold everything.</param>
    public static BoardPlan HeldTo(BoardPlan plan, ImmutableArray<CutSize> sizes) => plan.Cut is { } cut
        ? plan with { Cut = cut with { Task = cut.Task with { Problem = ProblemAt(cut, sizes) } } }
        : plan;

    /// <summary>The problem with its lines at other sizes.</summary>
    /// <param name="cut">The problem.</param>
    /// <param name="sizes">Per line: the size.</param>
    public static CuttingProblem ProblemAt(BoardCut cut, ImmutableArray<CutSize> sizes) => cut.Task.Problem with
    {
        Pieces = [.. cut.Task.Problem.Pieces.Select((piece, i) => AtSize(piece, sizes[cut.Task.LineOf[i]], cut.Stocks))],
    };

    private static Piece AtSize(Piece piece, CutSize size, ImmutableArray<BoardStock> stocks) => piece with
    {
        Width = size.Width.Steps,
        Height = size.Height.Steps,
        On = [.. piece.On.Select((turning, stock) => stock >= stocks.Length || stocks[stock].LetsOut(size.Width, size.Height) ? turning : Turning.None)],
    };

    /// <summary>The same boards cut in other patterns, that take few sizes.</summary>
    /// <param name="saw">What is kept.</param>
    /// <param name="plan">A whole plan without ready-made panels.</param>
    /// <param name="work">How long to look, in the deterministic time of the programmes.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>Other plans of the same price.</returns>
    public static ImmutableArray<BoardPlan> AtFewSizes(SawSettings saw, BoardPlan plan, double work, CancellationToken cancellation)
    {
        if (plan.Cut is not { } cut || cut.Stocks.Any(stock => stock.First is not null))
        {
            return [];
        }

        return
        [
            .. FewSizesPlanner.Find(cut.Task.Problem, cut.Result, (saw.SmallestKeptWidth.Steps, saw.SmallestKeptHeight.Steps), work, cancellation)
                .Where(other => LimitedBoards.CanCut(other, cut.Stocks, cut.Task.Problem))
                .Select(other => plan with { Patterns = PatternsOf(other, cut.Stocks) }),
        ];
    }

    private static PatternUse WithFewFirstCuts(Order order, BoardCut cut, PatternUse use, CancellationToken cancellation) =>
        use.Stock < cut.Stocks.Length && cut.Stocks[use.Stock].First is not null
            ? use with { Block = FirstCutPlanner.Fewer(use.Block, cut.Stocks[use.Stock].ToFrame(order.Saw.Kerf), cut.Task.Problem.Pieces, use.Stock, cancellation) }
            : use;

    private static BoardPlan Read(BoardCut cut, int lines) =>
        new(PatternsOf(cut.Result, cut.Stocks), cut.Task.LineOf, CutOutcome.Of(cut.Result, cut.Task, lines)) { Cut = cut };

    /// <summary>The engine's patterns by board; what comes after the boards among its stocks is not cut.</summary>
    /// <param name="result">The engine's plan.</param>
    /// <param name="stocks">The boards.</param>
    public static ImmutableArray<BoardPattern> PatternsOf(CuttingResult result, ImmutableArray<BoardStock> stocks) =>
    [
        .. result.Patterns
            .Where(use => use.Stock < stocks.Length)
            .GroupBy(use => (Stock: stocks.IndexOf(stocks[use.Stock]), use.Block, use.ForLeftover))
            .OrderBy(group => group.Key.Stock)
            .Select(group => new BoardPattern(stocks[group.Key.Stock], group.Key.Block, group.Sum(use => use.Copies)) { ForLeftover = group.Key.ForLeftover }),
    ];
}
