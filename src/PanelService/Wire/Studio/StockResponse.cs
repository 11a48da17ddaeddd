using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Store.Stock;

namespace PanelService.Wire.Studio;

/// <summary>What is in the studio.</summary>
/// <param name="Stock">Every heap, by letter and number.</param>
internal sealed record StockListResponse(IReadOnlyList<StockResponse> Stock);

/// <summary>A heap of alike pieces, or a liquid. Lengths are in its own units.</summary>
internal sealed record StockResponse
{
    /// <summary>Short enough to write on it in pencil; never given out twice.</summary>
    public required string Id { get; init; }

    /// <summary>board, offcut, cloth, remnant, adhesive, primer, strip or panel.</summary>
    public required StockSort Sort { get; init; }

    /// <summary>The supply it came from.</summary>
    public string? Supply { get; init; }

    /// <summary>What the painter calls it.</summary>
    public string? Name { get; init; }

    /// <summary>"hardboard", "linen" …</summary>
    public string? Kind { get; init; }

    /// <summary>Of a board.</summary>
    public decimal? Thickness { get; init; }

    /// <summary>Of a board, a cloth or a panel.</summary>
    public decimal? Width { get; init; }

    /// <summary>Of a board or a panel.</summary>
    public decimal? Height { get; init; }

    /// <summary>Of a cloth.</summary>
    public decimal? Length { get; init; }

    /// <summary>Of a cloth: lost at each side.</summary>
    public decimal? Selvedge { get; init; }

    /// <summary>Of a board: lost at each edge; left out: the saw's.</summary>
    public decimal? EdgeTrim { get; init; }

    /// <summary>Whether panels must stay upright on it.</summary>
    public Grain? Grain { get; init; }

    /// <summary>How many alike pieces.</summary>
    public long? Count { get; init; }

    /// <summary>How much of a liquid: US fl oz for inch, mL otherwise.</summary>
    public decimal? Volume { get; init; }

    /// <summary>What one piece, or all that is there of a liquid, counts as.</summary>
    public required decimal Value { get; init; }

    /// <summary>Of a liquid: how far it goes in one coat.</summary>
    public CoverageResponse? Coverage { get; init; }

    /// <summary>Of a liquid: coats.</summary>
    public int? Coats { get; init; }

    /// <summary>Of a panel: its finish.</summary>
    public Surface? Surface { get; init; }

    /// <summary>Of a panel: its mark.</summary>
    public string? Mark { get; init; }

    /// <summary>What was noted.</summary>
    public string? Note { get; init; }

    /// <summary>The unit of its lengths.</summary>
    public required LengthUnit Units { get; init; }

    /// <summary>ISO 4217 code of its value.</summary>
    public required string Currency { get; init; }

    /// <summary>When it first came in.</summary>
    public required DateTimeOffset AddedAt { get; init; }

    /// <summary>Its version: the ETag without its quotes.</summary>
    public required int Version { get; init; }
}

/// <summary>How far a liquid goes.</summary>
/// <param name="Area">in² for inch, cm² otherwise.</param>
/// <param name="Volume">US fl oz for inch, mL otherwise.</param>
internal sealed record CoverageResponse(decimal Area, decimal Volume);

/// <summary>Lines of the ledger.</summary>
/// <param name="Movements">The oldest first.</param>
/// <param name="Next">What to ask for as after, where there are more.</param>
internal sealed record MovementListResponse(IReadOnlyList<MovementResponse> Movements, long? Next);

/// <summary>A line of the ledger; never changed.</summary>
/// <param name="Id">Rising.</param>
/// <param name="Booking">Movements of one booking were made together.</param>
/// <param name="At">When.</param>
/// <param name="Stock">The heap's id.</param>
/// <param name="Sort">The heap's sort.</param>
/// <param name="Count">Pieces; below 0 where they left.</param>
/// <param name="Volume">Of a liquid, in the heap's units.</param>
/// <param name="Reason">added, corrected, declared, used, kept, finished or undone.</param>
/// <param name="Plan">The plan that was cut.</param>
/// <param name="UndoOf">The movement this one takes back.</param>
/// <param name="UndoneBy">The movement that takes this one back.</param>
/// <param name="Note">What was noted.</param>
internal sealed record MovementResponse(
    long Id, long Booking, DateTimeOffset At, string Stock, StockSort Sort, long? Count, decimal? Volume, MovementReason Reason, string? Plan, long? UndoOf, long? UndoneBy, string? Note);

/// <summary>Goods that are not there.</summary>
/// <param name="Id">The heap's id.</param>
/// <param name="Needed">How much is needed: pieces, or mL.</param>
/// <param name="There">How much is there.</param>
/// <param name="Text">In words.</param>
internal sealed record MissingStockResponse(string Id, decimal Needed, decimal There, string Text);
