using System.Text.Json;
using PanelService.Api.Tests.Hosts;

namespace PanelService.Api.Tests.Plans;

/// <summary>A plan merely tried, <c>keep=false</c>: answered, and nothing of it is left.</summary>
public sealed class PassingPlanTests : IDisposable
{
    private const string Address = "/api/plans?keep=false";

    private readonly SamplePlanner _planner = new();

    [Fact]
    public async Task Try_order_is_200_with_the_plan_as_kept_but_for_addresses_and_nothing_of_it_stays()
    {
        using var host = new TestHost();
        using HttpClient client = host.CreateClient();
        string order = await client.GetStringAsync("/api/demo/tern-island");

        using HttpResponseMessage response = await client.PostOrderAsync(order, Address);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Null(response.Headers.Location);
        JsonElement tried = await Json.ReadAsync(response);
        string text = tried.GetRawText();
        Assert.DoesNotContain("/api/plans/", text, StringComparison.Ordinal);
        Assert.All(tried.GetProperty("cloth").EnumerateArray(), cloth => Assert.False(cloth.TryGetProperty("drawing", out _)));
        string id = tried.GetProperty("id").GetString()!;
        await Json.ReadProblemAsync(await client.GetAsync(new Uri($"/api/plans/{id}", UriKind.Relative)), 404, "/problems/no-such-plan");
        Assert.Equal(0, (await client.GetJsonAsync("/api/plans")).GetProperty("total").GetInt32());

        JsonElement kept = await client.PlanAsync(order);
        Assert.Equal(1, (await client.GetJsonAsync("/api/plans")).GetProperty("total").GetInt32());
        foreach (string part in (string[])["panels", "proof", "sawRun", "buy", "cost", "warnings"])
        {
            Assert.Equal(kept.GetProperty(part).GetRawText(), tried.GetProperty(part).GetRawText());
        }
    }

    [Fact]
    public async Task Try_order_with_drawings_inline_brings_the_drawings_of_every_sheet_and_cloth()
    {
        using var host = new TestHost();
        using HttpClient client = host.CreateClient();
        string order = await client.GetStringAsync("/api/demo/tern-island");

        JsonElement tried = await Json.ReadAsync(await client.PostOrderAsync(order, $"{Address}&drawings=inline"));

        JsonElement[] drawn = [.. tried.GetProperty("sheets").EnumerateArray(), .. tried.GetProperty("cloth").EnumerateArray()];
        Assert.True(drawn.Length > 1);
        Assert.All(drawn, one => Assert.StartsWith("<svg", one.GetProperty("svg").GetString(), StringComparison.Ordinal));
    }

    [Fact]
    public async Task Try_order_client_that_goes_away_ends_its_search()
    {
        using var host = new TestHost(_planner.PlanBehindGate, ("Planning:Planners", "1"));
        using HttpClient client = host.CreateClient();
        using var patience = new CancellationTokenSource();
        using HttpContent body = Json.Content(System.Text.Encoding.UTF8.GetBytes(SampleOrders.Smallest));
        Task<HttpResponseMessage> sent = client.PostAsync(Address, body, patience.Token);
        await _planner.BegunAsync();

        await patience.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => sent);

        // The one planner is free again: the next order is begun.
        using HttpResponseMessage next = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest);
        await _planner.BegunAsync();
        Assert.Equal(HttpStatusCode.Accepted, next.StatusCode);
    }

    [Fact]
    public async Task Try_order_in_the_background_is_answered_at_its_end_since_there_is_nothing_to_come_back_to()
    {
        using var host = new TestHost(_planner.PlanAtOnce);
        using HttpClient client = host.CreateClient();
        using var request = new HttpRequestMessage(HttpMethod.Post, Address) { Content = Json.Content(System.Text.Encoding.UTF8.GetBytes(SampleOrders.Smallest)) };
        request.Headers.Add("Prefer", "respond-async");

        using HttpResponseMessage response = await client.SendAsync(request);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.False(response.Headers.Contains("Preference-Applied"));
        Assert.Equal("done", (await Json.ReadAsync(response)).GetProperty("state").GetString());
    }

    [Fact]
    public async Task Try_order_when_the_queue_is_full_is_503_with_retry_after()
    {
        using var host = new TestHost(_planner.PlanBehindGate, ("Planning:Planners", "1"), ("Planning:Waiting", "1"), ("Planning:RetryAfterSeconds", "7"));
        using HttpClient client = host.CreateClient();
        using HttpResponseMessage first = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest);
        await _planner.BegunAsync();
        using HttpResponseMessage second = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest);

        using HttpResponseMessage refused = await client.PostOrderAsync(SampleOrders.Smallest, Address);

        await Json.ReadProblemAsync(refused, 503, "/problems/busy");
        Assert.Equal(TimeSpan.FromSeconds(7), refused.Headers.RetryAfter!.Delta);
    }

    [Theory]
    [InlineData("keep=no", "keep")]
    [InlineData("keep=false&drawings=apart", "drawings")]
    public async Task Create_with_a_query_it_does_not_know_is_400_and_says_what_would_be_right(string query, string field)
    {
        using var host = new TestHost(_planner.PlanAtOnce);
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage response = await client.PostOrderAsync(SampleOrders.Smallest, $"/api/plans?{query}");

        JsonElement problem = await Json.ReadProblemAsync(response, 400, "/problems/invalid-request");
        Assert.Contains("Expected", problem.GetProperty("errors").GetProperty(field)[0].GetString(), StringComparison.Ordinal);
        Assert.Empty(_planner.Orders);
    }

    public void Dispose() => _planner.Dispose();
}
