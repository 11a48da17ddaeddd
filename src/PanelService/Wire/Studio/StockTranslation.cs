using System.Collections.Immutable;
using System.Globalization;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Store.Stock;

namespace PanelService.Wire.Studio;

/// <summary>Stock and ledger as the wire shows them.</summary>
internal static class StockTranslation
{
    private const int Decimals = 6;
    private const decimal ManyZeros = 1.0000000000000000000000000000m;

    internal static StockResponse Write(StockItem item)
    {
        StockGood good = item.Good;
        bool isLiquid = StockQuantity.IsLiquid(item.Sort);
        return new StockResponse
        {
            Id = item.Id,
            Sort = item.Sort,
            Supply = good.Supply,
            Name = good.Name,
            Kind = good.Kind,
            Thickness = In(good.Thickness, item.Units),
            Width = In(good.Width, item.Units),
            Height = In(good.Height, item.Units),
            Length = In(good.Length, item.Units),
            Selvedge = In(good.Selvedge, item.Units),
            EdgeTrim = In(good.EdgeTrim, item.Units),
            Grain = good.Grain == Grain.Height ? Grain.Height : null,
            Count = isLiquid ? null : item.Quantity,
            Volume = isLiquid ? VolumeIn(item.Quantity, item.Units) : null,
            Value = item.Value.In(Currencies.Find(item.Currency)?.MinorDigits ?? 2),
            Coverage = good is { CoverageArea: { } area, CoverageVolume: { } volume }
                ? new CoverageResponse(Rounded(area.In(item.Units)), Rounded(volume.In(item.Units)))
                : null,
            Coats = good.Coats,
            Surface = good.Surface,
            Mark = good.Mark,
            Note = good.Note,
            Units = item.Units,
            Currency = item.Currency,
            AddedAt = item.AddedAt,
            Version = item.Version,
        };
    }

    internal static MovementResponse Write(Movement movement)
    {
        bool isLiquid = StockQuantity.IsLiquid(movement.Sort);
        return new(
            movement.Id,
            movement.Booking,
            movement.At,
            movement.Stock,
            movement.Sort,
            isLiquid ? null : movement.Quantity,
            isLiquid ? VolumeIn(movement.Quantity, movement.Units) : null,
            movement.Reason,
            movement.PlanId,
            movement.UndoOf,
            movement.UndoneBy,
            movement.Note);
    }

    internal static MovementResponse[] Write(ImmutableArray<Movement> movements) => [.. movements.Select(Write)];

    internal static MissingStockResponse Write(StockLack lack)
    {
        decimal scale = StockQuantity.IsLiquid(lack.Sort) ? 1_000_000m : 1;
        string unit = StockQuantity.IsLiquid(lack.Sort) ? " mL" : "";
        decimal needed = Rounded(lack.Needed / scale);
        decimal there = Rounded(lack.There / scale);
        string text = lack.IsChanged
            ? $"{lack.Stock} does not measure any more what it was planned with."
            : string.Create(CultureInfo.InvariantCulture, $"Of {lack.Stock}, {needed}{unit} are needed and {there}{unit} are there.");
        return new(lack.Stock, needed, there, text);
    }

    private static decimal? In(Length? length, LengthUnit units) => length is { } known ? Rounded(known.In(units)) : null;

    private static decimal VolumeIn(long nanolitres, LengthUnit units) => Rounded(StockQuantity.VolumeOf(nanolitres).In(units));

    private static decimal Rounded(decimal value) => Math.Round(value, Decimals, MidpointRounding.AwayFromZero) / ManyZeros;
}
