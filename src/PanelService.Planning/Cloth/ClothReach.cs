using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Cloth;

/// <summary>
/// The step lengths of each cloth sold by length that the engine is offered, each as a stock of its own price, so
/// that it asks for the least cost, not the least length. For a small batch they are all lengths it could need. For
/// a large one they are a few, some pieces long each: the lengths bought are joined end to end afterwards, and
/// every stock more costs the engine time.
/// </summary>
/// <param name="Steps">Per cloth of the order: the lengths in steps, rising; none where it is not sold by length.</param>
internal sealed record ClothReach(ImmutableArray<ImmutableArray<int>> Steps)
{
    // As many lengths as the engine handles without being slowed down much.
    private const int MostWhole = 8;

    // A strip of three of the longest pieces wastes little at its end, and its end is joined to the next one.
    private const int PiecesAlong = 3;
    private const int FewLengths = 4;

    /// <summary>The lengths for a batch, from the area it asks for.</summary>
    public static ClothReach For(Order order, CutRequest request) =>
        new([.. order.Cloths.Select(cloth => LengthsOf(cloth, order, request))]);

    /// <summary>All lengths that a plan of this cost could buy, of each cloth where they are not too many.</summary>
    /// <param name="order">The order.</param>
    /// <param name="spent">What a plan costs.</param>
    public ClothReach Widened(Order order, Money spent) => new(
        [.. Steps.Zip(order.Cloths, (steps, cloth) => Affordable(cloth, spent) is > 0 and <= MostWhole and var most && most > steps.Length ? UpTo(most) : steps)]);

    /// <summary>
    /// Whether no plan cheaper than this could use a length that is not offered: then the engine's bound holds for
    /// all lengths.
    /// </summary>
    /// <param name="order">The order.</param>
    /// <param name="spent">What the best plan costs.</param>
    public bool Covers(Order order, Money spent) =>
        Steps.Zip(order.Cloths).All(pair => UpTo(Affordable(pair.Second, spent)).All(pair.First.Contains));

    private static int Affordable(ClothSupply cloth, Money spent)
    {
        if (cloth.Sale is not SaleByLength sale)
        {
            return 0;
        }

        // A cheaper plan costs at least one minor unit less. Past some thousand steps the number itself is of no interest.
        long steps = sale.Price.Minor == 0 ? 10_000 : Math.Clamp((spent.Minor - 1) / sale.Price.Minor, 0, 10_000);
        return (int)Math.Min(steps, sale.AtMost ?? steps);
    }

    private static ImmutableArray<int> LengthsOf(ClothSupply cloth, Order order, CutRequest request)
    {
        var usable = cloth.Width - (cloth.Selvedge * 2);
        if (cloth.Sale is not SaleByLength sale || usable <= Length.Zero)
        {
            return [];
        }

        var pieces = request.Lines
            .Where(i => order.Panels[i].NeedsCloth && ClothFit.TurningOn(order.Panels[i], cloth) != Cutting.Turning.None)
            .Select(i => (Size: ClothFit.WithMargins(request.Sizes[i], order.Bench), Count: request.Counts[i]))
            .ToList();
        if (pieces.Count == 0)
        {
            return [];
        }

        decimal area = pieces.Sum(p => (p.Size.Width * p.Size.Height).SquareMetres * p.Count);
        decimal byArea = (area / (usable * sale.Step).SquareMetres * 1.2m) + 2;
        long longest = pieces.Max(p => Length.Max(p.Size.Width, p.Size.Height).Steps);
        long least = (longest + sale.Step.Steps - 1) / sale.Step.Steps;
        return WithinLimit(Math.Max(byArea, least) <= MostWhole ? UpTo((int)Math.Max(byArea, least)) : Few(longest, least, sale), sale);
    }

    private static ImmutableArray<int> Few(long longest, long least, SaleByLength sale)
    {
        long most = Math.Max(least + FewLengths - 1, ((PiecesAlong * longest) + sale.Step.Steps - 1) / sale.Step.Steps);
        return [.. Enumerable.Range(0, FewLengths).Select(i => (int)(least + ((most - least) * i / (FewLengths - 1))))];
    }

    private static ImmutableArray<int> WithinLimit(ImmutableArray<int> lengths, SaleByLength sale)
    {
        ImmutableArray<int> within = [.. lengths.Where(steps => sale.AtMost is null || steps <= sale.AtMost)];
        return within.IsEmpty && sale.AtMost > 0 ? UpTo(sale.AtMost.Value) : within;
    }

    private static ImmutableArray<int> UpTo(int most) => [.. Enumerable.Range(1, most)];
}
