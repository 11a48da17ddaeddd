using FluentValidation;
using PanelService.Wire.Orders;

namespace PanelService.Validation;

/// <summary>What holds for one adhesive or primer.</summary>
internal sealed class LiquidRules : AbstractValidator<LiquidRequest>
{
    /// <summary>Sets the rules out.</summary>
    public LiquidRules()
    {
        RuleFor(l => l.Id).Needed("a name for the liquid within this order, such as \"glue\"");
        RuleFor(l => l.Id).Word(WireLimits.IdLength);
        RuleFor(l => l.Name).Title(WireLimits.NameLength);
        RuleFor(l => l.Coats).Count(1, WireLimits.Coats);
        RuleFor(l => l.Faces).Count(1, 2);
        RuleFor(l => l.Thinning).Amount(0, 90);
        RuleFor(l => l.Loss).Amount(0, 100);
        RuleFor(l => l.OpenMinutes).Amount(1, 1000);
        RuleFor(l => l.DryHours).Amount(0, WireLimits.PressHours);
        RuleFor(l => l.LeastTemperature).Amount(-40, 60);
        RuleFor(l => l.Coverage).Needed("how far it goes, such as { \"area\": 80, \"volume\": 0.4 }");
        RuleFor(l => l.Coverage).SetValidator(new CoverageRules()!);
        RuleFor(l => l.Containers).Needed("what it can be bought in, such as [{ \"volume\": 8, \"price\": 7.90 }]");
        RuleFor(l => l.Containers).AtMostItems(WireLimits.Containers);
        RuleFor(l => l.Containers).Must((l, containers) => containers is not { Count: 0 } || l.OnHand > 0)
            .WithMessage("Must have at least one container where nothing is on hand.");
        RuleForEach(l => l.Containers).SetValidator(new ContainerRules()!);
        RuleFor(l => l.Shop).Word(WireLimits.IdLength);
        RuleFor(l => l.OnHand).Fault(volume => volume is < 0 or > WireLimits.Volume
            ? $"Must be a volume from 0 to {WireLimits.Volume}; this is {volume}."
            : null);
        RuleFor(l => l.Value).Money();
    }
}

/// <summary>What holds for how far a liquid goes.</summary>
internal sealed class CoverageRules : AbstractValidator<CoverageRequest>
{
    /// <summary>Sets the rules out.</summary>
    public CoverageRules()
    {
        RuleFor(c => c.Area).Needed("an area");
        RuleFor(c => c.Area).Amount(WireLimits.LeastArea, WireLimits.CoverageArea);
        RuleFor(c => c.Volume).Needed("the volume that covers the area once");
        RuleFor(c => c.Volume).Amount(WireLimits.LeastVolume, WireLimits.Volume);
    }
}

/// <summary>What holds for one bottle, tin or tub.</summary>
internal sealed class ContainerRules : AbstractValidator<ContainerRequest>
{
    /// <summary>Sets the rules out.</summary>
    public ContainerRules()
    {
        RuleFor(c => c.Volume).Needed("what is in it");
        RuleFor(c => c.Volume).Amount(WireLimits.LeastVolume, WireLimits.Volume);
        RuleFor(c => c.Price).Needed("its price");
        RuleFor(c => c.Price).Money();
        this.Rising(c => c.Price, c => c.PriceFrom);
        RuleForEach(c => c.PriceFrom).SetValidator(new PriceStepRules()!);
    }
}
