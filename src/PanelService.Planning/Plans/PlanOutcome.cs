using System.Collections.Immutable;

namespace PanelService.Planning.Plans;

/// <summary>What planning comes to: a plan, or the reason there is none.</summary>
public abstract record PlanOutcome
{
    private protected PlanOutcome()
    {
    }
}

/// <summary>There is a plan.</summary>
/// <param name="Plan">The plan.</param>
public sealed record Planned(Plan Plan) : PlanOutcome;

/// <summary>The order cannot be made from what there is.</summary>
/// <param name="Reason">Why.</param>
/// <param name="Detail">One or two sentences for a person.</param>
/// <param name="Marks">Each line that cannot be made, with what is missing.</param>
public sealed record CannotBeMade(CannotReason Reason, string Detail, ImmutableArray<UnmakeableLine> Marks) : PlanOutcome;

/// <summary>Why an order cannot be made.</summary>
public enum CannotReason
{
    /// <summary>A line fits no board of the order, whatever the number.</summary>
    NoBoardFits,

    /// <summary>There is too little: limits on sheets, rolls or lengths are in the way.</summary>
    NotEnoughStock,

    /// <summary>A line fits no cloth of the order, whatever the number.</summary>
    NoClothFits,

    /// <summary>Its plan has more places on sheets that all differ than can be written out.</summary>
    TooManyPlaces,
}

/// <summary>A line that cannot be made.</summary>
/// <param name="Mark">Its mark.</param>
/// <param name="Missing">What is missing, in words: "no board of 3/16 or thicker is at least 24 × 36".</param>
/// <param name="Count">How many of it are missing.</param>
public sealed record UnmakeableLine(string Mark, string Missing, int Count);
