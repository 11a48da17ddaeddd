using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Strips;

/// <summary>The strips of a batch.</summary>
/// <param name="Layouts">How each is cut.</param>
/// <param name="Outcome">What they cost; missing, per line: how many of its pieces found no strip.</param>
/// <param name="Warnings">What is missing.</param>
internal sealed record StripPlan(ImmutableArray<StripLayout> Layouts, CutOutcome Outcome, ImmutableArray<Warning> Warnings)
    : MaterialPlan(Outcome)
{
    /// <summary>What they cost.</summary>
    public Money Spent => Outcome.Spent;

    /// <summary>What no way of cutting them can spend less than.</summary>
    public Money LeastPossible => Outcome.LeastPossible;

    /// <summary>Per line: how many of its pieces found no strip.</summary>
    public ImmutableArray<int> Missing => Outcome.Missing;

    /// <summary>Whether a search was stopped.</summary>
    public bool StoppedEarly => Outcome.StoppedEarly;

    /// <summary>Whether everything was placed.</summary>
    public bool Complete => Outcome.Complete;

    /// <summary>No strips.</summary>
    /// <param name="lines">How many lines there are.</param>
    public static StripPlan None(int lines) => new([], CutOutcome.Nothing(lines), []);
}
