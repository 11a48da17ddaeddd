using System.Text.Json.Nodes;

namespace PanelService.Wire.Studio;

/// <summary>What was booked when a plan was cut.</summary>
/// <param name="Plan">The plan's id.</param>
/// <param name="Booking">The booking's number.</param>
/// <param name="At">When.</param>
/// <param name="Movements">Everything that moved.</param>
/// <param name="Entered">The heaps that came in, with the ids to write on them.</param>
/// <param name="Spoiled">What was spoiled.</param>
/// <param name="Replacements">An order for what is missing now, to be sent to POST /api/plans; left out where nothing is.</param>
internal sealed record CutBookingResponse(
    string Plan,
    long Booking,
    DateTimeOffset At,
    IReadOnlyList<MovementResponse> Movements,
    IReadOnlyList<StockResponse> Entered,
    IReadOnlyList<SpoiledResponse> Spoiled,
    JsonNode? Replacements);

/// <summary>Spoiled panels of one line.</summary>
/// <param name="Mark">The line's mark.</param>
/// <param name="Count">How many.</param>
/// <param name="Sheet">The number of the sheet that was spoiled with them on it; left out where they were spoiled one by one.</param>
internal sealed record SpoiledResponse(string Mark, int Count, int? Sheet);
