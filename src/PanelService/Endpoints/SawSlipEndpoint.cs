using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Drawing;
using PanelService.Http;
using PanelService.Work;

namespace PanelService.Endpoints;

/// <summary>The slip to pin up beside the saw, and the one for the supplier's counter, a page at a time.</summary>
internal static class SawSlipEndpoint
{
    internal static Results<ContentHttpResult, ProblemHttpResult> Answer(
        string id, [AsParameters] SlipQuery query, PlanDesk desk, HttpContext http) =>
        Answer(id, query, desk, (http, language => new PagedPaper(
            "page of the saw run",
            plan => SawSlipDrawing.Pages(plan, language),
            (plan, paper, page) => SawSlipDrawing.Render(plan, paper, page, language))));

    internal static Results<ContentHttpResult, ProblemHttpResult> AnswerSupplier(
        string id, [AsParameters] SlipQuery query, PlanDesk desk, HttpContext http) =>
        Answer(id, query, desk, (http, language => new PagedPaper(
            "page of the supplier's slip",
            plan => SupplierSlipDrawing.Pages(plan, language),
            (plan, paper, page) => SupplierSlipDrawing.Render(plan, paper, page, language))));

    private static Results<ContentHttpResult, ProblemHttpResult> Answer(
        string id, SlipQuery query, PlanDesk desk, (HttpContext Http, Func<SlipLanguage, PagedPaper> Paper) slip)
    {
        var (language, fault) = query.Language(slip.Http.Request);
        if (fault is not null)
        {
            return fault;
        }

        slip.Http.Response.Headers.Vary = "Accept-Language";
        return slip.Paper(language).Answer(id, query.Place, desk, slip.Http.Response);
    }
}
