using PanelService.Benchmarks.Running;

namespace PanelService.Benchmarks.Suites;

/// <summary>Every suite by name.</summary>
public static class Catalogue
{
    /// <summary>All suites: those of the cutting engine first, then whole orders.</summary>
    public static readonly IReadOnlyList<Suite> All =
    [
        new("studio500", ">= 99.5 % proven, median <= 20 ms, worst <= 2 s", CuttingRunner.Of(options => StudioOrders.OneSheetSize(options.Draw))),
        new("fence100", "with --check: no bound wrong under a fence that reaches a third of the sheet", CuttingRunner.Of(options => StudioOrders.LimitedFence(options.Draw))),
        new("mixed500", ">= 97 % proven, mean gap <= 0.05 %, median <= 50 ms, worst <= 5 s", CuttingRunner.Of(options => StudioOrders.MixedBoards(options.Draw))),
        new("small300", "100 % proven, worst <= 2 s", CuttingRunner.Of(options => StudioOrders.Small(options.Draw))),
        new("jigsaw100", ">= 95 % solved with exactly those sheets, worst <= 5 s", CuttingRunner.Of(options => Jigsaws.All(options.Draw))),
        new("large", "proven or gap <= 0.01 %, <= 1 s, cost flat in the number of panels", CuttingRunner.Of(options => StudioOrders.Large(options.Draw))),
        new("odd30", "<= 3 s, gap <= 1 %", CuttingRunner.Of(options => OddFormats.All(options.Draw))),
        new("packing250", "RG <= 3395, OG <= 3533 sheets at 1 s a problem", CuttingRunner.Of(options => PublishedSheets.Packing(options.Data)), NeedsData: true),
        new("furniture22", "every proven optimum met and proven in <= 2 s", CuttingRunner.Of(options => PublishedSheets.Furniture(options.Data)), NeedsData: true),
        new("gcut", "all optima, <= 0.1 s in all for gcut1 to 12", CuttingRunner.OfValues(options => PublishedValues.Unconstrained(options.Data)), NeedsData: true),
        new("knapsack59", "59 of 59 at <= 1 s each", CuttingRunner.OfValues(options => PublishedValues.Constrained(options.Data)), NeedsData: true),
        new("cloth200", ">= 95 % proven, mean gap <= 0.2 %, median <= 50 ms", OrderRunner.Of(options => ClothOrders.Mixed(options.Draw))),
        new("strip100", "within 1 % on all, exact on half, <= 5 s", OrderRunner.Of(options => ClothOrders.Strips(options.Draw))),
        new("stop", "back within 50 ms of the stop", StopRunner.Run),
        new("saw500", "mean settings <= 60 % of the first-found plan, median <= 1 s", SawRunner.Of(options => StudioOrders.OneSheetSize(options.Draw))),
        new("demo", "24 panels < 0.1 s warm, 600 panels < 2 s, HTTP within 30 ms of the planner", DemoRunner.Run),
    ];

    /// <summary>Every name the command line takes.</summary>
    public static IEnumerable<string> Names => All.Select(suite => suite.Name);
}
