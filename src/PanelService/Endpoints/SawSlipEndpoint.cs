using System.Globalization;
using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Drawing;
using PanelService.Http;
using PanelService.Work;

namespace PanelService.Endpoints;

/// <summary>The slip to pin up beside the saw, a page at a time.</summary>
internal static class SawSlipEndpoint
{
    internal static Results<ContentHttpResult, ProblemHttpResult> Answer(
        string id, [AsParameters] LabelsQuery query, PlanDesk desk, HttpResponse response)
    {
        (LabelPaper paper, int page, ProblemHttpResult? fault) = query.Read();
        if (fault is not null)
        {
            return fault;
        }

        if (PlanPartEndpoints.PlanOf(id, desk, out ProblemHttpResult? problem) is not { } plan)
        {
            return problem!;
        }

        int pages = SawSlipDrawing.Pages(plan);
        if (page > pages)
        {
            return Problems.UnknownPart("page of the saw run", page);
        }

        response.Headers[LabelsEndpoint.PageCount] = pages.ToString(CultureInfo.InvariantCulture);
        return TypedResults.Text(SawSlipDrawing.Render(plan, paper, page), "image/svg+xml", Encoding.UTF8);
    }
}
