using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;

namespace PanelService.Store.Tests.Hosts;

/// <summary>JSON over HTTP.</summary>
internal static class Json
{
    internal static async Task<JsonElement> ReadAsync(this HttpResponseMessage response)
    {
        using JsonDocument document = JsonDocument.Parse(await response.Content.ReadAsStringAsync());
        return document.RootElement.Clone();
    }

    internal static async Task<JsonElement> GetJsonAsync(this HttpClient client, string address)
    {
        using HttpResponseMessage response = await client.GetAsync(new Uri(address, UriKind.Relative));
        Assert.True(response.IsSuccessStatusCode, await response.Content.ReadAsStringAsync());
        return await response.ReadAsync();
    }

    /// <summary>Sends a body; the answer may be anything.</summary>
    internal static async Task<HttpResponseMessage> SendJsonAsync(this HttpClient client, HttpMethod method, string address, string? body, string? ifMatch = null)
    {
        using var request = new HttpRequestMessage(method, new Uri(address, UriKind.Relative));
        if (body is not null)
        {
            request.Content = new StringContent(body, Encoding.UTF8, "application/json");
        }

        if (ifMatch is not null)
        {
            request.Headers.IfMatch.Add(EntityTagHeaderValue.Parse(ifMatch));
        }

        return await client.SendAsync(request);
    }

    /// <summary>Sends a body that must be taken.</summary>
    internal static async Task<JsonElement> TakenAsync(this HttpClient client, HttpMethod method, string address, string? body = null, string? ifMatch = null)
    {
        using HttpResponseMessage response = await client.SendJsonAsync(method, address, body, ifMatch);
        Assert.True(response.IsSuccessStatusCode, $"{(int)response.StatusCode} {await response.Content.ReadAsStringAsync()}");
        return await response.ReadAsync();
    }

    /// <summary>Plans an order; its address.</summary>
    internal static async Task<string> PlanAsync(this HttpClient client, string order)
    {
        using HttpResponseMessage response = await client.SendJsonAsync(HttpMethod.Post, "/api/plans", order);
        Assert.True(response.StatusCode == HttpStatusCode.Created, await response.Content.ReadAsStringAsync());
        return response.Headers.Location!.OriginalString;
    }

    /// <summary>Reads a problem document and holds it to what every one must have.</summary>
    internal static async Task<JsonElement> ReadProblemAsync(this HttpResponseMessage response, int status, string type)
    {
        string text = await response.Content.ReadAsStringAsync();
        Assert.True(status == (int)response.StatusCode, $"{(int)response.StatusCode} {text}");
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
        JsonElement problem = await response.ReadAsync();
        Assert.Equal(type, problem.GetProperty("type").GetString());
        Assert.True(problem.GetProperty("detail").GetString()!.Length > 10);
        return problem;
    }
}
