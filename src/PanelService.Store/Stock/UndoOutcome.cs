using System.Collections.Immutable;

namespace PanelService.Store.Stock;

/// <summary>What taking a movement back comes to.</summary>
public abstract record UndoOutcome
{
    private protected UndoOutcome()
    {
    }
}

/// <summary>Its opposite is booked.</summary>
/// <param name="Movements">The new movements.</param>
public sealed record TakenBack(ImmutableArray<Movement> Movements) : UndoOutcome;

/// <summary>There is no such movement.</summary>
public sealed record NothingToUndo : UndoOutcome, IRefusal;

/// <summary>It was taken back before.</summary>
public sealed record AlreadyUndone : UndoOutcome, IRefusal;

/// <summary>What it brought in has been used since.</summary>
/// <param name="Missing">What is missing.</param>
public sealed record UsedSince(ImmutableArray<StockLack> Missing) : UndoOutcome, IRefusal;
