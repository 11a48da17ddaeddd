using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Cloth;

/// <summary>
/// The step lengths of each cloth sold by length that the engine is offered, each as a stock of its own price, so
/// that it asks for the least cost, not the least length. Where they are few they are all the lengths that could be
/// of any use. Else they are some, a few pieces long each: the lengths bought are joined end to end afterwards, and
/// every stock more costs the engine time.
/// </summary>
/// <param name="Steps">Per cloth of the order: the lengths in steps, rising; none where it is not sold by length.</param>
/// <param name="Useful">Per cloth: the longest length of any use, in steps.</param>
internal sealed record ClothReach(ImmutableArray<ImmutableArray<int>> Steps, ImmutableArray<int> Useful)
{
    // As many lengths as the engine handles without being slowed down much.
    private const int MostWhole = 8;

    // A strip of three of the longest pieces wastes little at its end, and its end is joined to the next one.
    private const int PiecesAlong = 3;
    private const int FewLengths = 4;

    /// <summary>The lengths for a batch.</summary>
    /// <param name="order">The order.</param>
    /// <param name="request">How many of each line at what size.</param>
    public static ClothReach For(Order order, CutRequest request)
    {
        var pieces = ClothPieces.Of(order, request);
        ImmutableArray<int> useful = [.. order.Cloths.Select(cloth => UsefulSteps(cloth, pieces))];
        return new ClothReach([.. order.Cloths.Zip(useful, (cloth, most) => LengthsOf(cloth, most, pieces))], useful);
    }

    /// <summary>All lengths that a plan of this cost could buy, of each cloth where they are not too many.</summary>
    /// <param name="order">The order.</param>
    /// <param name="spent">What a plan costs.</param>
    public ClothReach Widened(Order order, Money spent) => this with
    {
        Steps =
        [
            .. Enumerable.Range(0, Steps.Length).Select(i =>
                OfInterest(order, i, spent) is > 0 and <= MostWhole and var most && most > Steps[i].Length ? UpTo(most) : Steps[i]),
        ],
    };

    /// <summary>
    /// Whether no plan cheaper than this could make better use of a length that is not offered: then the engine's
    /// bound holds for all lengths.
    /// </summary>
    /// <param name="order">The order.</param>
    /// <param name="spent">What the best plan costs.</param>
    public bool Covers(Order order, Money spent) =>
        Enumerable.Range(0, Steps.Length).All(i => UpTo(OfInterest(order, i, spent)).All(Steps[i].Contains));

    private int OfInterest(Order order, int cloth, Money spent)
    {
        if (order.Cloths[cloth].Sale is not SaleByLength sale)
        {
            return 0;
        }

        // A cheaper plan costs at least one minor unit less.
        long affordable = sale.Price.Minor == 0 ? Useful[cloth] : Math.Max(0, spent.Minor - 1) / sale.Price.Minor;
        return (int)Math.Min(affordable, Useful[cloth]);
    }

    private static int UsefulSteps(ClothSupply cloth, ImmutableArray<ClothPieces> pieces)
    {
        var usable = cloth.Width - (cloth.Selvedge * 2);
        if (cloth.Sale is not SaleByLength sale || usable <= Length.Zero)
        {
            return 0;
        }

        long shelves = ShelfLength.Of(pieces, cloth, usable.Steps);
        long steps = (shelves + sale.Step.Steps - 1) / sale.Step.Steps;
        return (int)Math.Min(steps, sale.AtMost ?? 1_000_000);
    }

    private static ImmutableArray<int> LengthsOf(ClothSupply cloth, int useful, ImmutableArray<ClothPieces> pieces)
    {
        if (useful <= MostWhole || cloth.Sale is not SaleByLength sale)
        {
            return UpTo(useful);
        }

        long usable = (cloth.Width - (cloth.Selvedge * 2)).Steps;
        long longest = pieces.SelectMany(piece => piece.WaysOn(cloth, usable)).Max(way => way.Along);
        long least = StepsFor(longest, sale);
        long most = Math.Max(least + FewLengths - 1, StepsFor(PiecesAlong * longest, sale));
        return
        [
            .. Enumerable.Range(0, FewLengths)
                .Select(i => (int)Math.Min(useful, least + ((most - least) * i / (FewLengths - 1))))
                .Distinct(),
        ];
    }

    private static long StepsFor(long length, SaleByLength sale) => (length + sale.Step.Steps - 1) / sale.Step.Steps;

    private static ImmutableArray<int> UpTo(int most) => [.. Enumerable.Range(1, most)];
}
