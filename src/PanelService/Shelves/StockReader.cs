using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Store.Stock;
using PanelService.Store.Supplies;
using PanelService.Validation;
using PanelService.Wire.Orders;
using PanelService.Wire.Reading;
using PanelService.Wire.Studio;

namespace PanelService.Shelves;

/// <summary>A heap as it is sent becomes one that can enter the stock; its supply gives what it does not say.</summary>
internal static class StockReader
{
    /// <summary>The heap; null where faults were found.</summary>
    internal static StockDraft? Read(StockRequest request, OrderMeasures measures, ImmutableArray<Supply> supplies, Faults faults)
    {
        StockSort sort = request.Sort!.Value;
        Supply? supply = SupplyOf(request, sort, supplies, faults);
        StockGood good = sort switch
        {
            StockSort.Board or StockSort.Offcut => Board(request, supply is null ? null : SupplyReader.Board(supply)),
            StockSort.Cloth or StockSort.Remnant => Cloth(request, supply is null ? null : SupplyReader.Cloth(supply)),
            StockSort.Strip => Strip(request, supply is null ? null : SupplyReader.Strip(supply)),
            StockSort.Panel => new StockGood { Width = request.Width, Height = request.Height, Surface = request.Surface, Mark = request.Mark },
            _ => Liquid(request, supply is null ? null : SupplyReader.Liquid(supply, measures.Units), measures.Units),
        };
        good = good with { Name = request.Name ?? good.Name, Kind = request.Kind ?? good.Kind, Supply = request.Supply, Note = request.Note };
        AskFor(good, sort, faults);
        return faults.Any ? null : new StockDraft(sort, good, Quantity(request, sort, measures), Money(request.Value, measures), measures.Units, measures.Currency.Code);
    }

    private static Supply? SupplyOf(StockRequest request, StockSort sort, ImmutableArray<Supply> supplies, Faults faults)
    {
        if (request.Supply is null)
        {
            return null;
        }

        SupplySort? wanted = sort switch
        {
            StockSort.Board or StockSort.Offcut => SupplySort.Boards,
            StockSort.Cloth or StockSort.Remnant => SupplySort.Cloths,
            StockSort.Adhesive => SupplySort.Adhesives,
            StockSort.Primer => SupplySort.Primers,
            StockSort.Strip => SupplySort.Strips,
            _ => null,
        };
        Supply? found = supplies.FirstOrDefault(supply => supply.Sort == wanted && supply.Id == request.Supply);
        if (found is null)
        {
            faults.Add("supply", wanted is null
                ? "A finished panel comes from no supply; leave this out."
                : $"Nothing is saved as \"{request.Supply}\" among the {JsonPath.Camel(wanted.Value.ToString())}; GET /api/supplies lists what is.");
        }

        return found;
    }

    // A sheet's own measures come from its supply; an offcut's never do.
    private static StockGood Board(StockRequest request, BoardRequest? supply)
    {
        bool isSheet = request.Sort == StockSort.Board;
        return new StockGood
        {
            Name = supply?.Name,
            Kind = supply?.Kind,
            Thickness = request.Thickness ?? supply?.Thickness,
            Width = request.Width ?? (isSheet ? supply?.Width : null),
            Height = request.Height ?? (isSheet ? supply?.Height : null),
            EdgeTrim = request.EdgeTrim ?? (isSheet ? supply?.EdgeTrim : Length.Zero),
            Grain = (request.Grain ?? supply?.Grain) == BoardGrain.Height ? Grain.Height : Grain.Any,
        };
    }

    private static StockGood Cloth(StockRequest request, ClothRequest? supply)
    {
        bool isRoll = request.Sort == StockSort.Cloth;
        return new StockGood
        {
            Name = supply?.Name,
            Kind = supply?.Kind,
            Width = request.Width ?? (isRoll ? supply?.Width : null),
            Length = request.Length ?? (isRoll ? supply?.Sale?.Length : null),
            Selvedge = isRoll ? request.Selvedge ?? supply?.Selvedge : null,
            Grain = (request.Warp ?? supply?.Warp) == ClothWarp.Height ? Grain.Height : Grain.Any,
        };
    }

    private static StockGood Strip(StockRequest request, StripRequest? supply) =>
        new() { Name = supply?.Name, Length = request.Length ?? supply?.Length };

    private static StockGood Liquid(StockRequest request, LiquidRequest? supply, LengthUnit units)
    {
        CoverageRequest? coverage = request.Coverage ?? supply?.Coverage;
        return new StockGood
        {
            Name = supply?.Name,
            CoverageArea = coverage?.Area is { } area ? Area.From(area, units) : null,
            CoverageVolume = coverage?.Volume is { } volume ? Volume.From(volume, units) : null,
            Coats = request.Coats ?? supply?.Coats,
        };
    }

    private static void AskFor(StockGood good, StockSort sort, Faults faults)
    {
        bool isBoard = sort is StockSort.Board or StockSort.Offcut;
        bool isCloth = sort is StockSort.Cloth or StockSort.Remnant;
        Ask(isBoard && good.Thickness is null, "thickness", "the board's thickness, such as \"1/8\" or \"3.2 mm\"");
        Ask((isBoard || isCloth || sort == StockSort.Panel) && good.Width is null, "width", "the width");
        Ask((isBoard || sort == StockSort.Panel) && good.Height is null, "height", "the height");
        Ask((isCloth || sort == StockSort.Strip) && good.Length is null, "length", "the length");
        Ask(StockQuantity.IsLiquid(sort) && good.CoverageArea is null, "coverage", "how far it goes, such as { \"area\": 80, \"volume\": 0.4 }, or the supply it came from");

        void Ask(bool isMissing, string field, string expected)
        {
            if (isMissing && !faults.At(field))
            {
                faults.Add(field, $"Required for {JsonPath.Camel(sort.ToString())}: {expected}.");
            }
        }
    }

    private static long Quantity(StockRequest request, StockSort sort, OrderMeasures measures) => StockQuantity.IsLiquid(sort)
        ? StockQuantity.Of(Volume.From(request.Volume!.Value, measures.Units))
        : request.Count ?? 1;

    private static Money Money(decimal? value, OrderMeasures measures) => MoneyScale.Read(value, measures.Currency);
}
