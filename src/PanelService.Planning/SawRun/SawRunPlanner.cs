// Problem: of the plans of least cost, one that is good to cut: few settings, few changes of them, few cuts.
// Idea:    two graphs of all ways of cutting. In the first only panels and kept offcuts are named, so that waste may be divided
//          as suits the saw: local search finds few settings and a short sequence there, and the sheets are laid out anew.
//          In the second all that the new sheets leave is named: there the fewest settings are proven, and where
//          that gets by with fewer, the sheets are laid out once more.
// Cost:    bounded by work counted, about half a second for an ordinary batch.
// Not:     the fewest changes; other patterns of the same cost are JointChoice's.
using System.Collections.Immutable;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.SawRun.Cautions;

namespace PanelService.Planning.SawRun;

/// <summary>Lays the sheets of a batch out for the saw and puts their cuts in order.</summary>
internal static class SawRunPlanner
{
    private const long GraphWork = 60_000;

    /// <summary>Plans the run. Panels, kept offcuts and what they cost stay as they are.</summary>
    /// <param name="saw">The saw.</param>
    /// <param name="sheets">The sheets as first laid out.</param>
    /// <param name="cancellation">Ends the search with what was found.</param>
    public static SawPlan Plan(SawSettings saw, ImmutableArray<SheetLayout> sheets, CancellationToken cancellation)
    {
        var effort = SawEffort.Ordinary;
        if (Run(sheets, all: false) is { } free)
        {
            sheets = free.Sheets;
        }

        var last = Run(sheets, all: true) ?? throw new InvalidOperationException("Sheets laid out by cuts can be cut.");
        return last with { Run = CautionBook.With(last.Run, last.Sheets) };

        SawPlan? Run(ImmutableArray<SheetLayout> layouts, bool all) =>
            new SettingsRun(saw, layouts, all, effort, GraphWork, cancellation).Plan();
    }
}
