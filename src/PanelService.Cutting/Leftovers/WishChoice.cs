// Problem: of all plans of a small order out of the same stocks, one that holds wished pieces of the most worth as well.
// Idea:    which sets of pieces have room on the stocks is known (StockSets). So the choices of wishes are gone through, the most
//          worth first, until one has room together with everything ordered.
// Source:  see the parts.
// Cost:    see the parts; a look into the cover for each choice of wishes that has no room.
// Not:     for larger orders, nor where the work does not do.
using System.Collections.Immutable;
using PanelService.Cutting.Exact;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Leftovers;

/// <summary>A piece that is cut where there is room for it.</summary>
/// <param name="Piece">The piece; its demand is how many at most.</param>
/// <param name="Worth">What one is worth.</param>
public sealed record WishedPiece(Piece Piece, long Worth);

/// <summary>Plans small orders together with wishes.</summary>
public static class WishChoice
{
    // About a tenth of a second.
    private const long Units = 100_000;

    /// <summary>Looks for the plan.</summary>
    /// <param name="problem">What was planned.</param>
    /// <param name="result">The plan; every piece in it.</param>
    /// <param name="wishes">The wishes, those worth more first: their pieces follow on the problem's.</param>
    /// <param name="above">Only plans with wishes of more worth in all are of interest.</param>
    /// <param name="cancellation">Ends it with nothing.</param>
    /// <returns>Patterns of the same stocks that hold all pieces and the wishes; empty: none holds more, or none was found.</returns>
    public static ImmutableArray<PatternUse> Of(
        CuttingProblem problem, CuttingResult result, ImmutableArray<WishedPiece> wishes, long above, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(result);
        var both = StockSets.Used(problem, result) with { Pieces = [.. problem.Pieces, .. wishes.Select(wish => wish.Piece)] };
        if (cancellation.IsCancellationRequested || both.Pieces.Any(piece => piece.Demand == 0))
        {
            return [];
        }

        var model = new Model(both, cancellation);
        var work = new WorkMeter(Units, cancellation);
        if (StockSets.Of(model, work) is not { } sets)
        {
            return [];
        }

        int[] ordered = new int[model.Demand.Length];
        for (int i = 0; i < problem.Pieces.Length; i++)
        {
            ordered[model.TypeOf(i)] += problem.Pieces[i].Demand;
        }

        var worths = new List<long>[ordered.Length];
        for (int t = 0; t < worths.Length; t++)
        {
            worths[t] = [0, .. RisingWorths(t)];
        }

        var cover = sets.Cover();
        foreach (var (set, _) in Choices(sets.Sets, ordered, worths).Where(choice => choice.Worth > above).OrderByDescending(choice => choice.Worth).ThenBy(choice => choice.Set))
        {
            if (work.Exhausted)
            {
                return [];
            }

            if (sets.Arrange(cover, set) is { } uses)
            {
                return work.Exhausted ? [] : model.Translate(uses.OrderBy(use => use.Stock)).Patterns;
            }
        }

        return [];

        // Wishes of one size are taken in their order.
        IEnumerable<long> RisingWorths(int type)
        {
            long worth = 0;
            foreach (var (wish, i) in wishes.Select((wish, i) => (wish, i)).Where(one => model.TypeOf(problem.Pieces.Length + one.i) == type))
            {
                for (int k = 0; k < wish.Piece.Demand; k++)
                {
                    yield return worth += wish.Worth;
                }
            }
        }
    }

    /// <summary>Everything ordered with every choice of wishes.</summary>
    private static IEnumerable<(int Set, long Worth)> Choices(MultisetIndex sets, int[] ordered, List<long>[] worths)
    {
        IEnumerable<(int Set, long Worth)> choices = [(0, 0)];
        for (int t = 0; t < ordered.Length; t++)
        {
            int type = t;
            choices = choices.SelectMany(choice => worths[type].Select((worth, extra) =>
                (choice.Set + ((ordered[type] + extra) * sets.One(type)), choice.Worth + worth)));
        }

        return choices;
    }
}
