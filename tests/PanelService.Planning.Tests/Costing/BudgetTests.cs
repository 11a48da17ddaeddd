using System.Globalization;
using System.Text;
using PanelService.Planning.Budgets;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.Costing;

public sealed class BudgetTests
{
    [Fact]
    public void Two_sheets_hold_twenty_of_the_thirty_wanted()
    {
        // Ten 8 x 10 in panels a sheet: 12.20 buys two sheets, 18.30 would be three.
        var plan = Planned(OrderOf(Line("A", 8, 10, 30) with { ShopPrice = new Money(500) }) with { Budget = new Money(1829) });

        Assert.Equal((20, 10000L, 10000L), (plan.Panels[0].Made, plan.Budget!.Worth, plan.Budget.MostPossible));
        Assert.Equal(new Money(1220), plan.Cost.Cash);
    }

    [Fact]
    public void Everything_is_made_where_the_budget_is_enough() =>
        Assert.Equal((30, true), (Planned(OrderOf(Line("A", 8, 10, 30)) with { Budget = new Money(1830) }).Panels[0].Made, Planned(OrderOf(Line("A", 8, 10, 30)) with { Budget = new Money(1830) }).Budget!.Proven));

    [Fact]
    public void Budget_for_no_panel_is_refused() =>
        Assert.Equal(CannotReason.NotEnoughStock, Assert.IsType<CannotBeMade>(Planner.Plan(OrderOf(Line("A", 8, 10, 30)) with { Budget = new Money(609) })).Reason);

    [Fact]
    public void Search_stopped_before_anything_is_known_never_says_that_the_budget_is_too_small() =>
        Assert.Throws<OperationCanceledException>(() =>
            Planner.Plan(OrderOf(Line("A", 8, 10, 30)) with { Budget = new Money(1830) }, cancellation: new CancellationToken(canceled: true)));

    [Fact]
    public void Choice_comes_with_the_plan_it_is_known_by_for_a_stop_that_leaves_no_time_for_another()
    {
        var order = OrderOf(Line("A", 8, 10, 30), Line("B", 11, 14, 9)) with { Budget = new Money(1829) };
        var search = new BudgetSearch(order, [80, 154], new Search(null, default, default));

        var made = search.Choose().Made;

        var known = search.KnownFor(made)!;
        Assert.Equal<int>(made.ToArray(), known.Best.Made.ToArray());
        Assert.True(known.Best.Complete && known.Spent <= order.Budget, $"spent {known.Spent}");
        Assert.True(made.Sum() > 10, $"made {string.Join(", ", made)}");
    }

    [Fact]
    public void Choice_is_worth_as_much_as_the_best_of_all_counts()
    {
        var faults = new StringBuilder();
        for (int seed = 0; seed < 6; seed++)
        {
            var order = Drawn(seed);
            long best = BestOfAll(order);
            var outcome = Planner.Plan(order);
            if (outcome is not Planned { Plan: var plan })
            {
                faults.Append(best == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"\nseed {seed}: nothing made, but {best} is possible"));
            }
            else if (plan.Cost.Cash > order.Budget || plan.Budget!.Worth > best || plan.Budget.MostPossible < best || !plan.Budget.Proven)
            {
                faults.Append(CultureInfo.InvariantCulture, $"\nseed {seed}: worth {plan.Budget!.Worth}, at most {plan.Budget.MostPossible}, by force {best}, cash {plan.Cost.Cash} of {order.Budget}");
            }
        }

        Assert.True(faults.Length == 0, faults.ToString());
    }

    /// <summary>Every count of both lines, each planned by itself.</summary>
    private static long BestOfAll(Order order)
    {
        long best = 0;
        var (first, second) = (order.Panels[0], order.Panels[1]);
        for (int a = 0; a <= first.Quantity; a++)
        {
            for (int b = 0; b <= second.Quantity; b++)
            {
                long worth = (a * first.Worth!.Value.Minor) + (b * second.Worth!.Value.Minor);
                PanelLine[] lines = [.. new[] { first with { Quantity = a }, second with { Quantity = b } }.Where(line => line.Quantity > 0)];
                if (worth > best && lines.Length > 0
                    && Planner.Plan(order with { Budget = null, Panels = [.. lines] }) is Planned { Plan: var plan } && plan.Cost.Cash <= order.Budget)
                {
                    best = worth;
                }
            }
        }

        return best;
    }

    private static Order Drawn(int seed)
    {
        var random = new Random(seed);
        PanelLine Drawn(string mark) => Line(mark, random.Next(7, 15), random.Next(8, 18), random.Next(2, 7)) with
        {
            Worth = new Money(random.Next(200, 1500)),
            Surface = random.Next(3) == 0 ? Surface.Cloth : Surface.Bare,
        };
        return OrderOf(Drawn("A"), Drawn("B")) with
        {
            Boards = [Hardboard with { Width = Inches(24), Height = Inches(24), Price = new Money(350), OnHand = random.Next(2) }],
            Budget = new Money(random.Next(300, 2500) + (random.Next(2) * 3900)),
        };
    }
}
