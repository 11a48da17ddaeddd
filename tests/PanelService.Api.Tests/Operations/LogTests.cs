using System.Text.Json;
using PanelService.Api.Tests.Hosts;
using PanelService.Tests.Shared;

namespace PanelService.Api.Tests.Operations;

/// <summary>What is written down of a request: its address, answer and id, and nothing of what the order says.</summary>
public sealed class LogTests
{
    private const string Title = "A portrait nobody is to hear of";

    // In small letters: the ids of requests are of capitals and digits, and sooner or later hold any few of those.
    private const string Mark = "unheard";

    [Fact]
    public async Task Log_has_a_line_for_every_request_with_its_id_and_no_order_in_it_nor_a_line_of_the_clients_own()
    {
        using var data = new DataFolder();
        string id;
        await using (var host = new TestHost(null, (DataFolder.Setting, data.Path)))
        {
            using HttpClient client = host.CreateClient();
            string order = Json.With(Json.With(SampleOrders.Smallest, "title", JsonSerializer.Serialize(Title)), "panels[0].mark", JsonSerializer.Serialize(Mark));
            using HttpResponseMessage made = await client.PostOrderAsync(order);
            Assert.Equal(HttpStatusCode.Created, made.StatusCode);
            using HttpResponseMessage wrong = await client.PostOrderAsync(Json.With(order, "panels[0].width", "\"nobody is to hear\""));
            Assert.Equal(HttpStatusCode.BadRequest, wrong.StatusCode);
            using HttpResponseMessage forged = await client.GetAsync("/nothing%0A[12:00:00 INF] forged");
            Assert.Equal(HttpStatusCode.NotFound, forged.StatusCode);
            id = Assert.Single(made.Headers.GetValues("Request-Id"));
        }

        string[] lines = [.. Directory.EnumerateFiles(Path.Combine(data.Path, "logs")).SelectMany(File.ReadAllLines)];
        JsonElement[] requests = [.. lines.Select(line => JsonDocument.Parse(line).RootElement).Where(line => line.TryGetProperty("StatusCode", out _))];
        Assert.Equal([201, 400, 404], requests.Select(line => line.GetProperty("StatusCode").GetInt32()));
        Assert.Equal(id, requests[0].GetProperty("RequestId").GetString());
        Assert.Equal("/nothing%0A%5B12:00:00%20INF%5D%20forged", requests[2].GetProperty("RequestPath").GetString(), ignoreCase: true);
        Assert.All(lines, line => Assert.DoesNotContain("nobody is to hear", line, StringComparison.OrdinalIgnoreCase));
        Assert.All(lines, line => Assert.DoesNotContain(Mark, line, StringComparison.Ordinal));
    }
}
