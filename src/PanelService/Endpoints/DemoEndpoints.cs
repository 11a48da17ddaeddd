using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Hosting;

namespace PanelService.Endpoints;

/// <summary>Orders of an invented scenario, ready to be sent to <c>POST /api/plans</c>.</summary>
internal static class DemoEndpoints
{
    private const string Suffix = ".json";

    internal static void MapDemo(this IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder demo = routes.MapGroup("/api/demo").WithTags("Demo orders").ProducesProblem(StatusCodes.Status500InternalServerError);

        demo.MapGet("", Names).WithName("ListDemoOrders").WithSummary("The names of the demo orders.");
        demo.MapGet("{name}", One).WithName("GetDemoOrder").WithSummary("A demo order.")
            .Produces<Wire.Orders.OrderRequest>()
            .ProducesProblem(StatusCodes.Status404NotFound);
    }

    private static Ok<string[]> Names(IHostEnvironment environment) => TypedResults.Ok(Files(environment).Keys.ToArray());

    // Looked up among the names there are: no part of an address ever becomes part of a path.
    private static Results<PhysicalFileHttpResult, ProblemHttpResult> One(string name, IHostEnvironment environment) =>
        Files(environment).TryGetValue(name, out string? path)
            ? TypedResults.PhysicalFile(path, "application/json")
            : TypedResults.Problem(
                type: Http.Problems.NoSuchPart,
                title: "There is no such demo order.",
                detail: "GET /api/demo lists the names.",
                statusCode: StatusCodes.Status404NotFound);

    private static SortedDictionary<string, string> Files(IHostEnvironment environment)
    {
        var files = new SortedDictionary<string, string>(StringComparer.Ordinal);
        string folder = Folders.DemoData(environment.IsDevelopment());
        foreach (string path in Directory.Exists(folder) ? Directory.GetFiles(folder, "*" + Suffix) : [])
        {
            files[Path.GetFileNameWithoutExtension(path)] = path;
        }

        return files;
    }
}
