using FluentValidation;
using PanelService.Wire.Studio;

namespace PanelService.Validation;

/// <summary>What holds for how a batch came out.</summary>
internal sealed class CutRules : AbstractValidator<CutRequest>
{
    /// <summary>Sets the rules out.</summary>
    public CutRules()
    {
        RuleFor(c => c.Spoiled).AtMostItems(WireLimits.Lines * 2);
        RuleForEach(c => c.Spoiled).SetValidator(new SpoiledRules()!);
        RuleFor(c => c.SpoiledSheets).AtMostItems(WireLimits.Lines * 2);
        RuleForEach(c => c.SpoiledSheets).SetValidator(new SpoiledSheetRules()!);
    }
}

/// <summary>What holds for spoiled sheets of one layout.</summary>
internal sealed class SpoiledSheetRules : AbstractValidator<SpoiledSheetRequest>
{
    /// <summary>Sets the rules out.</summary>
    public SpoiledSheetRules()
    {
        RuleFor(s => s.Sheet).Needed("the sheet's number in the plan");
        RuleFor(s => s.Sheet).Count(1, WireLimits.Quantity * 2);
        RuleFor(s => s.Count).Needed("how many were spoiled");
        RuleFor(s => s.Count).Count(1, WireLimits.Quantity * 2);
    }
}

/// <summary>What holds for one line's spoiled panels.</summary>
internal sealed class SpoiledRules : AbstractValidator<SpoiledRequest>
{
    /// <summary>Sets the rules out.</summary>
    public SpoiledRules()
    {
        RuleFor(s => s.Mark).Needed("the line's mark");
        RuleFor(s => s.Count).Needed("how many were spoiled");
        RuleFor(s => s.Count).Count(1, WireLimits.Quantity * 2);
    }
}
