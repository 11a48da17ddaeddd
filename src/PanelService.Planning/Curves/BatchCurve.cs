using System.Collections.Immutable;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Curves;

/// <summary>What an order costs when it is made 1, 2, … times over, each really planned.</summary>
/// <param name="Order">The order, once.</param>
/// <param name="Points">One for each number of times, rising from 1.</param>
/// <param name="EndsBecause">Why it ends before the number asked for; null where it does not.</param>
public sealed record BatchCurve(Order Order, ImmutableArray<CurvePoint> Points, string? EndsBecause)
{
    /// <summary>Where another number of a good is bought than one time before: the first point is held against buying nothing.</summary>
    public IEnumerable<CurveStep> Steps => Points.SelectMany((point, i) => StepsTo(point, i == 0 ? [] : Points[i - 1].Plan.Buy));

    /// <summary>
    /// From where on the roll beats cloth by length: rolls are bought there and at every later point, and at the point before
    /// none; null where no line can have the same cloth either way, or the roll never wins. Linen by length and cotton by the roll
    /// do not compete where every line asks for one of them.
    /// </summary>
    public CurvePoint? RollFrom => From(point => RollsThatCompete.Any(cloth => point.BuysRollOf(cloth.Id)));

    /// <summary>From where on making costs less than buying, the tools in, at every point; null where it never does.</summary>
    public CurvePoint? MakingFrom => From(point => point.MakingIsCheaper);

    private IEnumerable<ClothSupply> RollsThatCompete => Order.Cloths.Where(cloth => cloth.Sale is SaleByRoll && Order.Panels.Any(line =>
        line.NeedsCloth
        && KindMatch.Serves(line.Cloth, cloth.Kind)
        && Order.Cloths.Any(other => other.Sale is SaleByLength && KindMatch.Serves(line.Cloth, other.Kind))));

    private CurvePoint? From(Func<CurvePoint, bool> holds) =>
        Points.Reverse().TakeWhile(holds).LastOrDefault();

    private static IEnumerable<CurveStep> StepsTo(CurvePoint point, ImmutableArray<Purchase> before) =>
        point.Plan.Buy.Concat(before)
            .DistinctBy(KeyOf)
            .Where(purchase => purchase.SaleUnit is not SaleUnit.Delivery)
            .Select(purchase => new CurveStep(point.Times, purchase, Count(before, purchase), Count(point.Plan.Buy, purchase)))
            .Where(step => step.From != step.To);

    // A good keeps its name whatever its price at that number.
    private static (string, string, SaleUnit) KeyOf(Purchase purchase) => (purchase.Id, purchase.Name, purchase.SaleUnit);

    private static int Count(ImmutableArray<Purchase> buy, Purchase of) =>
        buy.Where(purchase => KeyOf(purchase) == KeyOf(of)).Sum(purchase => purchase.Quantity);
}

/// <summary>A good of which another number is bought than one time before.</summary>
/// <param name="Times">At how many times over.</param>
/// <param name="Good">The good, as on the shopping list it stands on.</param>
/// <param name="From">How many are bought one time before.</param>
/// <param name="To">How many are bought here.</param>
public sealed record CurveStep(int Times, Purchase Good, int From, int To);
