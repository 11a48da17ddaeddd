using System.Globalization;
using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Drawing;
using PanelService.Http;
using PanelService.Work;

namespace PanelService.Endpoints;

/// <summary>Labels for panels and offcuts, a page at a time.</summary>
internal static class LabelsEndpoint
{
    internal static Results<ContentHttpResult, ProblemHttpResult> Answer(
        string id, [AsParameters] LabelSheetQuery query, PlanDesk desk, HttpContext http)
    {
        (LabelSheet sheet, int page, SlipLanguage language, ProblemHttpResult? fault) = query.Read(http.Request);
        if (fault is not null)
        {
            return fault;
        }

        if (PlanPartEndpoints.PlanOf(id, desk, out ProblemHttpResult? problem) is not { } plan)
        {
            return problem!;
        }

        int pages = LabelDrawing.Pages(plan, sheet);
        if (page > pages)
        {
            return Problems.UnknownPart("page of labels", page);
        }

        http.Response.Headers[PagedPaper.PageCount] = pages.ToString(CultureInfo.InvariantCulture);
        return TypedResults.Text(LabelDrawing.Render(plan, sheet, page, query.Date ?? "", language), "image/svg+xml", Encoding.UTF8);
    }
}
