// Problem: the rails and bars of all cradles out of strips of given lengths, at the least cost: one-dimensional cutting
//          stock with a kerf.
// Idea:    a strip is a sheet as wide as a step: the cutting engine solves it as it stands, bound and proof included.
// Source:  Gilmore and Gomory, Operations Research 9, 1961; see Cutting/Search.
// Cost:    one engine run where a line asks for a cradle; nothing otherwise.
// Not:     strips of different sections side by side: all of an order's strips are alike but for their length.
using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Prices;
using PanelService.Planning.Sizes;
using PanelService.Planning.Strength;

namespace PanelService.Planning.Strips;

/// <summary>Plans the strips of a batch.</summary>
internal static class StripPlanner
{
    private const long Across = 1;

    /// <summary>Plans.</summary>
    /// <param name="order">The order.</param>
    /// <param name="made">Per line: how many are made.</param>
    /// <param name="cancellation">Ends the search.</param>
    public static StripPlan Plan(Order order, ImmutableArray<int> made, CancellationToken cancellation) =>
        Plan(order, made, line => CradleDesign.Of(order, line), cancellation);

    /// <summary>Plans for cradles that are designed already.</summary>
    /// <param name="order">The order.</param>
    /// <param name="made">Per line: how many are made.</param>
    /// <param name="cradleOf">A line's cradle; null where it gets none.</param>
    /// <param name="cancellation">Ends the search.</param>
    public static StripPlan Plan(Order order, ImmutableArray<int> made, Func<PanelLine, Cradle?> cradleOf, CancellationToken cancellation)
    {
        var wanted = Wanted(order, made, cradleOf);
        ImmutableArray<Warning> warnings = [.. Warnings(order, made, (wanted, cradleOf))];
        if (wanted.IsEmpty || order.Strips.IsEmpty)
        {
            return StripPlan.None(order.Panels.Length) with { Warnings = warnings };
        }

        var plan = StripPrices.Vary(order)
            ? StripPrices.Cheapest(order, stocks => Run(order, stocks, wanted, cancellation), cancellation)
            : Run(order, StripStock.AllOf(order), wanted, cancellation);
        return plan with { Warnings = warnings };
    }

    private static StripPlan Run(Order order, ImmutableArray<StripStock> stocks, ImmutableArray<WantedStrip> wanted, CancellationToken cancellation)
    {
        // With nothing to cut from, everything is missing: the engine wants at least one stock.
        if (stocks.IsEmpty)
        {
            return StripPlan.None(order.Panels.Length) with { Outcome = CutOutcome.Nothing(order.Panels.Length) with { Missing = MissingOf(order, wanted, [.. wanted.Select(piece => piece.Count)]) } };
        }

        var turning = Enumerable.Repeat(Turning.Upright, stocks.Length).ToImmutableArray();
        var problem = new CuttingProblem(
            [.. stocks.Select(stock => new Stock(stock.Strip.Length.Steps, Across, stock.Price.Minor, stock.Limit))],
            [.. wanted.Select(piece => new Piece(piece.Length.Steps, Across, piece.Count, turning))],
            order.Saw.Kerf.Steps);
        return Read(order, stocks, wanted, CuttingPlanner.Plan(problem, order.Effort, progress: null, cancellation));
    }

    private static ImmutableArray<WantedStrip> Wanted(Order order, ImmutableArray<int> made, Func<PanelLine, Cradle?> cradleOf) =>
    [
        .. from line in Enumerable.Range(0, order.Panels.Length)
           where order.Panels[line].Cradle && made[line] > 0
           from strip in cradleOf(order.Panels[line])?.Strips ?? []
           select new WantedStrip(line, strip.Length, checked(strip.Count * made[line])),
    ];

