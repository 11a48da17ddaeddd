using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.OpenApi;
using PanelService.Api.Tests.Architecture;
using PanelService.Api.Tests.Hosts;
using PanelService.Documentation;
using Swashbuckle.AspNetCore.Swagger;

namespace PanelService.Api.Tests.Documents;

/// <summary>
/// The document in openapi/ is the running service's own. With REWRITE_DOCUMENTS=1 in the environment the test writes
/// it anew; the difference is then read like code.
/// </summary>
public sealed class OpenApiTests : IDisposable
{
    private const string Switch = "REWRITE_DOCUMENTS";

    private readonly TestHost _host = new();

    private static string PathInRepository => Path.Combine(ReferenceTests.Root(), "openapi", "panel-service.json");

    [Fact]
    public async Task Document_in_the_repository_is_the_running_services()
    {
        string document = await GenerateAsync();
        if (Environment.GetEnvironmentVariable(Switch) == "1")
        {
            await File.WriteAllTextAsync(PathInRepository, document);
        }

        Assert.True(
            await File.ReadAllTextAsync(PathInRepository) == document,
            $"openapi/panel-service.json is not what the service says. Run this test with {Switch}=1 and read the difference.");
    }

    [Fact]
    public async Task Document_served_says_the_same_as_the_one_generated()
    {
        using HttpClient client = _host.CreateClient();

        JsonNode served = JsonNode.Parse(await client.GetStringAsync("/openapi/panel-service.json"))!;
        served.AsObject().Remove("servers");

        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(await GenerateAsync()), served));
        Assert.StartsWith("3.1", (string?)served["openapi"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Document_names_every_endpoint_and_each_has_name_summary_and_a_problem_or_two()
    {
        JsonNode paths = JsonNode.Parse(await GenerateAsync())!["paths"]!;
        string[] routes = [.. _host.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
            .Select(e => "/" + e.RoutePattern.RawText!.Trim('/').Replace(":int", "", StringComparison.Ordinal)).Distinct().Order(StringComparer.Ordinal)];

        Assert.Equal(routes, paths.AsObject().Select(p => p.Key).Order(StringComparer.Ordinal));
        foreach ((string path, JsonNode? operation) in Operations(paths))
        {
            Assert.True(operation!["operationId"] is not null && operation["summary"] is not null, path);
            Assert.True(path == "/health" || operation["responses"]!.AsObject().Any(r => r.Key[0] is '4' or '5'), path);
        }
    }

    [Fact]
    public async Task Document_failures_are_all_problem_documents()
    {
        JsonNode paths = JsonNode.Parse(await GenerateAsync())!["paths"]!;

        foreach ((string path, JsonNode? operation) in Operations(paths))
        {
            foreach ((string status, JsonNode? response) in operation!["responses"]!.AsObject().Where(r => r.Key[0] is '4' or '5'))
            {
                Assert.True(response!["content"]?["application/problem+json"]?["schema"] is not null, $"{path} {status}");
            }
        }
    }

    [Theory]
    [InlineData("PanelRequest", "width", "height", "quantity")]
    [InlineData("WishRequest", "width", "height", "atMost")]
    [InlineData("BoardRequest", "id", "thickness", "width", "height")]
    [InlineData("ClothRequest", "id", "width")]
    [InlineData("LiquidRequest", "id", "coverage", "containers")]
    [InlineData("OrderRequest", "panels")]
    [InlineData("ProofResponse", "spent", "leastPossible", "proven")]
    public async Task Document_says_which_fields_are_required(string schema, params string[] required)
    {
        JsonNode document = JsonNode.Parse(await GenerateAsync())!;

        JsonArray fields = document["components"]!["schemas"]![schema]!["required"]!.AsArray();

        Assert.Equal(required.Order(StringComparer.Ordinal), fields.Select(f => (string)f!).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Example_order_is_planned_and_the_example_answer_has_the_answers_shape()
    {
        using HttpClient client = _host.CreateClient();

        using HttpResponseMessage response = await client.PostOrderAsync(Examples.Order.ToJsonString());

        string answer = await response.Content.ReadAsStringAsync();
        Assert.True(response.StatusCode == HttpStatusCode.Created, answer);
        string[] expected = Shape(JsonNode.Parse(answer));
        string[] shown = Shape(Examples.Plan);
        if (!expected.SequenceEqual(shown))
        {
            await RewriteExampleAsync(answer);
        }

        Assert.Equal(expected, shown);
    }

    [Fact]
    public async Task Example_question_of_a_yield_is_answered()
    {
        using HttpClient client = _host.CreateClient();

        using HttpResponseMessage response = await client.PostOrderAsync(Examples.YieldQuestion.ToJsonString(), "/api/yield");

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
    }

    [Fact]
    public async Task Document_speaks_of_the_wire_and_of_no_type_of_ours() =>
        Assert.DoesNotContain("PanelService.", await GenerateAsync(), StringComparison.Ordinal);

    [Fact]
    public async Task Page_of_the_documentation_names_no_outside_host()
    {
        using HttpClient client = _host.CreateClient();

        string page = await client.GetStringAsync("/docs/index.html");

        Assert.Contains("swagger-ui", page, StringComparison.Ordinal);
        Assert.DoesNotContain("src=\"http", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("href=\"http", page, StringComparison.OrdinalIgnoreCase);
    }

    public void Dispose() => _host.Dispose();

    private async Task<string> GenerateAsync()
    {
        OpenApiDocument document = await _host.Services.GetRequiredService<IAsyncSwaggerProvider>().GetSwaggerAsync(ApiDocument.Name);
        return (await document.SerializeAsJsonAsync(OpenApiSpecVersion.OpenApi3_1)).ReplaceLineEndings("\n") + "\n";
    }

    // The example is embedded when the service is built: after a rewrite, build again.
    private static async Task RewriteExampleAsync(string answer)
    {
        if (Environment.GetEnvironmentVariable(Switch) == "1")
        {
            JsonNode plan = JsonNode.Parse(answer)!;
            string text = plan.ToJsonString(new JsonSerializerOptions { WriteIndented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
            string path = Path.Combine(ReferenceTests.Root(), "src", "PanelService", "Documentation", "Examples", "plan.json");
            await File.WriteAllTextAsync(path, text.Replace((string)plan["id"]!, "00112233445566778899aabbccddeeff", StringComparison.Ordinal) + "\n");
        }
    }

    private static IEnumerable<(string Path, JsonNode? Operation)> Operations(JsonNode paths) =>
        paths.AsObject().SelectMany(path => path.Value!.AsObject().Select(operation => (path.Key, operation.Value)));

    // Which fields of which kind: figures may change with the engine, fields only with the contract.
    private static string[] Shape(JsonNode? node) => [.. Fields(node, "$").Distinct().Order(StringComparer.Ordinal)];

    private static IEnumerable<string> Fields(JsonNode? node, string path) => node switch
    {
        JsonObject record => record.SelectMany(field => Fields(field.Value, $"{path}.{field.Key}")),
        JsonArray list => list.SelectMany(item => Fields(item, $"{path}[]")),
        _ => [$"{path}:{(node?.GetValueKind() == JsonValueKind.False ? JsonValueKind.True : node?.GetValueKind())}"],
    };
}
