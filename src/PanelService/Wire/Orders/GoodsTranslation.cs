using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Validation;

namespace PanelService.Wire.Orders;

/// <summary>Boards, cloths and liquids that have passed every rule become the order's goods.</summary>
internal sealed class GoodsTranslation(OrderMeasures measures)
{
    internal ImmutableArray<BoardSupply> Boards(IReadOnlyList<BoardRequest?>? boards) =>
        [.. (boards ?? []).OfType<BoardRequest>().Select(board => Board(board) is var supply ? supply with { Material = StrengthTranslation.Material(board, supply) } : supply)];

    internal ImmutableArray<ClothSupply> Cloths(IReadOnlyList<ClothRequest?>? cloths) =>
        [.. (cloths ?? []).OfType<ClothRequest>().Select(Cloth)];

    internal ImmutableArray<LiquidSupply> Liquids(IReadOnlyList<LiquidRequest?>? liquids) =>
        [.. (liquids ?? []).OfType<LiquidRequest>().Select(Liquid)];

    internal ImmutableArray<StripSupply> Strips(IReadOnlyList<StripRequest?>? strips) =>
        [.. (strips ?? []).OfType<StripRequest>().Select(Strip)];

    private StripSupply Strip(StripRequest strip) => new()
    {
        Id = strip.Id!,
        Name = strip.Name,
        Length = strip.Length!.Value,
        Price = Money(strip.Price),
        PriceFrom = PriceFrom(strip.PriceFrom),
        Shop = strip.Shop,
        ForSale = strip.ForSale,
        OnHand = strip.OnHand ?? 0,
        Value = Money(strip.Value),
    };

    private BoardSupply Board(BoardRequest board) => new()
    {
        Id = board.Id!,
        Name = board.Name,
        Kind = board.Kind,
        Thickness = board.Thickness!.Value,
        Width = board.Width!.Value,
        Height = board.Height!.Value,
        Price = Money(board.Price),
        PriceFrom = PriceFrom(board.PriceFrom),
        Shop = board.Shop,
        ForSale = board.ForSale,
        OnHand = board.OnHand ?? 0,
        Value = Money(board.Value),
        EdgeTrim = board.EdgeTrim,
        Grain = board.Grain == BoardGrain.Height ? Grain.Height : Grain.Any,
    };

    private ClothSupply Cloth(ClothRequest cloth) => new()
    {
        Id = cloth.Id!,
        Name = cloth.Name,
        Kind = cloth.Kind,
        Width = cloth.Width!.Value,
        Selvedge = cloth.Selvedge ?? Length.Zero,
        Sale = Sale(cloth.Sale),
        Shop = cloth.Shop,
        Remnants = Remnants(cloth.Remnants),
        Ground = cloth.Ground ?? ClothGround.None,
        Weight = StrengthTranslation.ClothWeight(cloth.Weight, measures.Units),
        Warp = cloth.Warp == ClothWarp.Height ? Grain.Height : Grain.Any,
    };

    private ClothSale? Sale(ClothSaleRequest? sale) => sale?.By switch
    {
        ClothSaleBy.Length => new SaleByLength(sale.Step!.Value, Money(sale.Price), sale.AtMost) { PriceFrom = PriceFrom(sale.PriceFrom) },
        ClothSaleBy.Roll => new SaleByRoll(sale.Length!.Value, Money(sale.Price), sale.ForSale) { PriceFrom = PriceFrom(sale.PriceFrom) },
        _ => null,
    };

    private ImmutableArray<Remnant> Remnants(IReadOnlyList<RemnantRequest?>? remnants)
    {
        RemnantRequest[] all = [.. (remnants ?? []).OfType<RemnantRequest>()];
        string[] ids = Marks.GiveOutNumbered([.. all.Select(r => r.Id)], "r");
        return [.. all
            .Select((r, index) => new Remnant(ids[index], r.Width!.Value, r.Length!.Value, r.Quantity ?? 1, Money(r.Value)))
            .Where(r => r.Quantity > 0)];
    }

    private LiquidSupply Liquid(LiquidRequest liquid) => new()
    {
        Id = liquid.Id!,
        Name = liquid.Name,
        Coats = liquid.Coats ?? 1,
        Faces = liquid.Faces ?? 1,
        Thinning = liquid.Thinning ?? 0,
        Loss = liquid.Loss ?? 0,
        Base = liquid.Base ?? LiquidBase.Water,
        OpenMinutes = liquid.OpenMinutes,
        DryHours = liquid.DryHours,
        LeastTemperature = liquid.LeastTemperature,
        CoverageArea = AreaFrom(liquid.Coverage!.Area!.Value),
        CoverageVolume = Volume.From(liquid.Coverage.Volume!.Value, measures.Units),
        Containers = [.. liquid.Containers!.OfType<ContainerRequest>().Select(Container)],
        Shop = liquid.Shop,
        OnHand = Volume.From(liquid.OnHand ?? 0, measures.Units),
        Value = Money(liquid.Value),
    };

    private Container Container(ContainerRequest container) =>
        new(Volume.From(container.Volume!.Value, measures.Units), Money(container.Price)) { PriceFrom = PriceFrom(container.PriceFrom) };

    private ImmutableArray<PriceStep> PriceFrom(IReadOnlyList<PriceStepRequest?>? from) =>
        from is null ? [] : [.. from.OfType<PriceStepRequest>().Select(step => new PriceStep(step.Count!.Value, Money(step.Price)))];

    private Area AreaFrom(decimal area) => Area.From(area, measures.Units);

    private Money Money(decimal? amount) => MoneyScale.Read(amount, measures.Currency);
}
