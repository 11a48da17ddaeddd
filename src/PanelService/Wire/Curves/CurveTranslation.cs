using PanelService.Planning.Curves;
using PanelService.Wire.Plans;

namespace PanelService.Wire.Curves;

/// <summary>A batch curve as the wire shows it.</summary>
internal static class CurveTranslation
{
    internal static BatchCurveResponse Write(string id, BatchCurve curve) => new()
    {
        Id = id,
        Units = curve.Order.Units,
        Currency = curve.Order.Currency.Code,
        Points = [.. curve.Points.Select(Write)],
        Steps = [.. curve.Steps.Select(step => new CurveStepResponse(step.Times, step.Good.Id, step.Good.Name, step.Good.SaleUnit, step.From, step.To))],
        RollFrom = Threshold(curve.RollFrom),
        MakingFrom = Threshold(curve.MakingFrom),
        EndsBecause = curve.EndsBecause,
    };

    private static CurveThresholdResponse? Threshold(CurvePoint? point) => point is null ? null : new(point.Times, point.Panels);

    private static CurvePointResponse Write(CurvePoint point)
    {
        var plan = point.Plan;
        var numbers = new WireNumbers(plan.Order);
        return new CurvePointResponse
        {
            Times = point.Times,
            Panels = point.Panels,
            Cash = numbers.Of(plan.Cost.Cash),
            Used = numbers.Of(plan.Cost.Used),
            Each = numbers.OfMinor(point.EachMinor),
            WithTools = numbers.Of(point.MadeWithTools),
            Shop = numbers.Of(point.Shop),
            Proof = new ProofResponse(numbers.Of(plan.Proof.Spent), numbers.Of(plan.Proof.LeastPossible), plan.Proof.Proven),
            StoppedEarly = plan.StoppedEarly ? true : null,
        };
    }
}
