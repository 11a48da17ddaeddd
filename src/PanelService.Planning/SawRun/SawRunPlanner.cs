// Problem: of the plans of least cost, one that is good to cut: few settings, few changes of them, few cuts.
// Idea:    two graphs of all ways of cutting. In the first only panels and kept offcuts are named, so that waste may be divided
//          as suits the saw: local search finds few settings and a short sequence there, and the sheets are laid out anew.
//          In the second all that the new sheets leave is named: there the fewest settings are proven, and where
//          that gets by with fewer, the sheets are laid out once more. How few steps these settings could do with is asked last.
//          In neither is a workpiece cut that holds no panel: a kept offcut grows over the waste beside it.
// Cost:    bounded by work counted, about half a second for an ordinary batch.
// Not:     other patterns of the same cost: they are JointChoice's. The fewest changes where the time given does not do: then a bound.
using System.Collections.Immutable;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun;

/// <summary>Lays the sheets of a batch out for the saw and puts their cuts in order.</summary>
internal static class SawRunPlanner
{
    private const long GraphWork = 60_000;

    // What is left out here makes the proof weaker; a graph in which everything is named is a third as large.
    private const long ProofGraphWork = 200_000;

    /// <summary>Plans the run. Panels and what they cost stay as they are; kept offcuts stay, grow over waste beside them, or are joined.</summary>
    /// <param name="saw">The saw.</param>
    /// <param name="sheets">The sheets as first laid out.</param>
    /// <param name="effort">How much work.</param>
    /// <param name="stop">Ends the search with what was found, or everything.</param>
    public static SawPlan Plan(SawSettings saw, ImmutableArray<SheetLayout> sheets, SawEffort effort, PlanStop stop) =>
        Draft(saw, sheets, effort, stop).Proven();

    /// <summary>Plans the run but for the proof of its steps, which takes as long again.</summary>
    /// <param name="saw">The saw.</param>
    /// <param name="sheets">The sheets as first laid out.</param>
    /// <param name="effort">How much work.</param>
    /// <param name="stop">Ends the search with what was found, or everything.</param>
    public static SawRunDraft Draft(SawSettings saw, ImmutableArray<SheetLayout> sheets, SawEffort effort, PlanStop stop)
    {
        sheets = Of(sheets, all: false, effort with { Sequence = SawEffort.Brief.Sequence }).Plan()?.Sheets ?? sheets;
        var run = Of(sheets, all: true, effort);
        return new SawRunDraft(run.Plan() ?? throw new InvalidOperationException("Sheets laid out by cuts can be cut."), run);

        SettingsRun Of(ImmutableArray<SheetLayout> layouts, bool all, SawEffort each) =>
            new(saw, layouts, all, each, all ? ProofGraphWork : GraphWork, stop);
    }

    /// <summary>About how many settings some sheets take, by a short search.</summary>
    /// <param name="saw">The saw.</param>
    /// <param name="sheets">The sheets as first laid out.</param>
    /// <param name="stop">Ends the search, or everything.</param>
    public static int Guess(SawSettings saw, ImmutableArray<SheetLayout> sheets, PlanStop stop) =>
        new SettingsRun(saw, sheets, all: false, SawEffort.Brief, GraphWork, stop).Settings();
}
