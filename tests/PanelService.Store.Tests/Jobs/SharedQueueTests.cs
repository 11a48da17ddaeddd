using System.Text.Json;
using PanelService.Store.Tests.Hosts;

namespace PanelService.Store.Tests.Jobs;

/// <summary>Several hosts on one PostgreSQL: a station hands orders in, planner hosts take them, and none is lost when one is killed.</summary>
[Trait(PostgresDatabase.Trait, PostgresDatabase.Name)]
public sealed class SharedQueueTests
{
    private const int Orders = 2;

    [Fact]
    public async Task Planner_killed_in_the_middle_loses_no_order()
    {
        using Home home = new PostgresDatabase().Open();
        (string, string)[] settings = [.. home.Settings.Where(setting => setting.Key != "Planning:Shared"), ("Planning:LostAfterSeconds", "2"), ("Planning:SafetyStopSeconds", "900"), ("Planning:GraceSeconds", "600")];
        using var station = new StudioHost([.. settings, ("Planning:Planners", "0")]);
        using HttpClient client = station.CreateClient();
        string order = (await client.GetStringAsync("/api/demo/lighthouse-studio")).Replace("\"steady\"", "\"quick\"", StringComparison.Ordinal);
        string[] plans = [.. await Task.WhenAll(Enumerable.Range(0, Orders).Select(_ => HandInAsync(client, order)))];

        using (var first = new HostProcess([.. settings, ("Planning:Planners", "1")]))
        {
            // The first sign of a bound says that it is at work: killed then, in the middle.
            await Task.WhenAny(plans.Select(plan => UntilAsync(client, plan, state => state.GetProperty("state").GetString() != "planning" || state.GetProperty("leastPossible").ValueKind == JsonValueKind.Number)));
            first.Kill();
        }

        using var second = new HostProcess([.. settings, ("Planning:Planners", "1")]);
        foreach (string plan in plans)
        {
            await UntilAsync(client, plan, state => state.GetProperty("state").GetString() != "planning");
            Assert.Equal("done", (await client.GetJsonAsync(plan)).GetProperty("state").GetString());
        }

        Assert.Equal(Orders, (await client.GetJsonAsync("/api/plans")).GetProperty("total").GetInt32());
    }

    private static async Task<string> HandInAsync(HttpClient client, string order)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri("/api/plans", UriKind.Relative)) { Content = new StringContent(order, System.Text.Encoding.UTF8, "application/json") };
        request.Headers.Add("Prefer", "respond-async");
        using HttpResponseMessage response = await client.SendAsync(request);
        Assert.Equal(HttpStatusCode.Accepted, response.StatusCode);
        return response.Headers.Location!.OriginalString;
    }

    // The stream ends when the plan does: nothing is polled.
    private static async Task UntilAsync(HttpClient client, string plan, Func<JsonElement, bool> isSo)
    {
        using HttpResponseMessage response = await client.GetAsync(new Uri($"{plan}/progress", UriKind.Relative), HttpCompletionOption.ResponseHeadersRead);
        using var reader = new StreamReader(await response.Content.ReadAsStreamAsync());
        while (await reader.ReadLineAsync() is { } line)
        {
            if (line.StartsWith("data:", StringComparison.Ordinal) && isSo(JsonDocument.Parse(line["data:".Length..]).RootElement))
            {
                return;
            }
        }
    }
}
