using FluentValidation;
using PanelService.Planning.Measures;
using PanelService.Wire.Studio;

namespace PanelService.Validation;

/// <summary>What holds for the studio's own settings: the same as for an order's.</summary>
internal sealed class StudioSettingsRules : AbstractValidator<StudioSettingsRequest>
{
    /// <summary>Sets the rules out.</summary>
    public StudioSettingsRules()
    {
        RuleFor(s => s.Currency).Fault(code => code is not null && Currencies.Find(code) is null
            ? $"\"{code}\" is no currency code of ISO 4217, such as \"EUR\", \"USD\" or \"JPY\"."
            : null);
        RuleFor(s => s.Saw).SetValidator(new SawRules()!);
        RuleFor(s => s.Bench).SetValidator(new BenchRules()!);
        RuleFor(s => s.Strength).SetValidator(new StrengthRules()!);
        RuleFor(s => s.Labour).SetValidator(new LabourRules()!);
        RuleFor(s => s.Overheads).AtMostItems(WireLimits.Overheads);
        RuleForEach(s => s.Overheads).SetValidator(new OverheadRules()!);
        RuleFor(s => s.Consumables).AtMostItems(WireLimits.Overheads);
        RuleForEach(s => s.Consumables).SetValidator(new ConsumableRules()!);
        RuleFor(s => s.Tools).AtMostItems(WireLimits.Overheads);
        RuleForEach(s => s.Tools).SetValidator(new ToolRules()!);
    }
}
