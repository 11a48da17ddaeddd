using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Days;

/// <summary>What is done at the bench: the steps of each surface, the stacks of the press, and the work on days.</summary>
public sealed record BenchPlan
{
    /// <summary>The steps of each line, in their order.</summary>
    public ImmutableArray<BenchRecipe> Recipes { get; init; } = [];

    /// <summary>The stacks, in the order they are laid.</summary>
    public ImmutableArray<PressStack> Stacks { get; init; } = [];

    /// <summary>The jobs with their times, by start; empty where there is nothing to do, or it takes too long.</summary>
    public ImmutableArray<ScheduledJob> Jobs { get; init; } = [];

    /// <summary>Whether the work would take more than a year: then no schedule is made.</summary>
    public bool TooLong { get; init; }

    /// <summary>When the last job and its wait are over, in minutes passed since midnight of the first day.</summary>
    public int Finish { get; init; }

    /// <summary>No schedule of these jobs is over sooner.</summary>
    public int LeastFinish { get; init; }

    /// <summary>What the schedule was made for.</summary>
    public ScheduleSettings Schedule { get; init; } = new();

    /// <summary>Hands-on minutes of each line.</summary>
    public ImmutableArray<MarkMinutes> HandsOn { get; init; } = [];

    /// <summary>Lines that are cut now and mounted later.</summary>
    public ImmutableArray<string> MountLater { get; init; } = [];
}

/// <summary>A job with its time.</summary>
/// <param name="Job">The job.</param>
/// <param name="Start">Minutes passed since midnight of the first day.</param>
public sealed record ScheduledJob(BenchJob Job, int Start)
{
    /// <summary>When its hands are free again.</summary>
    public int HandsUntil => Start + Job.Hands;

    /// <summary>When its wait is over.</summary>
    public int Until => Start + Job.Hands + Job.Wait;
}

/// <summary>The steps of a line's panels.</summary>
/// <param name="Mark">The line.</param>
/// <param name="Steps">The steps in their order.</param>
public sealed record BenchRecipe(string Mark, ImmutableArray<RecipeStep> Steps);

/// <summary>One step for one panel.</summary>
/// <param name="Step">The step.</param>
/// <param name="Minutes">Hands-on minutes for one panel.</param>
/// <param name="WaitHours">How long it is then left alone.</param>
public sealed record RecipeStep(BenchStep Step, decimal Minutes, decimal WaitHours);

/// <summary>Hands-on minutes of all panels of a line.</summary>
/// <param name="Mark">The line.</param>
/// <param name="Minutes">The minutes.</param>
public sealed record MarkMinutes(string Mark, decimal Minutes);

/// <summary>Panels of one size, one on the other under one weight.</summary>
public sealed record PressStack
{
    /// <summary>1, 2, … in the order they are laid.</summary>
    public required int Number { get; init; }

    /// <summary>The shorter side.</summary>
    public required Length Short { get; init; }

    /// <summary>The longer side.</summary>
    public required Length Long { get; init; }

    /// <summary>What is in it, from the bottom.</summary>
    public required ImmutableArray<MarkCount> Panels { get; init; }

    /// <summary>Whether something in it is needed first.</summary>
    public required bool First { get; init; }

    /// <summary>The weight on top for the pressure wished for.</summary>
    public required Weight Weight { get; init; }

    /// <summary>How many are laid before the weight goes on: what the adhesive's open time allows.</summary>
    public required int PerRound { get; init; }

    /// <summary>How many panels.</summary>
    public long Count => Panels.Sum(panel => panel.Count);

    /// <summary>One over each panel's face.</summary>
    public long Separators => Count;

    /// <summary>How often the weight goes on.</summary>
    public long Rounds => (Count + PerRound - 1) / PerRound;
}
