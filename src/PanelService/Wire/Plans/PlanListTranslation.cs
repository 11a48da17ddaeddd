using PanelService.Endpoints;
using PanelService.Planning.Measures;
using PanelService.Store.Plans;

namespace PanelService.Wire.Plans;

/// <summary>The list of plans as the wire shows it.</summary>
internal static class PlanListTranslation
{
    internal static PlanListResponse Write(PlanList list) => new([.. list.Plans.Select(One)], list.Total);

    private static PlanSummaryResponse One(PlanSummary plan)
    {
        int digits = Currencies.Find(plan.Currency)?.MinorDigits ?? 2;
        return new(
            plan.Id,
            plan.Title,
            plan.CreatedAt,
            plan.Currency,
            new Money(plan.SpentMinor).In(digits),
            new Money(plan.LeastPossibleMinor).In(digits),
            plan.Panels,
            plan.IsCut,
            $"{PlanEndpoints.Address}/{plan.Id}");
    }
}
