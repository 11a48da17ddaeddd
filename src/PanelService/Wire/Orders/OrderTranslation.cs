using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Validation;

namespace PanelService.Wire.Orders;

/// <summary>A request that has passed every rule becomes an order; what was left out takes the practice table's value.</summary>
internal sealed class OrderTranslation(OrderMeasures measures)
{
    private readonly GoodsTranslation _goods = new(measures);

    internal Order Read(OrderRequest request)
    {
        PanelRequest[] lines = [.. (request.Panels ?? []).OfType<PanelRequest>()];
        WishRequest[] wishes = [.. (request.Wishes ?? []).OfType<WishRequest>()];
        string[] marks = Marks.GiveOut([.. lines.Select(l => l.Mark), .. wishes.Select(w => w.Mark)]);
        return new Order
        {
            Title = request.Title ?? "",
            Units = measures.Units,
            Currency = measures.Currency,
            Panels = [.. lines.Select((line, index) => Line(line, marks[index]))],
            Wishes = [.. wishes.Select((wish, index) => Wish(wish, marks[lines.Length + index]))],
            Boards = _goods.Boards(request.Boards),
            Cloths = _goods.Cloths(request.Cloths),
            Adhesives = _goods.Liquids(request.Adhesives),
            Primers = _goods.Liquids(request.Primers),
            Saw = SettingsTranslation.Saw(request.Saw),
            Bench = SettingsTranslation.Bench(request.Bench, measures.Units, _goods.Cloths(request.Cloths)),
            Schedule = ScheduleTranslation.Settings(request.Schedule),
            Strips = _goods.Strips(request.Strips),
            Strength = StrengthTranslation.Settings(request.Strength, measures.Units),
            LabourPerHour = Money(request.Labour?.PerHour),
            Overheads = [.. (request.Overheads ?? []).OfType<OverheadRequest>().Select(o => new Overhead(o.Name ?? "", Money(o.Cost)))],
            Budget = request.Budget is null ? null : Money(request.Budget),
            Shops = [.. (request.Shops ?? []).OfType<ShopRequest>()
                .Select(s => new Shop(s.Id!, s.Name, Money(s.Charge), s.FreeFrom is null ? null : Money(s.FreeFrom)))],
            TaxPercent = request.Tax?.Percent ?? 0,
            Consumables = [.. (request.Consumables ?? []).OfType<ConsumableRequest>()
                .Select(c => new Consumable(c.Name ?? "", c.Per!.Value, Money(c.Price), c.Lasts!.Value))],
            Tools = [.. (request.Tools ?? []).OfType<ToolRequest>()
                .Select(t => new Tool(t.Name ?? "", Money(t.Price), t.SpreadOver!.Value))],
            Effort = request.Effort ?? Effort.Steady,
        };
    }

    private PanelLine Line(PanelRequest line, string mark) => new()
    {
        Mark = mark,
        Width = line.Width!.Value,
        Height = line.Height!.Value,
        Quantity = line.Quantity!.Value,
        Spares = line.Spares ?? 0,
        Surface = line.Surface ?? Surface.Bare,
        Board = line.Board,
        Cloth = line.Cloth,
        Thickness = line.Thickness,
        MayTurn = line.MayTurn ?? true,
        Adhesive = line.Adhesive,
        Primer = line.Primer,
        First = line.First ?? false,
        MountLater = line.Mount == MountTime.Later,
        Cradle = line.Cradle ?? false,
        MayBrace = line.Cradle is null,
        Pack = line.Pack ?? 0,
        ShopPrice = line.ShopPrice is null ? null : Money(line.ShopPrice),
        Worth = line.Worth is null ? null : Money(line.Worth),
        MayBuy = line.MayBuy ?? false,
    };

    private Wish Wish(WishRequest wish, string mark) => new()
    {
        Mark = mark,
        Width = wish.Width!.Value,
        Height = wish.Height!.Value,
        AtMost = wish.AtMost!.Value,
        Worth = Money(wish.Worth),
        Surface = wish.Surface ?? Surface.Bare,
        Board = wish.Board,
        Thickness = wish.Thickness,
        MayTurn = wish.MayTurn ?? true,
    };

    private Money Money(decimal? amount) => MoneyScale.Read(amount, measures.Currency);
}
