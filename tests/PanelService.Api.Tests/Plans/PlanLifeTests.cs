using System.Text.Json;
using PanelService.Api.Tests.Hosts;

namespace PanelService.Api.Tests.Plans;

/// <summary>A plan's life over the wire: made at once or in the background, watched, stopped, dropped, refused.</summary>
public sealed class PlanLifeTests : IDisposable
{
    private readonly SamplePlanner _planner = new();

    [Fact]
    public async Task Create_right_order_is_201_and_its_location_gives_the_same_document()
    {
        using var host = new TestHost(_planner.PlanAtOnce);
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage response = await client.PostOrderAsync(SampleOrders.Full);

        Assert.Equal(HttpStatusCode.Created, response.StatusCode);
        string id = (await Json.ReadAsync(response)).GetProperty("id").GetString()!;
        Assert.Matches("^[0-9a-f]{32}$", id);
        Assert.Equal($"/api/plans/{id}", response.Headers.Location!.OriginalString);
        Assert.Equal(await response.Content.ReadAsStringAsync(), await client.GetStringAsync(response.Headers.Location));
    }

    [Fact]
    public async Task Create_in_the_background_is_202_at_once_and_tells_how_far_it_is_until_it_is_done()
    {
        using var host = new TestHost(_planner.PlanBehindGate);
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage response = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest);

        Assert.Equal(HttpStatusCode.Accepted, response.StatusCode);
        Assert.Equal("respond-async", Assert.Single(response.Headers.GetValues("Preference-Applied")));
        await _planner.BegunAsync();
        string address = response.Headers.Location!.OriginalString;
        JsonElement planning = await client.GetJsonAsync(address);
        Assert.Equal("planning", planning.GetProperty("state").GetString());
        Assert.Equal(7.00m, planning.GetProperty("spent").GetDecimal());
        Assert.Equal(5.00m, planning.GetProperty("leastPossible").GetDecimal());

        using (HttpResponseMessage cut = await client.PostAsync(new Uri($"{address}/cut", UriKind.Relative), content: null))
        {
            await Json.ReadProblemAsync(cut, 409, "/problems/not-planned-yet");
        }

