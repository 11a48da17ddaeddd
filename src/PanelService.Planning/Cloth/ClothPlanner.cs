// Problem: pieces of cloth out of remnants, whole rolls, and cloth sold by length, at the least cost.
// Idea:    the engine for lengths (LengthPlanner) knows sheets and steps side by side: any number of steps is one length,
//          and its bound holds for all of them. Everything on shelves of one cloth (ShelfPlanner) is the price to beat.
//          Batches of very many pieces are for the cutting engine without kerf: each step length of a cloth sold by
//          length is a stock of its own price, and lengths are joined end to end where that saves steps. Its bound speaks
//          of the lengths it was offered: it holds for all lengths where no cheaper plan could afford a longer one
//          (ClothReach.Covers); else ClothBound, which knows no longest length, takes its place. Of very many stocks it is
//          offered only those that promise most (ClothStocks.Promising).
// Cost:    one run of an engine for each set of sizes, of the cutting engine a second one where the first reach turns out
//          too short.
// Not:     steps sold at most so often are a limit on their sum, which the cutting engine sees only for each length by
//          itself: where its plan breaks the sum, a plan out of one length of all there is takes its place.
using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Cloth.Bounds;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Prices;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Cloth;

/// <summary>Plans the cloth of a batch.</summary>
internal static class ClothPlanner
{
    // Ruin and recreate, which makes the plans there, is for as many pieces.
    private const int MostByLengths = 400;

    /// <summary>Plans.</summary>
    /// <param name="order">The order.</param>
    /// <param name="counts">Per line: how many are to be made.</param>
    /// <param name="ready">Per line: the ready-made panels to be had here; empty: none.</param>
    /// <param name="search">Whom to tell, and when to stop.</param>
    public static ClothPlan Plan(
        Order order, ImmutableArray<int> counts, ImmutableArray<ReadyOffer?> ready, Search search) =>
        IsWanted(order, counts)
            ? SizeChoice.Cheaper(order, (sizes, heard) => PlanAt(order, new CutRequest(counts, sizes, ready), heard), search)
            : new ClothPlan([], [], CutOutcome.Nothing(order.Panels.Length));

    /// <summary>Whether any of the panels to be made wants cloth.</summary>
    /// <param name="order">The order.</param>
    /// <param name="counts">Per line: how many are to be made.</param>
    public static bool IsWanted(Order order, ImmutableArray<int> counts) =>
        order.Panels.Zip(counts).Any(pair => pair.First.NeedsCloth && pair.Second > 0);

    private static ClothPlan PlanAt(Order order, CutRequest request, Search search) => ClothPrices.Vary(order)
        ? ClothPrices.Cheapest(order, request, search)
        : Run(order, request, search);

    /// <summary>Plans at one price for each cloth; what is paid for costs nothing.</summary>
    /// <param name="order">The order.</param>
    /// <param name="request">How many of each line at what size.</param>
    /// <param name="search">Whom to tell, and when to stop.</param>
    public static ClothPlan Run(Order order, CutRequest request, Search search)
    {
        var reach = ClothReach.For(order, request);
        var shelves = ShelfPlanner.Plans(order, ClothPieces.Of(order, request))
            .OrderBy(plan => ClothPrices.InRun(order, plan)).FirstOrDefault();
        return PlanByLengths(order, request, (reach, shelves.IsDefault ? [] : shelves), search)
            ?? PlanByStocks(ClothPrices.Unpaid(order), request, reach, search);
    }

    /// <summary>Plans with the engine for lengths; null where there are too many pieces, or it found no plan.</summary>
    private static ClothPlan? PlanByLengths(
        Order order, CutRequest request, (ClothReach Reach, ImmutableArray<ClothPattern> Shelves) known, Search search)
    {
        if (ClothStocks.HasTooManyRemnants(order)
            || request.Lines.Where(line => order.Panels[line].NeedsCloth).Sum(line => (long)request.Counts[line]) > MostByLengths)
        {
            return null;
        }

        var task = new LengthTask(order, request, known.Reach);
        long below = known.Shelves.IsEmpty ? long.MaxValue : ClothPrices.InRun(order, known.Shelves).Minor;
        var result = LengthPlanner.Plan(task.Problem, order.Effort, below, search.Progress, search.Cancellation);
        return result.Complete || !known.Shelves.IsEmpty ? task.PlanOf(result, known.Shelves) with { PaidApart = true } : null;
    }

    private static ClothPlan PlanByStocks(Order order, CutRequest request, ClothReach reach, Search search)
    {
        var all = ClothStocks.Of(order, reach);
        var pieces = ClothPieces.Of(order, request);
        var promising = ClothStocks.Promising(all, pieces);
        var stocks = ClothStocks.WithoutSmallRemnants(promising, pieces);
        bool sawAll = stocks.Length == all.Length;
        var plan = Solve(order, request, stocks, search);
        if (!plan.Outcome.Complete && stocks.Length < promising.Length)
        {
            plan = Solve(order, request, promising, search);
        }

        var wider = reach.Widened(order, plan.Outcome.Spent);
        if (sawAll && plan.Outcome.Complete && !Same(reach, wider))
        {
            reach = wider;
            plan = Solve(order, request, ClothStocks.Of(order, reach), search);
        }

        // A plan out of fewer stocks has no say about the others: the bound is the first one's.
        (ClothReach, Money)? engine = sawAll ? (reach, plan.Outcome.LeastPossible) : null;
        if (!KeepsLimits(order, plan))
        {
            plan = Solve(order, request, ClothStocks.WithinLimits(order, reach), search);
        }

        plan = CheaperShelves(order, request, plan);
        return plan with { Outcome = plan.Outcome.WithBound(Bound(order, request, plan.Outcome, engine, search.Cancellation)) };
    }

