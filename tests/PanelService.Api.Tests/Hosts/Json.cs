using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace PanelService.Api.Tests.Hosts;

/// <summary>JSON over the test host.</summary>
internal static class Json
{
    internal static Task<HttpResponseMessage> PostOrderAsync(this HttpClient client, string body, string address = "/api/plans") =>
        client.PostAsync(address, Content(Encoding.UTF8.GetBytes(body)));

    internal static async Task<HttpResponseMessage> PostOrderInBackgroundAsync(this HttpClient client, string body, string prefer = "respond-async")
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/plans") { Content = Content(Encoding.UTF8.GetBytes(body)) };
        request.Headers.Add("Prefer", prefer);
        return await client.SendAsync(request);
    }

    internal static ByteArrayContent Content(byte[] body, string? type = "application/json")
    {
        var content = new ByteArrayContent(body);
        content.Headers.ContentType = type is null ? null : MediaTypeHeaderValue.Parse(type);
        return content;
    }

    /// <summary>Plans an order that can be made.</summary>
    internal static async Task<JsonElement> PlanAsync(this HttpClient client, string body)
    {
        using HttpResponseMessage response = await client.PostOrderAsync(body);
        Assert.Equal(HttpStatusCode.Created, response.StatusCode);
        return await ReadAsync(response);
    }

    internal static async Task<JsonElement> ReadAsync(HttpResponseMessage response)
    {
        using JsonDocument document = JsonDocument.Parse(await response.Content.ReadAsStringAsync());
        return document.RootElement.Clone();
    }

    internal static async Task<JsonElement> GetJsonAsync(this HttpClient client, string address, HttpStatusCode expected = HttpStatusCode.OK)
    {
        using HttpResponseMessage response = await client.GetAsync(address);
        Assert.Equal(expected, response.StatusCode);
        return await ReadAsync(response);
    }

    /// <summary>Reads a problem document and holds it to what every one must have.</summary>
    internal static async Task<JsonElement> ReadProblemAsync(HttpResponseMessage response, int status, string type)
    {
        JsonElement problem = await ReadAsync(response);
        Assert.Equal(status, (int)response.StatusCode);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
        Assert.Equal(status, problem.GetProperty("status").GetInt32());
        Assert.Equal(type, problem.GetProperty("type").GetString());
        Assert.True(problem.GetProperty("title").GetString()!.Length > 5);
        Assert.True(problem.GetProperty("detail").GetString()!.Length > 10);
        return problem;
    }

    /// <summary>A document with one value replaced, added, or (with null) taken away.</summary>
    /// <param name="document">The whole document.</param>
    /// <param name="path">Such as <c>boards[0].price</c>.</param>
    /// <param name="json">The value's JSON, or null.</param>
    internal static string With(string document, string path, string? json)
    {
        JsonNode root = JsonNode.Parse(document)!;
        string[] steps = path.Replace("[", ".[", StringComparison.Ordinal).Split('.', StringSplitOptions.RemoveEmptyEntries);
        JsonNode parent = steps[..^1].Aggregate(root, (node, step) => Step(node, step)!);
        if (steps[^1].StartsWith('['))
        {
            parent.AsArray()[Index(steps[^1])] = JsonNode.Parse(json!);
        }
        else if (json is null)
        {
            parent.AsObject().Remove(steps[^1]);
        }
        else
        {
            parent.AsObject()[steps[^1]] = JsonNode.Parse(json);
        }

        return root.ToJsonString();
    }

    private static JsonNode? Step(JsonNode node, string step) => step.StartsWith('[') ? node[Index(step)] : node[step];

    private static int Index(string step) => int.Parse(step.Trim('[', ']'), System.Globalization.CultureInfo.InvariantCulture);
}
