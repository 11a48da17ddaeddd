using PanelService.Planning.Plans;
using PanelService.Wire.Plans;

namespace PanelService.Wire.Curves;

/// <summary>A point of a batch curve as the wire shows it.</summary>
internal static class CurveTranslation
{
    internal static CurvePointResponse Write(Plan plan, int times)
    {
        var numbers = new WireNumbers(plan.Order);
        int panels = plan.Order.Panels.Sum(line => line.Quantity);
        return new CurvePointResponse
        {
            Times = times,
            Panels = panels,
            Cash = numbers.Of(plan.Cost.Cash),
            Used = numbers.Of(plan.Cost.Used),
            Each = numbers.OfMinor((decimal)OfOrderedLines(plan) / panels),
            Proof = new ProofResponse(numbers.Of(plan.Proof.Spent), numbers.Of(plan.Proof.LeastPossible), plan.Proof.Proven),
            StoppedEarly = plan.StoppedEarly ? true : null,
        };
    }

    private static long OfOrderedLines(Plan plan)
    {
        HashSet<string> ordered = [.. plan.Order.Panels.Select(line => line.Mark)];
        return plan.Cost.Lines.Where(line => ordered.Contains(line.Mark)).Sum(line => line.Total.Minor);
    }
}
