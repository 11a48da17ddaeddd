using PanelService.Benchmarks.Suites;
using PanelService.Planning;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Benchmarks.Running;

/// <summary>
/// Measures the saw step alone: distinct settings stand where other suites have money, the bound is that of the proof,
/// and "known" is 60 % of what the first-found plan takes.
/// </summary>
public static class SawRunner
{
    /// <summary>A suite's way of running, given its cases.</summary>
    /// <param name="cases">Its cases, given the command line.</param>
    public static Func<Options, IEnumerable<Measurement>> Of(Func<Options, IEnumerable<CuttingCase>> cases) => options =>
        CaseFilter.Run(cases(options), one => one.Name, one => Measure(one, options), options);

    private static Measurement Measure(CuttingCase one, Options options)
    {
        var order = OrderOf(one) with { Effort = options.Effort };
        var (first, step) = Planner.SawStep(order);
        int before = FirstFoundRun.Settings(first);
        var (plan, cpu, clock) = Timing.Of(step);
        return new Measurement(one.Group, one.Name, plan.Proof.Settings, plan.Proof.LeastPossible, cpu, clock)
        {
            Known = (long)Math.Floor(before * 0.6),
            Met = plan.Proof.Settings <= before * 0.6,
            Fault = Fault(first, plan.Sheets),
            Beside = [("changes", plan.Proof.Changes, plan.Proof.LeastChanges), ("cuts", plan.Proof.Cuts, plan.Proof.LeastCuts)],
        };
    }

    /// <summary>Extra cost would be a kept offcut that is no longer kept, or a panel lost.</summary>
    private static string? Fault(IReadOnlyList<SheetLayout> first, IReadOnlyList<SheetLayout> last)
    {
        Length[] panels = [.. PanelSides(first)];
        if (!panels.SequenceEqual(PanelSides(last)))
        {
            return "other panels";
        }

        return BoardCost(first) != BoardCost(last) ? "other cost" : Kept(last) < Kept(first) ? "less is kept" : null;
    }

    private static IEnumerable<Length> PanelSides(IEnumerable<SheetLayout> sheets) => sheets
        .SelectMany(sheet => sheet.Pieces.Select(piece => (piece.Mark, Short: Length.Min(piece.Width, piece.Height), Long: Length.Max(piece.Width, piece.Height), sheet.Copies)))
        .GroupBy(piece => piece.Mark).OrderBy(group => group.Key, StringComparer.Ordinal)
        .SelectMany(group => new[] { group.First().Short, group.First().Long, Length.FromSteps(group.Sum(piece => piece.Copies)) });

    private static long BoardCost(IEnumerable<SheetLayout> sheets) => sheets.Sum(sheet => sheet.CostEach.Minor * sheet.Copies);

    private static Area Kept(IEnumerable<SheetLayout> sheets) => sheets
        .SelectMany(sheet => sheet.Offcuts.Where(offcut => offcut.Kept).SelectMany(offcut => Enumerable.Repeat(offcut.Area, sheet.Copies)))
        .Aggregate(Area.Zero, (sum, area) => sum + area);

    private static Order OrderOf(CuttingCase one)
    {
        var stock = one.Problem.Stocks[0];
        return new Order
        {
            Units = LengthUnit.Inch,
            Currency = new Currency("EUR", 2),
            Panels = [.. one.Problem.Pieces.Select((piece, i) => new PanelLine
            {
                Mark = ((char)('A' + i)).ToString(),
                Width = Length.FromSteps(piece.Width),
                Height = Length.FromSteps(piece.Height),
                Quantity = piece.Demand,
            })],
            Boards = [new BoardSupply
            {
                Id = "board",
                Thickness = ThickEnough,
                Width = Length.FromSteps(stock.Width),
                Height = Length.FromSteps(stock.Height),
                Price = new Money(stock.Price),
            }],
        };
    }

    // Common practice: 3/16 in serves every size.
    private static Length ThickEnough { get; } = Length.FromInches(0.1875m);
}
