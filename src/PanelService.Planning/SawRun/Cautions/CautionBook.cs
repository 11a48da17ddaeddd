using System.Collections.Immutable;
using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>All cautions: those a cut raises, those of every run, and the closing one.</summary>
internal static class CautionBook
{
    private static readonly ImmutableArray<ICaution> _rules =
        [new LargeSheet(), new TrimCut(), new NarrowRip(), new ShortAlongFence(), new WiderThanLong(), new SledStop()];

    /// <summary>Said at the first step of every run, with the source of each.</summary>
    public static ImmutableArray<Warning> General { get; } =
    [
        new("guards-on", "Riving knife within 8 mm of the blade, guard on, hands off the line of the blade (HSE WIS16; OSHA 29 CFR 1910.213)."),
        new("push-stick", "A push stick at least 450 mm long for the last 300 mm of any cut (HSE WIS16)."),
        new("dust", "Board dust harms the lungs: extraction at the saw and a respirator that fits, eye and ear protection."),
    ];

    /// <summary>Said last.</summary>
    public static Warning Closing { get; } = new(
        "manual-first", "These are cautions, not instructions: the saw's manual, local rules and an experienced person come first.");

    /// <summary>What the cuts of one step raise, each said once.</summary>
    public static ImmutableArray<Warning> Raised(IReadOnlyCollection<SawCutFacts> cuts) =>
        [.. _rules.Where(rule => cuts.Any(rule.IsRaisedBy)).Select(rule => rule.Text)];

    /// <summary>A run with what is said of every run.</summary>
    public static ImmutableArray<SawStep> WithGeneral(ImmutableArray<SawStep> steps)
    {
        if (steps.IsEmpty)
        {
            return steps;
        }

        var withFirst = steps.SetItem(0, steps[0] with { Cautions = [.. General, .. steps[0].Cautions] });
        var last = withFirst[^1];
        return withFirst.SetItem(withFirst.Length - 1, last with { Cautions = last.Cautions.Add(Closing) });
    }
}
