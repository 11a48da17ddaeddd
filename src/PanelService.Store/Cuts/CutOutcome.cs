using System.Collections.Immutable;
using PanelService.Store.Plans;
using PanelService.Store.Stock;

namespace PanelService.Store.Cuts;

/// <summary>What booking a plan as cut comes to.</summary>
public abstract record CutOutcome
{
    private protected CutOutcome()
    {
    }
}

/// <summary>It is booked.</summary>
/// <param name="Record">What was booked.</param>
/// <param name="Plan">The plan.</param>
public sealed record CutBooked(CutRecord Record, FinishedPlan Plan) : CutOutcome;

/// <summary>There is no such plan.</summary>
public sealed record NoPlanToCut : CutOutcome, IRefusal;

/// <summary>A newer program stored it in a form that this one does not read.</summary>
public sealed record PlanNotRead : CutOutcome, IRefusal;

/// <summary>It is cut already.</summary>
/// <param name="At">Since when.</param>
public sealed record AlreadyCut(DateTimeOffset At) : CutOutcome, IRefusal;

/// <summary>Goods it takes from stock are not there any more.</summary>
/// <param name="Missing">What is missing.</param>
public sealed record GoodsGone(ImmutableArray<StockLack> Missing) : CutOutcome, IRefusal;

/// <summary>More was spoiled than was made, or of no line or sheet of the plan.</summary>
/// <param name="Faults">Per entry, what is wrong.</param>
public sealed record SpoilingWrong(ImmutableArray<SpoilingFault> Faults) : CutOutcome, IRefusal;
