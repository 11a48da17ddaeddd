using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Cloth;

/// <summary>
/// How many steps the longest length of each cloth sold by length has that the engine is offered. Every step length
/// from one up is a stock of its own, so that the engine asks for the least cost, not the least length.
/// </summary>
/// <param name="Steps">Per cloth of the order; 0 where it is not sold by length.</param>
internal sealed record ClothReach(ImmutableArray<int> Steps)
{
    // More stocks than this slow the engine down and win nothing: longer needs are joined from several lengths.
    private const int MostSteps = 24;
    private const int FewestSteps = 4;

    /// <summary>Some more than the area asks for, so that waste has room, and enough for the longest piece.</summary>
    public static ClothReach For(Order order, CutRequest request) =>
        new([.. order.Cloths.Select(cloth => StepsFor(cloth, order, request))]);

    /// <summary>The same, widened to what a plan of this cost could buy of each cloth, as far as is sensible.</summary>
    /// <param name="order">The order.</param>
    /// <param name="spent">What a plan costs.</param>
    public ClothReach Widened(Order order, Money spent) =>
        new([.. Steps.Zip(order.Cloths, (steps, cloth) => Math.Max(steps, Math.Min(MostSteps, Affordable(cloth, spent))))]);

    /// <summary>
    /// Whether no plan cheaper than this could use a longer length: then the engine's bound holds for all lengths.
    /// </summary>
    /// <param name="order">The order.</param>
    /// <param name="spent">What the best plan costs.</param>
    public bool Covers(Order order, Money spent) =>
        Steps.Zip(order.Cloths).All(pair => pair.First >= Affordable(pair.Second, spent));

    private static int Affordable(ClothSupply cloth, Money spent)
    {
        if (cloth.Sale is not SaleByLength sale)
        {
            return 0;
        }

        // A cheaper plan costs at least one minor unit less.
        long steps = sale.Price.Minor == 0 ? int.MaxValue : Math.Max(0, spent.Minor - 1) / sale.Price.Minor;
        return (int)Math.Min(steps, sale.AtMost ?? int.MaxValue);
    }

    private static int StepsFor(ClothSupply cloth, Order order, CutRequest request)
    {
        var usable = cloth.Width - (cloth.Selvedge * 2);
        if (cloth.Sale is not SaleByLength sale || usable <= Length.Zero)
        {
            return 0;
        }

        var pieces = request.Lines
            .Where(i => order.Panels[i].NeedsCloth && ClothFit.TurningOn(order.Panels[i], cloth) != Cutting.Turning.None)
            .Select(i => (Size: ClothFit.WithMargins(request.Sizes[i], order.Bench), Count: request.Counts[i]))
            .ToList();
        decimal area = pieces.Sum(p => (p.Size.Width * p.Size.Height).SquareMetres * p.Count);
        decimal byArea = Math.Ceiling(area / (usable * sale.Step).SquareMetres * 1.25m) + 1;
        long longest = pieces.Count == 0 ? 0 : pieces.Max(p => Length.Max(p.Size.Width, p.Size.Height).Steps);
        long forLongest = (longest + sale.Step.Steps - 1) / sale.Step.Steps;
        long steps = Math.Max(forLongest, (long)Math.Clamp(byArea, FewestSteps, MostSteps));
        return (int)Math.Min(steps, sale.AtMost ?? int.MaxValue);
    }
}
