using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Curves;

/// <summary>An order made so many times over, really planned.</summary>
/// <param name="Times">How many times over.</param>
/// <param name="Panels">How many panels that is, without spares and wishes.</param>
/// <param name="Plan">The plan.</param>
public sealed record CurvePoint(int Times, int Panels, Plan Plan)
{
    /// <summary>A plan of an order made so many times over.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="times">How many times over.</param>
    public static CurvePoint Of(Plan plan, int times)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new CurvePoint(times, plan.Order.Panels.Sum(line => line.Quantity), plan);
    }

    /// <summary>What a panel costs: the ordered lines' totals ÷ panels, in minor units, unrounded.</summary>
    public decimal EachMinor => (decimal)Ordered.Sum(line => line.Total.Minor) / Panels;

    /// <summary>
    /// What the lines with a shop price come to when every tool is paid for in full by this batch alone: their totals
    /// less their parts of the tools, and the tools' prices.
    /// </summary>
    public Money MadeWithTools => new(
        Priced.Sum(line => line.Total.Minor - line.Tools.Minor) + Plan.Cost.Tools.Sum(use => use.Tool.Price.Minor));

    /// <summary>What the shop asks for the same panels; null where no line has a shop price.</summary>
    public Money? Shop => Priced.Any() ? new Money(Priced.Sum(line => line.ShopPrice!.Value.Minor * line.Quantity)) : null;

    /// <summary>How many of the panels have a shop price.</summary>
    public int PricedPanels => Priced.Sum(line => line.Quantity);

    /// <summary>Whether making costs less than buying, the tools in.</summary>
    public bool MakingIsCheaper => Shop is { } shop && MadeWithTools < shop;

    /// <summary>Whether whole rolls of a cloth are bought.</summary>
    /// <param name="cloth">The cloth's id.</param>
    public bool BuysRollOf(string cloth) => Plan.Buy.Any(purchase => purchase.SaleUnit == SaleUnit.Roll && purchase.Id == cloth);

    private IEnumerable<LineCost> Ordered
    {
        get
        {
            HashSet<string> marks = [.. Plan.Order.Panels.Select(line => line.Mark)];
            return Plan.Cost.Lines.Where(line => marks.Contains(line.Mark));
        }
    }

    private IEnumerable<LineCost> Priced => Ordered.Where(line => line.ShopPrice is not null);
}
