using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Drawing;
using PanelService.Http;
using PanelService.Work;

namespace PanelService.Endpoints;

/// <summary>Labels for panels and offcuts, a page at a time.</summary>
internal static class LabelsEndpoint
{
    private static readonly PagedPaper Paper = new("page of labels", LabelDrawing.Pages, LabelDrawing.Render);

    internal static Results<ContentHttpResult, ProblemHttpResult> Answer(
        string id, [AsParameters] LabelsQuery query, PlanDesk desk, HttpResponse response) =>
        Paper.Answer(id, query, desk, response);
}
