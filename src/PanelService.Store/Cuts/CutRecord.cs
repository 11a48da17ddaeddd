using System.Collections.Immutable;
using PanelService.Store.Stock;

namespace PanelService.Store.Cuts;

/// <summary>A plan that was booked as cut.</summary>
/// <param name="Booking">The booking's number.</param>
/// <param name="At">When.</param>
/// <param name="Spoiled">What was spoiled.</param>
/// <param name="Movements">Everything that moved.</param>
/// <param name="Entered">The heaps that came in, as they are now.</param>
public sealed record CutRecord(
    long Booking, DateTimeOffset At, ImmutableArray<Spoiling> Spoiled, ImmutableArray<Movement> Movements, ImmutableArray<StockItem> Entered);
