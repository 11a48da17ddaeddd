using System.Collections.Immutable;
using PanelService.Store.Model;

namespace PanelService.Store.Exchange;

/// <summary>A whole studio as one document: every row of every table, at one moment.</summary>
internal sealed record StudioDocument
{
    internal const string FormatName = "panel-service-studio";
    internal const int FormatVersion = 1;

    public required string Format { get; init; }

    public required int Version { get; init; }

    public ImmutableArray<SettingsRow> Settings { get; init; } = [];

    public ImmutableArray<SupplyRow> Supplies { get; init; } = [];

    public ImmutableArray<StockRow> Stock { get; init; } = [];

    public ImmutableArray<BookingRow> Bookings { get; init; } = [];

    public ImmutableArray<MovementRow> Movements { get; init; } = [];

    public ImmutableArray<PlanRow> Plans { get; init; } = [];
}
