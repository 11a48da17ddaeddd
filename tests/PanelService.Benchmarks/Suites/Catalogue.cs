namespace PanelService.Benchmarks.Suites;

/// <summary>Every suite by name.</summary>
public static class Catalogue
{
    /// <summary>Suites that go straight to the cutting engine.</summary>
    public static readonly IReadOnlyList<CuttingSuite> Cutting =
    [
        new("studio500", ">= 99.5 % proven, median <= 20 ms, worst <= 2 s", _ => StudioOrders.OneSheetSize()),
        new("mixed500", ">= 97 % proven, mean gap <= 0.05 %, median <= 50 ms, worst <= 5 s", _ => StudioOrders.MixedBoards()),
        new("small300", "100 % proven, worst <= 2 s", _ => StudioOrders.Small()),
        new("jigsaw100", ">= 95 % solved with exactly those sheets, worst <= 5 s", _ => Jigsaws.All()),
        new("large", "proven or gap <= 0.01 %, <= 1 s, cost flat in the number of panels", _ => StudioOrders.Large()),
        new("odd30", "<= 3 s, gap <= 1 %", _ => OddFormats.All()),
        new("packing250", "RG <= 3395, OG <= 3533 sheets at 1 s a problem", PublishedSheets.Packing, NeedsData: true),
        new("furniture22", "every proven optimum met and proven in <= 2 s", PublishedSheets.Furniture, NeedsData: true),
    ];

    /// <summary>Every name the command line takes.</summary>
    public static IEnumerable<string> Names => Cutting.Select(suite => suite.Name);
}
