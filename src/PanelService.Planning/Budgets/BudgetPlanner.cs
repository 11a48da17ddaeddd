using System.Collections.Immutable;
using System.Globalization;
using PanelService.Cutting;
using PanelService.Planning.Batches;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Prices;

namespace PanelService.Planning.Budgets;

/// <summary>
/// An order with a budget: what is wanted is at most what is made. What is on hand counts nothing, since the question is
/// the cash; a panel counts by its worth, else its shop price, or all by area where a line has neither.
/// </summary>
internal static class BudgetPlanner
{
    /// <summary>Plans.</summary>
    /// <param name="order">The order, its budget set.</param>
    /// <param name="plan">Plans an order without a budget: by a search, or by what one has chosen before.</param>
    /// <param name="cancellation">Ends the search early.</param>
    /// <exception cref="OperationCanceledException">It was ended before anything was known to be within the budget.</exception>
    public static PlanOutcome Plan(Order order, Func<Order, BatchChoice?, PlanOutcome> plan, CancellationToken cancellation)
    {
        var free = WithoutValues(order);
        var priced = Tax.AddedTo(free);
        bool byArea = order.Panels.Any(line => line.Worth is null && line.ShopPrice is null);
        var worths = order.Panels.Select(line => WorthOf(line, byArea)).ToImmutableArray();
        var search = new BudgetSearch(priced, worths, new Search(null, default, cancellation));
        var (made, most) = search.Choose();
        if (made.All(count => count == 0))
        {
            // What was not found for want of time may be within the budget all the same.
            cancellation.ThrowIfCancellationRequested();
            return Nothing(order);
        }

        var answer = new BudgetAnswer(
            order.Budget!.Value,
            byArea,
            made.Zip(worths, (count, worth) => count * worth).Sum(),
            most,
            [.. order.Panels.Zip(made, (line, count) => new BudgetLine(line.Mark, line.Quantity, count))]);
        var chosen = CountCash.Of(free, made);
        var known = search.KnownFor(made);
        var outcome = plan(chosen, cancellation.IsCancellationRequested ? known : null);

        // A search of another effort, or a stopped one, may come to another plan: the one that the choice was made by is within the budget.
        outcome = outcome is Planned planned && planned.Plan.Cost.Cash <= order.Budget
            ? outcome
            : plan(chosen with { Effort = Effort.Quick }, known);
        return outcome is Planned within ? new Planned(within.Plan with { Budget = answer }) : outcome;
    }

    private static long WorthOf(PanelLine line, bool byArea) => byArea
        ? (long)Math.Round(line.Area.SquareMetres * 1_000_000)
        : (line.Worth ?? line.ShopPrice)!.Value.Minor;

    private static Order WithoutValues(Order order) => order with
    {
        Boards = [.. order.Boards.Select(board => board with { Value = Money.Zero })],
        Cloths = [.. order.Cloths.Select(cloth => cloth with { Remnants = [.. cloth.Remnants.Select(remnant => remnant with { Value = Money.Zero })] })],
        Adhesives = [.. order.Adhesives.Select(liquid => liquid with { Value = Money.Zero })],
        Primers = [.. order.Primers.Select(liquid => liquid with { Value = Money.Zero })],
        Strips = [.. order.Strips.Select(strip => strip with { Value = Money.Zero })],
    };

    private static CannotBeMade Nothing(Order order) => new(
        CannotReason.NotEnoughStock,
        string.Create(CultureInfo.InvariantCulture, $"A budget of {order.Budget!.Value.In(order.Currency.MinorDigits)} {order.Currency.Code} is not enough for a single panel of this order. Raise it, or add cheaper goods."),
        [.. order.Panels.Select(line => new UnmakeableLine(line.Mark, "no plan for one is known within the budget", line.Quantity))]);
}