    private static IEnumerable<Warning> Warnings(Order order, ImmutableArray<int> made, (ImmutableArray<WantedStrip> Strips, Func<PanelLine, Cradle?> CradleOf) cradles)
    {
        var (wanted, cradleOf) = cradles;
        if (!wanted.IsEmpty && order.Strips.IsEmpty)
        {
            yield return Missing(order, wanted);
        }

        foreach (var line in order.Panels.Where((line, i) => line.Cradle && made[i] > 0 && cradleOf(line) is null))
        {
            yield return new Warning("cradle-too-small", $"{line.Mark} is too small for a cradle of strips this wide; it gets none.");
        }
    }

    private static Warning Missing(Order order, ImmutableArray<WantedStrip> wanted) => new(
        "strips-missing",
        $"No strips of this order are there for the cradles of {string.Join(", ", wanted.Select(piece => order.Panels[piece.Line].Mark).Distinct())}; they cost nothing in this plan. Add strips to have them counted.");

    private static StripPlan Read(
        Order order, ImmutableArray<StripStock> stocks, ImmutableArray<WantedStrip> wanted, CuttingResult result)
    {
        var layouts = result.Patterns
            .Select(use => (use.Stock, use.Copies, Pieces: PiecesOf(use.Block).Order().ToArray()))
            .GroupBy(use => (First: FirstLike(stocks, use.Stock), Pieces: string.Join(',', use.Pieces)))
            .Select(group => (Stock: group.Key.First, Copies: group.Sum(use => use.Copies), group.First().Pieces))
            .OrderBy(use => use.Stock)
            .Select((use, i) => Lay(order, (stocks[use.Stock], i + 1, use.Copies), [.. use.Pieces.Select(piece => wanted[piece])]));
        var outcome = new CutOutcome(new Money(result.Spent), new Money(result.LeastPossible), MissingOf(order, wanted, result.Missing), [.. new int[order.Panels.Length]])
        {
            StoppedEarly = result.StoppedEarly,
        };
        return new StripPlan([.. layouts], outcome, []);
    }

    // Strips partly paid for stand there twice; cut, they are alike.
    private static int FirstLike(ImmutableArray<StripStock> stocks, int stock) => Enumerable.Range(0, stocks.Length)
        .First(i => stocks[i].Strip.Id == stocks[stock].Strip.Id && stocks[i].Source == stocks[stock].Source);

    private static ImmutableArray<int> MissingOf(Order order, ImmutableArray<WantedStrip> wanted, ImmutableArray<int> missing)
    {
        var perLine = new int[order.Panels.Length];
        foreach (var (piece, count) in wanted.Zip(missing))
        {
            perLine[piece.Line] += count;
        }

        return [.. perLine];
    }

    private static IEnumerable<int> PiecesOf(Block block) => block switch
    {
        PieceBlock piece => [piece.Piece],
        StackBlock stack => stack.Parts.SelectMany(PiecesOf),
        _ => throw new InvalidOperationException($"A block of an unknown sort: {block.GetType().Name}."),
    };

    private static StripLayout Lay(Order order, (StripStock Stock, int Number, int Copies) use, ImmutableArray<WantedStrip> wanted)
    {
        var pieces = ImmutableArray.CreateBuilder<StripPiece>(wanted.Length);
        var at = Length.Zero;
        foreach (var piece in wanted)
        {
            pieces.Add(new StripPiece(order.Panels[piece.Line].Mark, at, piece.Length));
            at += piece.Length + order.Saw.Kerf;
        }

        // The last cut may hang over the end: what is left then is all dust.
        var rest = Length.Max(use.Stock.Strip.Length - at, Length.Zero);
        return new StripLayout
        {
            Number = use.Number,
            Copies = use.Copies,
            Strip = use.Stock.Strip,
            Source = use.Stock.Source,
            Pieces = pieces.MoveToImmutable(),
            Rest = rest,
            RestKept = rest >= order.Strength.SmallestStrip,
        };
    }

    private sealed record WantedStrip(int Line, Length Length, int Count);
}
