using FluentValidation;
using PanelService.Wire.Orders;

namespace PanelService.Validation;

/// <summary>What holds for one consumable.</summary>
internal sealed class ConsumableRules : AbstractValidator<ConsumableRequest>
{
    /// <summary>Sets the rules out.</summary>
    public ConsumableRules()
    {
        RuleFor(c => c.Name).Title(WireLimits.NameLength);
        RuleFor(c => c.Per).Needed("what wears it out: \"sawMetre\", \"sawFoot\", \"clothMetre\", \"clothFoot\" or \"panel\"");
        RuleFor(c => c.Price).Needed("the price of a new one");
        RuleFor(c => c.Price).Money();
        RuleFor(c => c.Lasts).Needed("how many metres, feet or panels one does");
        RuleFor(c => c.Lasts).Amount(WireLimits.LeastLasts, WireLimits.MostLasts);
    }
}

/// <summary>What holds for one tool.</summary>
internal sealed class ToolRules : AbstractValidator<ToolRequest>
{
    /// <summary>Sets the rules out.</summary>
    public ToolRules()
    {
        RuleFor(t => t.Name).Title(WireLimits.NameLength);
        RuleFor(t => t.Price).Needed("what the tool costs");
        RuleFor(t => t.Price).Money();
        RuleFor(t => t.SpreadOver).Needed("over how many panels the price is spread");
        RuleFor(t => t.SpreadOver).Count(1, WireLimits.Stock);
    }
}
