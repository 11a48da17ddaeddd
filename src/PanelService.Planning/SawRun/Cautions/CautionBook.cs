using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>All cautions, and where in a run each is said.</summary>
internal static class CautionBook
{
    private const int MostSaid = 3;

    private static readonly ImmutableArray<ICaution> _rules =
    [
        new GuardsOn(), new PushStick(), new EyesAndEars(),
        new HardboardDust(), new MdfDust(), new PlywoodDust(), new OtherDust(),
        new ThinKerf(), new ThickKerf(),
        new LargeSheet(), new FarFence(), new TrimCut(), new NarrowRip(), new ShortAlongFence(), new WiderThanLong(),
        new SmallPartAtBlade(), new SledStop(),
    ];

    /// <summary>Said last.</summary>
    public static Warning Closing { get; } = new(
        "manual-first", "These are cautions, not instructions: the saw's manual, local rules and an experienced person come first.");

    /// <summary>What some cuts raise, each said once.</summary>
    /// <param name="cuts">The cuts.</param>
    /// <param name="unit">What measures are said in.</param>
    public static ImmutableArray<Warning> Raised(IReadOnlyCollection<SawCutFacts> cuts, LengthUnit unit) => Raised(_rules, cuts, unit);

    /// <summary>A run with its cautions: the general ones before the first cut, the closing one last.</summary>
    /// <param name="steps">The run.</param>
    /// <param name="sheets">The sheets by number.</param>
    /// <param name="order">What measures are said in, and how far the fence goes.</param>
    public static ImmutableArray<SawStep> With(ImmutableArray<SawStep> steps, ImmutableArray<SheetLayout> sheets, Order order)
    {
        if (steps.IsEmpty)
        {
            return steps;
        }

        var cuts = steps.Select(step => step.Passes
            .Select(pass => FactsOf(step, pass, sheets) with { ReachIsKnown = order.Saw.FenceReach is not null }).ToList()).ToList();
        var once = Raised(_rules.Where(rule => rule.SaidOnce), [.. cuts.SelectMany(one => one)], order.Units);
        var withOwn = steps.Select((step, i) => step with
        {
            Cautions = [.. i == 0 ? once : [], .. Raised(_rules.Where(rule => !rule.SaidOnce), cuts[i], order.Units)],
        }).ToImmutableArray();
        return withOwn.SetItem(withOwn.Length - 1, withOwn[^1] with { Cautions = withOwn[^1].Cautions.Add(Closing) });
    }

    private static ImmutableArray<Warning> Raised(IEnumerable<ICaution> rules, IReadOnlyCollection<SawCutFacts> cuts, LengthUnit unit) =>
    [
        .. rules
            .Select(rule => (Rule: rule, By: cuts.Where(rule.IsRaisedBy).ToList()))
            .Where(one => one.By.Count > 0)
            .Select(one => Said(one.Rule.Text, [.. one.By.Select(one.Rule.Measures)], unit)),
    ];

    /// <summary>A caution with the measures that raised it, the smallest first; of many, the first few.</summary>
    private static Warning Said(Warning caution, IReadOnlyList<ImmutableArray<Length>> measures, LengthUnit unit)
    {
        string[] all =
        [
            .. measures.Where(one => !one.IsEmpty)
                .OrderBy(one => one.Min()).ThenBy(one => one.Max())
                .Select(one => $"{string.Join(" × ", one.Select(length => LengthText.FormatFigure(length, unit)))} {LengthText.Abbreviation(unit)}")
                .Distinct(),
        ];
        if (all.Length == 0)
        {
            return caution;
        }

        bool isMore = all.Length > MostSaid;
        string here = string.Join(", ", all.Take(MostSaid)) + (isMore ? " …" : "");
        return new Warning(caution.Id, $"{caution.Text} Here: {here}{(isMore ? "" : ".")}") { Here = here };
    }

    private static SawCutFacts FactsOf(SawStep step, SawPass pass, ImmutableArray<SheetLayout> sheets)
    {
        var sheet = sheets[pass.Sheet - 1];
        return new SawCutFacts(sheet.Cuts[pass.Cut - 1], step.Tool, step.Fence, sheet.Kerf, sheet.Board.Kind);
    }
}
