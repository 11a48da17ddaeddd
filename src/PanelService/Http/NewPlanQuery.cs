using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using PanelService.Wire.Reading;

namespace PanelService.Http;

/// <summary>What the address of a plan to be made may ask for.</summary>
/// <param name="Drawings">"inline": every sheet and cloth carries its drawing as SVG text.</param>
/// <param name="Keep">"false": the plan is answered and forgotten, 200 instead of 201. "true" where not said.</param>
internal sealed record NewPlanQuery(
    [property: FromQuery(Name = "drawings")] string? Drawings, [property: FromQuery(Name = NewPlanQuery.KeepName)] string? Keep)
{
    private const string KeepName = "keep";
    private const string Kept = "true";
    private const string Forgotten = "false";

    internal bool Inline => new PlanQuery(Drawings).Inline;

    /// <summary>Whether nothing of the plan is to stay.</summary>
    internal bool Passes => Keep == Forgotten;

    /// <summary>The same of an address that nothing else is read of.</summary>
    internal static bool IsPassing(IQueryCollection query) => query[KeepName] == Forgotten;

    internal ProblemHttpResult? Fault()
    {
        var faults = new Faults();
        new PlanQuery(Drawings).AddFaults(faults);
        if (Keep is not (null or Kept or Forgotten))
        {
            faults.Add(KeepName, $"Expected \"{Forgotten}\" for a plan that is answered and forgotten, or \"{Kept}\", as where it is not said.");
        }

        return faults.Any ? Problems.Invalid(faults) : null;
    }
}