    private static ClothPlan CheaperShelves(Order order, CutRequest request, ClothPlan plan)
    {
        var shelves = ShelfPlanner.Plans(order, ClothPieces.Of(order, request)).OrderBy(PriceOf).FirstOrDefault();
        return shelves.IsDefaultOrEmpty || (plan.Outcome.Complete && plan.Outcome.Spent <= PriceOf(shelves))
            ? plan
            : plan with { Patterns = shelves, Outcome = plan.Outcome.Instead(PriceOf(shelves)) };
    }

    private static bool Same(ClothReach a, ClothReach b) => a.Steps.Zip(b.Steps).All(pair => pair.First.SequenceEqual(pair.Second));

    private static ClothPlan Solve(Order order, CutRequest request, ImmutableArray<ClothStock> stocks, Search search)
    {
        var pieces = ClothPieces.Of(order, request);
        var task = CutTask.Of([.. stocks.Select(stock => stock.ToStock(pieces))], request, Material(order, stocks));
        var result = CuttingPlanner.Plan(task.Problem, order.Effort, search.Progress, search.Cancellation);
        var found = PatternsOf(result.Patterns, stocks);
        var joined = StripJoiner.Join(found, [.. task.Problem.Pieces.Select(piece => (piece.Width, piece.Height))]);
        var outcome = CutOutcome.Of(result, task, order.Panels.Length);
        return new ClothPlan(joined, task.LineOf, outcome with { Spent = outcome.Spent - PriceOf(found) + PriceOf(joined) });
    }

    /// <summary>The same cloths cut in other patterns, that hold the lines at other sizes.</summary>
    /// <param name="order">The order.</param>
    /// <param name="plan">A whole plan without ready-made panels.</param>
    /// <param name="request">How many of each line at what size.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>A plan out of the same cloths; null: none was found.</returns>
    public static ClothPlan? AtSizes(Order order, ClothPlan plan, CutRequest request, CancellationToken cancellation)
    {
        var used = plan.Patterns.GroupBy(pattern => pattern.Stock).ToImmutableArray();
        ImmutableArray<ClothStock> stocks = [.. used.Select(group => group.Key)];
        ImmutableArray<int> counts = [.. used.Select(group => group.Sum(pattern => pattern.Copies))];
        var task = CutTask.Of([.. stocks.Select(stock => new Stock(stock.UsableWidth.Steps, stock.Length.Steps, Price: 0, Limit: null))], request, Material(order, stocks));
        var found = SameStocksPlanner.Plan(task.Problem, counts, cancellation);
        bool same = !found.IsEmpty && counts.Select((count, stock) => found.Where(use => use.Stock == stock).Sum(use => use.Copies) == count).All(equal => equal);
        return same ? plan with { Patterns = PatternsOf(found, stocks), LineOf = task.LineOf } : null;
    }

    /// <summary>How lines are cut from cloths.</summary>
    /// <param name="order">The order.</param>
    /// <param name="stocks">The cloths.</param>
    public static CutMaterial Material(Order order, ImmutableArray<ClothStock> stocks) => new(
        line => order.Panels[line].NeedsCloth,
        size =>
        {
            var piece = ClothFit.WithMargins(size, order.Bench);
            return (piece.Width.Steps, piece.Height.Steps);
        },
        (line, stock) => ClothFit.TurningOn(order.Panels[line], stocks[stock].Cloth),
        Kerf: 0);

    /// <summary>The engine's patterns by cloth; what comes after the cloths among its stocks is not cut.</summary>
    /// <param name="patterns">The engine's patterns.</param>
    /// <param name="stocks">The cloths.</param>
    public static ImmutableArray<ClothPattern> PatternsOf(ImmutableArray<PatternUse> patterns, ImmutableArray<ClothStock> stocks) =>
    [
        .. patterns
            .Where(use => use.Stock < stocks.Length)
            .GroupBy(use => (use.Stock, use.Block, use.ForLeftover))
            .OrderBy(group => group.Key.Stock)
            .Select(group => new ClothPattern(stocks[group.Key.Stock], group.Key.Block, group.Sum(use => use.Copies)) { ForLeftover = group.Key.ForLeftover }),
    ];

    private static Money PriceOf(ImmutableArray<ClothPattern> patterns) =>
        patterns.Aggregate(Money.Zero, (sum, pattern) => sum + (pattern.Stock.Price * pattern.Copies));

    private static Money Bound(
        Order order, CutRequest request, CutOutcome outcome, (ClothReach Reach, Money Least)? engine, CancellationToken cancellation)
    {
        if (!outcome.Complete)
        {
            return Money.Zero;
        }

        var least = ClothBound.Of(order, request, outcome.Spent, cancellation);
        return engine is { } saw && saw.Least <= outcome.Spent && saw.Least > least && saw.Reach.Covers(order, outcome.Spent) ? saw.Least : least;
    }

    private static bool KeepsLimits(Order order, ClothPlan plan) => order.Cloths.All(cloth =>
        cloth.Sale is not SaleByLength { AtMost: { } most }
        || plan.Patterns.Where(p => p.Stock.Cloth.Id == cloth.Id).Sum(p => p.Copies * (p.Stock.Steps ?? 0)) <= most);
}
