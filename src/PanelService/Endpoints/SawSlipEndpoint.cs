using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Drawing;
using PanelService.Http;
using PanelService.Work;

namespace PanelService.Endpoints;

/// <summary>The slip to pin up beside the saw, a page at a time.</summary>
internal static class SawSlipEndpoint
{
    private static readonly PagedPaper Paper = new("page of the saw run", SawSlipDrawing.Pages, SawSlipDrawing.Render);

    internal static Results<ContentHttpResult, ProblemHttpResult> Answer(
        string id, [AsParameters] LabelsQuery query, PlanDesk desk, HttpResponse response) =>
        Paper.Answer(id, query, desk, response);
}
