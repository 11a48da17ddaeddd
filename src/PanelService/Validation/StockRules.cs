using FluentValidation;
using PanelService.Planning.Measures;
using PanelService.Store.Stock;
using PanelService.Wire.Studio;

namespace PanelService.Validation;

/// <summary>What holds for a heap that enters the stock; what its sort needs is checked once its supply is known.</summary>
internal sealed class StockRules : AbstractValidator<StockRequest>
{
    /// <summary>Sets the rules out.</summary>
    public StockRules()
    {
        RuleFor(s => s.Currency).Fault(CurrencyFault);
        RuleFor(s => s.Sort).Needed("\"board\", \"offcut\", \"cloth\", \"remnant\", \"adhesive\", \"primer\", \"strip\" or \"panel\"");
        RuleFor(s => s.Supply).Word(WireLimits.IdLength);
        RuleFor(s => s.Name).Title(WireLimits.NameLength);
        RuleFor(s => s.Kind).Word(WireLimits.IdLength);
        RuleFor(s => s.Thickness).Size(WireLimits.Thickness);
        RuleFor(s => s.Width).Size(WireLimits.Panel, WireLimits.Side);
        RuleFor(s => s.Height).Size(WireLimits.Panel, WireLimits.Side);
        RuleFor(s => s.Length).Size(WireLimits.Side);
        RuleFor(s => s.Selvedge).Allowance(WireLimits.Side);
        RuleFor(s => s.Selvedge).Must((s, selvedge) => !(selvedge is { } lost && s.Width is { } width && lost > Length.Zero && lost <= WireLimits.Side && lost * 2 >= width))
            .WithMessage("Lost at both sides, this leaves nothing of the cloth's width.");
        RuleFor(s => s.EdgeTrim).Allowance(WireLimits.Side);
        RuleFor(s => s.Count).Count(0, WireLimits.Stock);
        RuleFor(s => s.Volume).Amount(0, WireLimits.Volume);
        RuleFor(s => s.Value).Money();
        RuleFor(s => s.Coverage).SetValidator(new CoverageRules()!);
        RuleFor(s => s.Coats).Count(1, WireLimits.Coats);
        RuleFor(s => s.Mark).Word(WireLimits.MarkLength);
        RuleFor(s => s.Note).Title(WireLimits.NameLength);
        When(s => s.Sort is { } sort && StockQuantity.IsLiquid(sort), () =>
        {
            RuleFor(s => s.Volume).Needed("how much of it there is: US fl oz for inch, mL otherwise");
            RuleFor(s => s.Count).Must(count => count is null).WithMessage("A liquid has a volume, not a count.");
        }).Otherwise(() => RuleFor(s => s.Volume).Must(volume => volume is null).WithMessage("Only a liquid has a volume; pieces have a count."));
    }

    internal static string? CurrencyFault(string? code) => code is not null && Currencies.Find(code) is null
        ? $"\"{code}\" is no currency code of ISO 4217, such as \"EUR\", \"USD\" or \"JPY\"."
        : null;
}

/// <summary>What holds for a correction.</summary>
internal sealed class StockPatchRules : AbstractValidator<StockPatchRequest>
{
    /// <summary>Sets the rules out.</summary>
    public StockPatchRules()
    {
        RuleFor(s => s.Currency).Fault(StockRules.CurrencyFault);
        RuleFor(s => s.Name).Title(WireLimits.NameLength);
        RuleFor(s => s.Kind).Word(WireLimits.IdLength);
        RuleFor(s => s.Thickness).Size(WireLimits.Thickness);
        RuleFor(s => s.Width).Size(WireLimits.Panel, WireLimits.Side);
        RuleFor(s => s.Height).Size(WireLimits.Panel, WireLimits.Side);
        RuleFor(s => s.Length).Size(WireLimits.Side);
        RuleFor(s => s.EdgeTrim).Allowance(WireLimits.Side);
        RuleFor(s => s.Count).Count(0, WireLimits.Stock);
        RuleFor(s => s.Volume).Amount(0, WireLimits.Volume);
        RuleFor(s => s.Value).Money();
        RuleFor(s => s.Note).Title(WireLimits.NameLength);
    }
}
