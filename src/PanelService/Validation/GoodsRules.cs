using FluentValidation;
using PanelService.Planning.Measures;
using PanelService.Wire.Orders;

namespace PanelService.Validation;

/// <summary>What holds for one board of an order: what is needed to buy and to cut it.</summary>
internal sealed class BoardRules : AbstractValidator<BoardRequest>
{
    /// <summary>Sets the rules out.</summary>
    public BoardRules()
    {
        RuleFor(b => b.Id).Needed("a name for the board within this order, such as \"hb3\"");
        RuleFor(b => b.Thickness).Needed("the board's thickness, such as \"1/8\" or \"3.2 mm\"");
        RuleFor(b => b.Price).Must((b, price) => price is not null || b.ForSale == 0)
            .WithMessage("Required: the price of one sheet, or forSale 0 where none can be bought.");
        Include(new BoardShapeRules());
    }
}

/// <summary>What holds for one board wherever it is asked about.</summary>
internal sealed class BoardShapeRules : AbstractValidator<BoardRequest>
{
    /// <summary>Sets the rules out.</summary>
    public BoardShapeRules()
    {
        RuleFor(b => b.Id).Word(WireLimits.IdLength);
        RuleFor(b => b.Name).Title(WireLimits.NameLength);
        RuleFor(b => b.Kind).Word(WireLimits.IdLength);
        RuleFor(b => b.Thickness).Size(WireLimits.Thickness);
        RuleFor(b => b.Width).Needed("the whole sheet's width");
        RuleFor(b => b.Width).Size(WireLimits.Panel, WireLimits.Board);
        RuleFor(b => b.Height).Needed("the whole sheet's height");
        RuleFor(b => b.Height).Size(WireLimits.Panel, WireLimits.Board);
        RuleFor(b => b.Price).Money();
        RuleFor(b => b.ForSale).Count(0, WireLimits.Stock);
        RuleFor(b => b.OnHand).Count(0, WireLimits.Stock);
        RuleFor(b => b.Value).Money();
        RuleFor(b => b.EdgeTrim).Allowance(WireLimits.Side);
        RuleFor(b => b.Density).Amount(50, 5000);
        RuleFor(b => b.Elasticity).Amount(10, 500_000);
        RuleFor(b => b.ElasticityAcross).Amount(10, 500_000);
        RuleFor(b => b.Shear).Amount(1, 200_000);
        RuleFor(b => b.Poisson).Amount(0, 0.49m);
        RuleFor(b => b.Expansion).Amount(0, 10);
        RuleFor(b => b.Shop).Word(WireLimits.IdLength);
        this.Rising(b => b.Price, b => b.PriceFrom);
        RuleForEach(b => b.PriceFrom).SetValidator(new PriceStepRules()!);
    }
}

/// <summary>What holds for one cloth.</summary>
internal sealed class ClothRules : AbstractValidator<ClothRequest>
{
    /// <summary>Sets the rules out.</summary>
    public ClothRules()
    {
        RuleFor(c => c.Id).Needed("a name for the cloth within this order, such as \"linen-62\"");
        RuleFor(c => c.Id).Word(WireLimits.IdLength);
        RuleFor(c => c.Name).Title(WireLimits.NameLength);
        RuleFor(c => c.Kind).Word(WireLimits.IdLength);
        RuleFor(c => c.Width).Needed("the roll's full width");
        RuleFor(c => c.Width).Size(WireLimits.Side);
        RuleFor(c => c.Selvedge).Allowance(WireLimits.Side);
        RuleFor(c => c.Selvedge).Must((c, selvedge) => !LeavesNothing(selvedge, c.Width))
            .WithMessage("Lost at both sides, this leaves nothing of the cloth's width.");
        RuleFor(c => c.Weight).Amount(0, 10_000);
        RuleFor(c => c.Sale).Must((c, sale) => sale is not null || c.Remnants is { Count: > 0 })
            .WithMessage("Required where there are no remnants: how the cloth is sold, such as { \"by\": \"length\", \"step\": 36, \"price\": 31.00 }.");
        RuleFor(c => c.Sale).SetValidator(new ClothSaleRules()!);
        RuleFor(c => c.Shop).Word(WireLimits.IdLength);
        RuleFor(c => c.Remnants).AtMostItems(WireLimits.Remnants);
        RuleForEach(c => c.Remnants).SetValidator(new RemnantRules()!);
    }

    private static bool LeavesNothing(Length? selvedge, Length? width) =>
        selvedge is { } s && width is { } w && s > Length.Zero && w > Length.Zero && s <= WireLimits.Side && s * 2 >= w;
}

/// <summary>What holds for the way a cloth is sold.</summary>
internal sealed class ClothSaleRules : AbstractValidator<ClothSaleRequest>
{
    /// <summary>Sets the rules out.</summary>
    public ClothSaleRules()
    {
        RuleFor(s => s.By).Needed("\"length\" or \"roll\"");
        RuleFor(s => s.Price).Needed("the price of one step or one roll");
        RuleFor(s => s.Price).Money();
        this.Rising(s => s.Price, s => s.PriceFrom);
        RuleForEach(s => s.PriceFrom).SetValidator(new PriceStepRules()!);
        RuleFor(s => s.Step).Size(WireLimits.Side);
        RuleFor(s => s.Length).Size(WireLimits.Side);
        RuleFor(s => s.AtMost).Count(0, WireLimits.Stock);
        RuleFor(s => s.ForSale).Count(0, WireLimits.Stock);
        When(s => s.By == ClothSaleBy.Length, () =>
        {
            RuleFor(s => s.Step).Needed("the length it is sold in whole multiples of");
            RuleFor(s => s.Length).Must(length => length is null).WithMessage("Belongs to a sale by roll; one by length has step.");
            RuleFor(s => s.ForSale).Must(rolls => rolls is null).WithMessage("Belongs to a sale by roll; one by length has atMost.");
        });
        When(s => s.By == ClothSaleBy.Roll, () =>
        {
            RuleFor(s => s.Length).Needed("the length of a roll");
            RuleFor(s => s.Step).Must(step => step is null).WithMessage("Belongs to a sale by length; one by roll has length.");
            RuleFor(s => s.AtMost).Must(steps => steps is null).WithMessage("Belongs to a sale by length; one by roll has forSale.");
        });
    }
}

/// <summary>What holds for one remnant.</summary>
internal sealed class RemnantRules : AbstractValidator<RemnantRequest>
{
    /// <summary>Sets the rules out.</summary>
    public RemnantRules()
    {
        RuleFor(r => r.Id).Word(WireLimits.IdLength);
        RuleFor(r => r.Width).Needed("the remnant's width, across the roll");
        RuleFor(r => r.Width).Size(WireLimits.Side);
        RuleFor(r => r.Length).Needed("the remnant's length, along the roll");
        RuleFor(r => r.Length).Size(WireLimits.Side);
        RuleFor(r => r.Quantity).Count(0, WireLimits.Stock);
        RuleFor(r => r.Value).Money();
    }
}
