using System.Collections.Immutable;
using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>All cautions, and where in a run each is said.</summary>
internal static class CautionBook
{
    private static readonly ImmutableArray<ICaution> _rules =
    [
        new GuardsOn(), new PushStick(), new EyesAndEars(),
        new HardboardDust(), new MdfDust(), new PlywoodDust(), new OtherDust(),
        new ThinKerf(), new ThickKerf(),
        new LargeSheet(), new TrimCut(), new NarrowRip(), new ShortAlongFence(), new WiderThanLong(),
        new SmallPartAtBlade(), new SledStop(),
    ];

    /// <summary>Said last.</summary>
    public static Warning Closing { get; } = new(
        "manual-first", "These are cautions, not instructions: the saw's manual, local rules and an experienced person come first.");

    /// <summary>What some cuts raise, each said once.</summary>
    public static ImmutableArray<Warning> Raised(IReadOnlyCollection<SawCutFacts> cuts) => Raised(_rules, cuts);

    /// <summary>A run with its cautions: the general ones before the first cut, the closing one last.</summary>
    /// <param name="steps">The run.</param>
    /// <param name="sheets">The sheets by number.</param>
    public static ImmutableArray<SawStep> With(ImmutableArray<SawStep> steps, ImmutableArray<SheetLayout> sheets)
    {
        if (steps.IsEmpty)
        {
            return steps;
        }

        var cuts = steps.Select(step => step.Passes.Select(pass => FactsOf(step, pass, sheets)).ToList()).ToList();
        var once = Raised(_rules.Where(rule => rule.SaidOnce), [.. cuts.SelectMany(one => one)]);
        var withOwn = steps.Select((step, i) => step with
        {
            Cautions = [.. i == 0 ? once : [], .. Raised(_rules.Where(rule => !rule.SaidOnce), cuts[i])],
        }).ToImmutableArray();
        return withOwn.SetItem(withOwn.Length - 1, withOwn[^1] with { Cautions = withOwn[^1].Cautions.Add(Closing) });
    }

    private static ImmutableArray<Warning> Raised(IEnumerable<ICaution> rules, IReadOnlyCollection<SawCutFacts> cuts) =>
        [.. rules.Where(rule => cuts.Any(rule.IsRaisedBy)).Select(rule => rule.Text)];

    private static SawCutFacts FactsOf(SawStep step, SawPass pass, ImmutableArray<SheetLayout> sheets)
    {
        var sheet = sheets[pass.Sheet - 1];
        return new SawCutFacts(sheet.Cuts[pass.Cut - 1], step.Tool, step.Fence, sheet.Kerf, sheet.Board.Kind);
    }
}