        _planner.Open();
        await EndOf(client, address);
        JsonElement done = await client.GetJsonAsync(address);
        Assert.Equal("done", done.GetProperty("state").GetString());
        Assert.Equal("inch", done.GetProperty("units").GetString());
        Assert.False(done.GetProperty("stoppedEarly").GetBoolean());
    }

    // RFC 7240, 4.3: how long the client would wait.
    [Theory]
    [InlineData("respond-async, wait=30", "respond-async, wait=30")]
    [InlineData("wait=99; x=1, respond-async", "respond-async, wait=30")]
    public async Task Create_that_would_wait_is_201_where_the_plan_is_there_in_time(string prefer, string applied)
    {
        using var host = new TestHost(_planner.PlanAtOnce);
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage response = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest, prefer);

        Assert.Equal(HttpStatusCode.Created, response.StatusCode);
        Assert.Equal(applied, Assert.Single(response.Headers.GetValues("Preference-Applied")));
        Assert.Equal(await response.Content.ReadAsStringAsync(), await client.GetStringAsync(response.Headers.Location));
    }

    [Theory]
    [InlineData("respond-async, wait=0", "respond-async, wait=0")]
    [InlineData("respond-async, wait=-1", "respond-async")]
    [InlineData("respond-async, wait=soon", "respond-async")]
    public async Task Create_that_would_wait_no_longer_is_202_and_the_plan_goes_on(string prefer, string applied)
    {
        using var host = new TestHost(_planner.PlanBehindGate);
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage response = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest, prefer);

        Assert.Equal(HttpStatusCode.Accepted, response.StatusCode);
        Assert.Equal(applied, Assert.Single(response.Headers.GetValues("Preference-Applied")));
        _planner.Open();
        string address = response.Headers.Location!.OriginalString;
        await EndOf(client, address);
        Assert.Equal("done", (await client.GetJsonAsync(address)).GetProperty("state").GetString());
    }

    [Fact]
    public async Task Watch_plan_in_the_making_streams_its_states_and_a_heartbeat_until_it_is_done()
    {
        using var host = new TestHost(_planner.PlanBehindGate, ("Planning:HeartbeatSeconds", "0.01"));
        using HttpClient client = host.CreateClient();
        string address = await BeginAsync(client);
        await _planner.BegunAsync();

        using var request = new HttpRequestMessage(HttpMethod.Get, $"{address}/progress");
        using HttpResponseMessage response = await client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead);
        Assert.Equal("text/event-stream", response.Content.Headers.ContentType!.MediaType);
        using var reader = new StreamReader(await response.Content.ReadAsStreamAsync());
        JsonElement[] beats = [await NextAsync(reader), await NextAsync(reader), await NextAsync(reader)];
        _planner.Open();
        JsonElement last = beats[^1];
        while (last.GetProperty("state").GetString() == "planning")
        {
            last = await NextAsync(reader);
        }

        Assert.All(beats, beat => Assert.Equal(5.00m, beat.GetProperty("leastPossible").GetDecimal()));
        Assert.Equal("done", last.GetProperty("state").GetString());
        Assert.Equal(7.00m, last.GetProperty("spent").GetDecimal());
        Assert.Equal("", (await reader.ReadToEndAsync()).Trim());
    }

    [Fact]
    public async Task Stop_plan_in_the_making_keeps_the_best_so_far_and_says_so()
    {
        using var host = new TestHost(_planner.PlanBehindGate);
        using HttpClient client = host.CreateClient();
        string address = await BeginAsync(client);
        await _planner.BegunAsync();

        using HttpResponseMessage response = await client.PostAsync($"{address}/stop", null);

        Assert.Equal("stopped", (await Json.ReadAsync(response)).GetProperty("state").GetString());
        JsonElement plan = await client.GetJsonAsync(address);
        Assert.Equal("stopped", plan.GetProperty("state").GetString());
        Assert.True(plan.GetProperty("stoppedEarly").GetBoolean());
    }

    [Fact]
    public async Task Stop_plan_that_is_done_changes_nothing()
    {
        using var host = new TestHost(_planner.PlanAtOnce);
        using HttpClient client = host.CreateClient();
        using HttpResponseMessage made = await client.PostOrderAsync(SampleOrders.Smallest);

        using HttpResponseMessage response = await client.PostAsync($"{made.Headers.Location}/stop", null);

        Assert.Equal("done", (await Json.ReadAsync(response)).GetProperty("state").GetString());
    }

    [Fact]
    public async Task Drop_plan_in_the_making_ends_its_search_and_forgets_it()
    {
        using var host = new TestHost(_planner.PlanBehindGate, ("Planning:Planners", "1"));
        using HttpClient client = host.CreateClient();
        string address = await BeginAsync(client);
        await _planner.BegunAsync();

        using HttpResponseMessage response = await client.DeleteAsync(address);

        Assert.Equal(HttpStatusCode.NoContent, response.StatusCode);
        await Json.ReadProblemAsync(await client.GetAsync(new Uri(address, UriKind.Relative)), 404, "/problems/no-such-plan");

        // The one planner is free again: the next order is begun.
        await BeginAsync(client);
        await _planner.BegunAsync();
    }

    [Fact]
    public async Task Create_client_that_goes_away_takes_its_order_with_it()
    {
        using var host = new TestHost(_planner.PlanBehindGate, ("Planning:Planners", "1"));
        using HttpClient client = host.CreateClient();
        using var patience = new CancellationTokenSource();
        using HttpContent body = Json.Content(System.Text.Encoding.UTF8.GetBytes(SampleOrders.Smallest));
        Task<HttpResponseMessage> sent = client.PostAsync("/api/plans", body, patience.Token);
        await _planner.BegunAsync();

        await patience.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => sent);
        await BeginAsync(client);
        await _planner.BegunAsync();
    }

    [Fact]
    public async Task Create_when_all_planners_are_busy_and_the_queue_is_full_is_503_with_retry_after()
    {
        using var host = new TestHost(_planner.PlanBehindGate, ("Planning:Planners", "1"), ("Planning:Waiting", "1"), ("Planning:RetryAfterSeconds", "7"));
        using HttpClient client = host.CreateClient();
        await BeginAsync(client);
        await _planner.BegunAsync();
        await BeginAsync(client);

        using HttpResponseMessage refused = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest);

        await Json.ReadProblemAsync(refused, 503, "/problems/busy");
        Assert.Equal(TimeSpan.FromSeconds(7), refused.Headers.RetryAfter!.Delta);
    }

    [Fact]
    public async Task Create_when_a_client_has_as_many_waiting_as_it_may_is_503_before_its_order_is_read()
    {
        using var host = new TestHost(_planner.PlanBehindGate, ("Planning:Planners", "1"), ("Planning:Waiting", "4"));
        using HttpClient client = host.CreateClient();
        await BeginAsync(client);
        await _planner.BegunAsync();
        await BeginAsync(client);
        await BeginAsync(client);
        using HttpContent unread = Json.Content("{"u8.ToArray());
        await Json.ReadProblemAsync(await client.PostAsync("/api/plans", unread), 400, "/problems/malformed-json");
        await BeginAsync(client);

        using HttpContent broken = Json.Content("{"u8.ToArray());
        using HttpResponseMessage refused = await client.PostAsync("/api/plans", broken);

        await Json.ReadProblemAsync(refused, 503, "/problems/busy");
        using HttpResponseMessage ready = await client.GetAsync("/ready");
        Assert.Equal(HttpStatusCode.OK, ready.StatusCode);
    }

    [Theory]
    [InlineData("Planning:SafetyStopSeconds", "1")]
    [InlineData("Planning:MostMegabytes", "64")]
    public async Task Create_search_that_runs_away_is_ended_by_the_clock_or_for_its_memory_and_says_so(string setting, string value)
    {
        using var host = new TestHost(_planner.PlanBehindGate, (setting, value));
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage response = await client.PostOrderAsync(SampleOrders.Smallest);

        JsonElement plan = await Json.ReadAsync(response);
        Assert.Equal("done", plan.GetProperty("state").GetString());
        Assert.True(plan.GetProperty("stoppedEarly").GetBoolean());
    }

    [Fact]
    public async Task Create_more_plans_than_memory_holds_finds_them_all_in_the_database()
    {
        using var host = new TestHost(_planner.PlanAtOnce, ("Planning:Planners", "1"), ("Planning:Waiting", "1"), ("Planning:Kept", "3"));
        using HttpClient client = host.CreateClient();
        var addresses = new List<string>();
        for (int i = 0; i < 4; i++)
        {
            using HttpResponseMessage made = await client.PostOrderAsync(SampleOrders.Smallest);
            addresses.Add(made.Headers.Location!.OriginalString);
        }

        HttpStatusCode[] found = [.. addresses.Select(address => client.GetAsync(new Uri(address, UriKind.Relative)).Result.StatusCode)];

        Assert.Equal([HttpStatusCode.OK, HttpStatusCode.OK, HttpStatusCode.OK, HttpStatusCode.OK], found);
    }

    [Fact]
    public void Start_with_options_that_cannot_work_fails_and_names_the_option()
    {
        using var host = new TestHost(_planner.PlanAtOnce, ("Planning:Kept", "2"));

        Exception fault = Assert.ThrowsAny<Exception>(() => host.CreateClient());

        Assert.Contains("Planning:Kept", fault.Message, StringComparison.Ordinal);
    }

    public void Dispose() => _planner.Dispose();

    private static async Task<string> BeginAsync(HttpClient client)
    {
        using HttpResponseMessage response = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest);
        Assert.Equal(HttpStatusCode.Accepted, response.StatusCode);
        return response.Headers.Location!.OriginalString;
    }

    // The stream ends when the plan does: nothing is polled.
    private static Task<string> EndOf(HttpClient client, string address) => client.GetStringAsync($"{address}/progress");

    private static async Task<JsonElement> NextAsync(StreamReader reader)
    {
        string? line;
        do
        {
            line = await reader.ReadLineAsync();
        }
        while (line is not null && !line.StartsWith("data:", StringComparison.Ordinal));

        using JsonDocument document = JsonDocument.Parse(line!["data:".Length..]);
        return document.RootElement.Clone();
    }
}
