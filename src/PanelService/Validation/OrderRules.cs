using FluentValidation;
using PanelService.Planning.Measures;
using PanelService.Wire.Orders;

namespace PanelService.Validation;

/// <summary>What holds for an order as a whole; each part has rules of its own.</summary>
internal sealed class OrderRules : AbstractValidator<OrderRequest>
{
    /// <summary>Sets the rules out.</summary>
    public OrderRules()
    {
        RuleFor(o => o.Title).Title(WireLimits.NameLength);
        RuleFor(o => o.Currency).Fault(code => code is not null && Currencies.Find(code) is null
            ? $"\"{code}\" is no currency code of ISO 4217, such as \"EUR\", \"USD\" or \"JPY\"."
            : null);
        Parts();
        Settings();
        Goods();
        Include(new UniquenessRules());
        Include(new FitRules());
        Include(new LiquidAmountRules());
        Include(new ClothAmountRules());
    }

    private void Parts()
    {
        RuleFor(o => o.Panels).Needed($"1 to {WireLimits.Lines} lines, such as [{{ \"width\": 8, \"height\": 10, \"quantity\": 12 }}]");
        RuleFor(o => o.Panels).Fault(lines => lines?.Count is 0 or > WireLimits.Lines
            ? $"Must have 1 to {WireLimits.Lines} lines; this has {lines.Count}."
            : null);
        RuleFor(o => o.Panels).Fault(lines => PanelsOf(lines) is > WireLimits.Panels and var all
            ? $"All lines together ask for {all} panels; at most {WireLimits.Panels} are planned in one order. Send it in parts."
            : null);
        RuleForEach(o => o.Panels).SetValidator(new PanelRules()!);
        RuleFor(o => o.Wishes).AtMostItems(WireLimits.Wishes);
        RuleForEach(o => o.Wishes).SetValidator(new WishRules()!);
        RuleFor(o => o.Boards).AtMostItems(WireLimits.Goods);
        RuleForEach(o => o.Boards).SetValidator(new BoardRules()!);
        RuleFor(o => o.Cloths).AtMostItems(WireLimits.Goods);
        RuleForEach(o => o.Cloths).SetValidator(new ClothRules()!);
        RuleFor(o => o.Adhesives).AtMostItems(WireLimits.Liquids);
        RuleForEach(o => o.Adhesives).SetValidator(new LiquidRules()!);
        RuleFor(o => o.Primers).AtMostItems(WireLimits.Liquids);
        RuleForEach(o => o.Primers).SetValidator(new LiquidRules()!);
    }

    private void Settings()
    {
        RuleFor(o => o.Saw).SetValidator(new SawRules()!);
        RuleFor(o => o.Bench).SetValidator(new BenchRules()!);
        RuleFor(o => o.Strips).AtMostItems(WireLimits.Goods);
        RuleForEach(o => o.Strips).SetValidator(new StripRules()!);
        RuleFor(o => o.Schedule).SetValidator(new ScheduleRules()!);
        RuleFor(o => o.Strength).SetValidator(new StrengthRules()!);
        RuleFor(o => o.Labour).SetValidator(new LabourRules()!);
        RuleFor(o => o.Overheads).AtMostItems(WireLimits.Overheads);
        RuleForEach(o => o.Overheads).SetValidator(new OverheadRules()!);
        RuleFor(o => o.Budget).Money();
        RuleFor(o => o.Budget).Must((order, budget) => budget is null || !GoodsNeeded.Lines(order).Any(line => line.Spares > 0))
            .WithMessage("A budget does not go together with spares: leave them out, the lines say what is made at most.");
        RuleFor(o => o.Budget).Must((order, budget) => budget is null || !GoodsNeeded.Lines(order).Any(line => line.MayBuy == true))
            .WithMessage("A budget does not go together with mayBuy: it asks what can be made for the money.");
        RuleFor(o => o.Shops).AtMostItems(WireLimits.Shops);
        RuleForEach(o => o.Shops).SetValidator(new ShopRules()!);
        RuleFor(o => o.Tax).SetValidator(new TaxRules()!);
        RuleFor(o => o.Consumables).AtMostItems(WireLimits.Wear);
        RuleForEach(o => o.Consumables).SetValidator(new ConsumableRules()!);
        RuleFor(o => o.Tools).AtMostItems(WireLimits.Wear);
        RuleForEach(o => o.Tools).SetValidator(new ToolRules()!);
    }

    // Nothing is saved in this service yet, so goods that a line needs must stand in the order.
    private void Goods()
    {
        RuleFor(o => o.Boards).Must((order, boards) => boards is not null || !GoodsNeeded.Boards(order))
            .WithMessage("Missing: nothing is saved to take boards from, and some lines are cut from board. List the boards that can be bought or are on hand.");
        RuleFor(o => o.Cloths).Must((order, cloths) => cloths is not null || !GoodsNeeded.Cloths(order))
            .WithMessage("Missing: nothing is saved to take cloth from, and some lines need cloth. List the cloths that can be bought or are on hand.");
    }

    private static long PanelsOf(IReadOnlyList<PanelRequest?>? lines) =>
        (lines ?? []).OfType<PanelRequest>().Sum(line => (line.Quantity ?? 0L) + (line.Spares ?? 0L));
}
