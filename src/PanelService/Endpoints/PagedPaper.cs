using System.Globalization;
using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Drawing;
using PanelService.Http;
using PanelService.Planning.Plans;
using PanelService.Work;

namespace PanelService.Endpoints;

/// <summary>Something of a plan to print, a page at a time.</summary>
/// <param name="PageName">What one of its pages is called where it is not there.</param>
/// <param name="Pages">How many pages a plan has.</param>
/// <param name="Render">Draws a page.</param>
internal sealed record PagedPaper(string PageName, Func<Plan, int> Pages, Func<Plan, LabelPaper, int, string> Render)
{
    /// <summary>The header that says how many pages there are.</summary>
    internal const string PageCount = "Page-Count";

    internal Results<ContentHttpResult, ProblemHttpResult> Answer(
        string id, LabelsQuery query, PlanDesk desk, HttpResponse response)
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

        int pages = Pages(plan);
        if (page > pages)
        {
            return Problems.UnknownPart(PageName, page);
        }

        response.Headers[PageCount] = pages.ToString(CultureInfo.InvariantCulture);
        return TypedResults.Text(Render(plan, paper, page), "image/svg+xml", Encoding.UTF8);
    }
}
