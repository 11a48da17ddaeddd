using PanelService.Planning.Days;

namespace PanelService.Wire.Plans;

/// <summary>What is done at the bench: the steps of each line, the stacks of the press, and the work on days.</summary>
internal sealed record BenchPlanResponse
{
    /// <summary>The steps of each line, in their order.</summary>
    public required IReadOnlyList<RecipeResponse> Steps { get; init; }

    /// <summary>The stacks, in the order they are laid.</summary>
    public required IReadOnlyList<StackResponse> Stacks { get; init; }

    /// <summary>The work on days; left out where it would take more than a year.</summary>
    public ScheduleResponse? Schedule { get; init; }

    /// <summary>When all is over, and what no schedule ends before, in minutes passed since midnight of the first day; left out with the schedule.</summary>
    public ScheduleProofResponse? ScheduleProof { get; init; }

    /// <summary>Hands-on minutes of each line, as the schedule has them; labour.perHour pays them.</summary>
    public required IReadOnlyList<HandsOnResponse> HandsOn { get; init; }

    /// <summary>Marks that are cut now and mounted later: GET bench?mount=later plans that.</summary>
    public required IReadOnlyList<string> MountLater { get; init; }
}

/// <summary>The steps of a line's panels.</summary>
/// <param name="Mark">The line.</param>
/// <param name="Steps">The steps.</param>
internal sealed record RecipeResponse(string Mark, IReadOnlyList<RecipeStepResponse> Steps);

/// <summary>One step for one panel.</summary>
/// <param name="Step">The step.</param>
/// <param name="Minutes">Hands-on minutes for one panel.</param>
/// <param name="WaitHours">How long it is then left alone.</param>
internal sealed record RecipeStepResponse(BenchStep Step, decimal Minutes, decimal WaitHours);

/// <summary>Panels of one size under one weight.</summary>
/// <param name="Number">1, 2, …</param>
/// <param name="Width">The shorter side.</param>
/// <param name="Height">The longer side.</param>
/// <param name="Panels">What is in it.</param>
/// <param name="First">Whether something in it is needed first.</param>
/// <param name="Separators">One over each panel's face.</param>
/// <param name="Weight">The weight for bench.pressure: lb for inch, g otherwise.</param>
/// <param name="PerRound">How many are laid before the weight goes on: what the open time allows.</param>
/// <param name="Rounds">How often the weight goes on.</param>
/// <param name="Text">In words: "20 kg of books on the 12 × 16 stack".</param>
internal sealed record StackResponse(
    int Number, decimal Width, decimal Height, IReadOnlyList<MarkCountResponse> Panels, bool First, long Separators, decimal Weight, int PerRound, long Rounds, string Text);

/// <summary>So many panels of a line.</summary>
/// <param name="Mark">The line.</param>
/// <param name="Count">How many.</param>
internal sealed record MarkCountResponse(string Mark, long Count);

/// <summary>Hands-on minutes of all panels of a line.</summary>
/// <param name="Mark">The line.</param>
/// <param name="Minutes">The minutes.</param>
internal sealed record HandsOnResponse(string Mark, decimal Minutes);

/// <summary>The end, and its bound.</summary>
/// <param name="Finish">When all is over.</param>
/// <param name="LeastPossible">No schedule of these jobs is over sooner.</param>
/// <param name="Proven">Whether the two are equal.</param>
internal sealed record ScheduleProofResponse(int Finish, int LeastPossible, bool Proven);
