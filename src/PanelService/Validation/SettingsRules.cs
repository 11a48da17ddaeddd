using FluentValidation;
using PanelService.Wire.Orders;

namespace PanelService.Validation;

/// <summary>What holds for the saw.</summary>
internal sealed class SawRules : AbstractValidator<SawRequest>
{
    /// <summary>Sets the rules out.</summary>
    public SawRules()
    {
        RuleFor(s => s.Kerf).Allowance(WireLimits.Kerf);
        RuleFor(s => s.EdgeTrim).Allowance(WireLimits.Side);
        RuleFor(s => s.Undersize).Allowance(WireLimits.Margin);
        RuleFor(s => s.LeastFenceLength).Allowance(WireLimits.Side);
        RuleFor(s => s.SmallestKept).SetValidator(new LengthPairRules()!);
        RuleFor(s => s.FenceReach).Size(WireLimits.FenceReach, WireLimits.Side);
        RuleFor(s => s.Heaviest).Fault(weight => weight is { Grams: < WireLimits.LeastGrams or > WireLimits.Grams }
            ? "Must be a weight from 50 g to 1000 kg, such as 20 (lb where the order is in inches, else g) or \"9 kg\"; left out: no limit."
            : null);
        RuleFor(s => s.Largest).SetValidator(new HandledSizeRules()!);
        RuleFor(s => s.Carry).SetValidator(new HandledSizeRules()!);
        RuleFor(s => s.SupplierKerf).Allowance(WireLimits.Kerf);
    }
}

/// <summary>What holds for the largest piece that car or person takes.</summary>
internal sealed class HandledSizeRules : AbstractValidator<LengthPair>
{
    /// <summary>Sets the rules out.</summary>
    public HandledSizeRules() =>
        RuleFor(p => p).Fault(pair => new[] { pair.First, pair.Second }.Any(side => side < WireLimits.Handled || side > WireLimits.Side)
            ? "Must be two lengths from 50 mm to 100 m, such as [48, 60]; left out: no limit."
            : null);
}

/// <summary>What holds for the bench.</summary>
internal sealed class BenchRules : AbstractValidator<BenchRequest>
{
    /// <summary>Sets the rules out.</summary>
    public BenchRules()
    {
        RuleFor(b => b.Margin).Fault(margin => margin is not null && !WithinBounds(margin)
            ? "Must be one length from 0 to 1 m, or two: [left-right, top-bottom], or four: [top, right, bottom, left]."
            : null);
        RuleFor(b => b.SmallestCloth).SetValidator(new LengthPairRules()!);
        RuleFor(b => b.PressHours).Amount(WireLimits.LeastHours, WireLimits.PressHours);
        RuleFor(b => b.PressSpaces).Count(1, WireLimits.BenchCount);
        RuleFor(b => b.StackHeight).Count(1, WireLimits.BenchCount);
        RuleFor(b => b.Shrinkage).Fault(percents => percents is { Width: < 0 or > 50 } or { Height: < 0 or > 50 }
            ? "Must be one percentage from 0 to 50, or two: [along the width, along the height]."
            : null);
        RuleFor(b => b.Pressure).Amount(0.001m, 200);
        RuleFor(b => b.OpenMinutes).Amount(1, 1000);
        RuleFor(b => b.DryHours).Amount(0, WireLimits.PressHours);
        RuleFor(b => b.RestHours).Amount(0, WireLimits.PressHours);
        RuleFor(b => b.ClampHours).Amount(0, WireLimits.PressHours);
        RuleFor(b => b.RoomTemperature).Amount(-40, 60);
    }

    private static bool WithinBounds(Margin margin) =>
        new[] { margin.Sides, margin.Ends, margin.Right ?? margin.Sides, margin.Bottom ?? margin.Ends }.All(side => side.Steps >= 0 && side <= WireLimits.Margin);
}

/// <summary>What holds for the smallest leftover that is kept.</summary>
internal sealed class LengthPairRules : AbstractValidator<LengthPair>
{
    /// <summary>Sets the rules out.</summary>
    public LengthPairRules() =>
        RuleFor(p => p).Fault(pair => new[] { pair.First, pair.Second }.Any(side => side.Steps <= 0 || side > WireLimits.Side)
            ? "Must be two lengths above 0 and at most 100 m, such as [4, 6]."
            : null);
}

/// <summary>What holds for labour.</summary>
internal sealed class LabourRules : AbstractValidator<LabourRequest>
{
    /// <summary>Sets the rules out.</summary>
    public LabourRules() => RuleFor(l => l.PerHour).Money();
}
