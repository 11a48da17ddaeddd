using PanelService.Planning.Plans;

namespace PanelService.Wire.Plans;

/// <summary>The tally as the wire shows it.</summary>
internal sealed class CostTranslation(Plan plan)
{
    private readonly WireNumbers _numbers = new(plan.Order);

    internal CostResponse Write() => new()
    {
        Cash = _numbers.Of(plan.Cost.Cash),
        OnHandUsed = _numbers.Of(plan.Cost.OnHandUsed),
        Used = _numbers.Of(plan.Cost.Used),
        BackOnRack = _numbers.Of(plan.Cost.BackOnRack),
        Panels = [.. plan.Cost.Lines.Select(Line)],
        SavedTotal = _numbers.Of(plan.Cost.SavedTotal),
        SavedShare = WireNumbers.Share(plan.Cost.SavedShare),
        Waste = Waste(plan.Cost.Waste),
        Consumables = [.. plan.Cost.Consumables.Select(Consumable)],
        Tools = [.. plan.Cost.Tools.Select(use => new ToolUseResponse(use.Tool.Name, use.Panels, _numbers.Of(use.Cost)))],
    };

    private PanelCostResponse Line(LineCost line) => new()
    {
        Mark = line.Mark,
        Quantity = line.Quantity,
        Board = _numbers.Of(line.Board),
        Cloth = _numbers.Of(line.Cloth),
        Adhesive = _numbers.Of(line.Adhesive),
        Primer = _numbers.Of(line.Primer),
        Strips = _numbers.Of(line.Strips),
        Ready = _numbers.Of(line.Ready),
        Delivery = _numbers.Of(line.Delivery),
        Labour = _numbers.Of(line.Labour),
        Overheads = _numbers.Of(line.Overheads),
        Consumables = _numbers.Of(line.Consumables),
        Tools = _numbers.Of(line.Tools),
        Each = _numbers.OfMinor((decimal)line.Total.Minor / line.Quantity),
        Total = _numbers.Of(line.Total),
        ByArea = ByArea(line.ByArea),
        ShopPrice = _numbers.Of(line.ShopPrice),
        SavedEach = SavedMinor(line) is { } saved ? _numbers.OfMinor(saved) : null,
        SavedShare = line.ShopPrice is { Minor: > 0 } price ? WireNumbers.Share(SavedMinor(line) / price.Minor) : null,
    };

    private static decimal? SavedMinor(LineCost line) =>
        line.ShopPrice is { } price ? price.Minor - ((decimal)line.Total.Minor / line.Quantity) : null;

    private AreaCostResponse ByArea(AreaCost cost) => new(
        _numbers.OfMinor(cost.Board),
        _numbers.OfMinor(cost.Cloth),
        _numbers.OfMinor(cost.Adhesive),
        _numbers.OfMinor(cost.Primer),
        _numbers.OfMinor(cost.Each));

    private ConsumableUseResponse Consumable(ConsumableUse use) => new(
        use.Consumable.Name,
        use.Consumable.Per,
        WireNumbers.Figure(use.Amount),
        WireNumbers.Figure(use.Consumable.Price.In(plan.Order.Currency.MinorDigits) / use.Consumable.Lasts),
        _numbers.Of(use.Cost));

    private WasteResponse Waste(WasteTally waste) => new(
        _numbers.Of(waste.Kerf),
        _numbers.Of(waste.Trim),
        _numbers.Of(waste.Scrap),
        _numbers.Of(waste.Cloth),
        _numbers.Of(waste.BoardCost),
        _numbers.Of(waste.ClothCost));
}
