namespace PanelService.Store.Plans;

/// <summary>What looking a plan up comes to.</summary>
public abstract record PlanFinding
{
    private protected PlanFinding()
    {
    }
}

/// <summary>There it is.</summary>
/// <param name="Plan">The plan.</param>
public sealed record PlanFound(FinishedPlan Plan) : PlanFinding;

/// <summary>There is none.</summary>
public sealed record PlanNotFound : PlanFinding;

/// <summary>A newer program stored it in a form that this one does not read.</summary>
/// <param name="Version">The document's version.</param>
public sealed record PlanTooNew(int Version) : PlanFinding;
