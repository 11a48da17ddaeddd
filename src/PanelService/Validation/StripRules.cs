using FluentValidation;
using PanelService.Wire.Orders;

namespace PanelService.Validation;

/// <summary>What holds for strips of one length.</summary>
internal sealed class StripRules : AbstractValidator<StripRequest>
{
    /// <summary>Sets the rules out.</summary>
    public StripRules()
    {
        RuleFor(s => s.Id).Needed("a name for the strip within this order, such as \"pine-8ft\"");
        RuleFor(s => s.Id).Word(WireLimits.IdLength);
        RuleFor(s => s.Name).Title(WireLimits.NameLength);
        RuleFor(s => s.Length).Needed("its length, such as \"8 ft\"");
        RuleFor(s => s.Length).Size(WireLimits.Panel, WireLimits.Board);
        RuleFor(s => s.Price).Must((s, price) => price is not null || s.ForSale == 0)
            .WithMessage("Required: the price of one, or forSale 0 where none can be bought.");
        RuleFor(s => s.Price).Money();
        RuleFor(s => s.ForSale).Count(0, WireLimits.Stock);
        RuleFor(s => s.OnHand).Count(0, WireLimits.Stock);
        RuleFor(s => s.Value).Money();
        RuleFor(s => s.Shop).Word(WireLimits.IdLength);
        this.Rising(s => s.Price, s => s.PriceFrom);
        RuleForEach(s => s.PriceFrom).SetValidator(new PriceStepRules()!);
    }
}
