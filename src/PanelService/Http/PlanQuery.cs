using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using PanelService.Wire.Reading;

namespace PanelService.Http;

/// <summary>What a plan's address may ask for.</summary>
/// <param name="Drawings">"inline": every sheet and cloth carries its drawing as SVG text.</param>
internal sealed record PlanQuery([property: FromQuery(Name = "drawings")] string? Drawings)
{
    private const string InlineWord = "inline";

    internal bool Inline => Drawings == InlineWord;

    internal ProblemHttpResult? Fault()
    {
        var faults = new Faults();
        AddFaults(faults);
        return faults.Any ? Problems.Invalid(faults) : null;
    }

    internal void AddFaults(Faults faults)
    {
        if (Drawings is not (null or InlineWord))
        {
            faults.Add("drawings", $"Expected \"{InlineWord}\", or nothing: then each sheet names its drawing's address.");
        }
    }
}
