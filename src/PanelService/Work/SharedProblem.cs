using System.Text.Json;
using Microsoft.AspNetCore.Mvc;
using PanelService.Http;

namespace PanelService.Work;

/// <summary>Problem documents on their way from the planner's host to the one that answers.</summary>
internal static class SharedProblem
{
    private static readonly JsonSerializerOptions Web = new(JsonSerializerDefaults.Web);

    internal static string Write(ProblemDetails problem) => JsonSerializer.Serialize(problem, Web);

    internal static ProblemDetails Read(string? problem) =>
        problem is null ? Problems.Internal() : JsonSerializer.Deserialize<ProblemDetails>(problem, Web) ?? Problems.Internal();
}
