using System.Text.Json;
using PanelService.Api.Tests.Hosts;
using PanelService.Planning.Plans;

namespace PanelService.Api.Tests.Plans;

/// <summary>The whole order made 1, 2, … times over.</summary>
public sealed class BatchCurveTests(PlainHosts hosts) : IClassFixture<PlainHosts>
{
    // By hand: six 8 × 10 panels lie on a 24 1/2 × 20 1/2 sheet with 1/8 kerfs (three columns, two rows), and no seventh
    // (7 × 80 in² is more than the sheet's 502). Four panels n times over take ⌈4n / 6⌉ sheets at 6.10.
    private const string FourOfSix =
        """
        { "units": "inch", "currency": "EUR",
          "panels": [ { "width": 8, "height": 10, "quantity": 4 } ],
          "boards": [ { "id": "hb3", "thickness": "1/8", "width": 24.5, "height": 20.5, "price": 6.10, "forSale": 2 } ] }
        """;

    [Fact]
    public async Task Curve_plans_the_order_each_number_of_times_and_ends_where_the_stock_does()
    {
        using HttpClient client = hosts.Plain.CreateClient();
        string address = await CreateAsync(client, FourOfSix);

        JsonElement curve = await client.GetJsonAsync($"{address}/batch-curve?upTo=5");

        Assert.Equal("inch EUR", $"{curve.GetProperty("units")} {curve.GetProperty("currency")}");
        Assert.EndsWith(curve.GetProperty("id").GetString()!, address, StringComparison.Ordinal);
        Assert.Equal(
            [(1, 4, 6.10m), (2, 8, 12.20m), (3, 12, 12.20m)],
            curve.GetProperty("points").EnumerateArray().Select(p => (p.GetProperty("times").GetInt32(), p.GetProperty("panels").GetInt32(), p.GetProperty("cash").GetDecimal())));
        Assert.True(curve.GetProperty("endsBecause").GetString()!.Length > 20);
    }

    [Fact]
    public async Task Curve_at_once_is_the_plan_itself_and_every_proof_holds()
    {
        using HttpClient client = hosts.Plain.CreateClient();
        string address = await CreateAsync(client, FourOfSix);
        JsonElement cost = await client.GetJsonAsync($"{address}/cost");

        JsonElement curve = await client.GetJsonAsync($"{address}/batch-curve?upTo=2");

        JsonElement[] points = [.. curve.GetProperty("points").EnumerateArray()];
        Assert.Equal(2, points.Length);
        Assert.False(curve.TryGetProperty("endsBecause", out _));
        Assert.Equal(cost.GetProperty("used").GetDecimal(), points[0].GetProperty("used").GetDecimal());
        Assert.Equal(cost.GetProperty("panels")[0].GetProperty("each").GetDecimal(), points[0].GetProperty("each").GetDecimal());
        Assert.All(points, p => Assert.InRange(
            p.GetProperty("proof").GetProperty("leastPossible").GetDecimal(), 0.01m, p.GetProperty("proof").GetProperty("spent").GetDecimal()));
        Assert.All(points, p => Assert.Equal(
            p.GetProperty("proof").GetProperty("spent").GetDecimal() == p.GetProperty("proof").GetProperty("leastPossible").GetDecimal(),
            p.GetProperty("proof").GetProperty("proven").GetBoolean()));
    }

    [Fact]
    public async Task Curve_says_where_a_sheet_is_added_and_from_where_on_making_is_cheaper()
    {
        using HttpClient client = hosts.Plain.CreateClient();

        // Four for sale: 1, 2, 2 sheets. At 3.00 a panel the shop asks 12.00, 24.00, 36.00; the tool of 15.00 makes four
        // panels cost 15.00 or more, and twelve at most 12.20 + 15.00.
        string address = await CreateAsync(client, Json.With(Json.With(FourOfSix, "panels[0].shopPrice", "3"), "tools", """[{"name":"square","price":15,"spreadOver":100}]"""));

        JsonElement curve = await client.GetJsonAsync($"{address}/batch-curve?upTo=3");

        Assert.Equal(
            [(1, "hb3", 0, 1), (2, "hb3", 1, 2)],
            curve.GetProperty("steps").EnumerateArray().Select(s => (s.GetProperty("times").GetInt32(), s.GetProperty("id").GetString()!, s.GetProperty("from").GetInt32(), s.GetProperty("to").GetInt32())));
        Assert.Equal(
            [12m, 24m, 36m], curve.GetProperty("points").EnumerateArray().Select(p => p.GetProperty("shop").GetDecimal()));
        Assert.All(curve.GetProperty("points").EnumerateArray(), p => Assert.Equal(
            p.GetProperty("used").GetDecimal() + 15 - (0.15m * p.GetProperty("panels").GetInt32()), p.GetProperty("withTools").GetDecimal()));
        Assert.InRange(curve.GetProperty("makingFrom").GetProperty("panels").GetInt32(), 8, 12);
        Assert.False(curve.TryGetProperty("rollFrom", out _));
    }

    [Fact]
    public async Task Curve_says_from_where_on_the_roll_beats_the_yard()
    {
        // By hand: 9 x 11 in cloths one after another along the warp. Four take 44 in, four steps of 12 in at 10.00; the roll
        // of 72 in at 35.00 holds six.
        const string order = """
            { "units": "inch", "currency": "EUR",
              "panels": [ { "width": 8, "height": 10, "quantity": 1, "surface": "loose" } ],
              "cloths": [ { "id": "yard", "width": 11, "warp": "height", "sale": { "by": "length", "step": 12, "price": 10 } },
                          { "id": "roll", "width": 11, "warp": "height", "sale": { "by": "roll", "length": 72, "price": 35 } } ] }
            """;
        using HttpClient client = hosts.Plain.CreateClient();
        string address = await CreateAsync(client, order);

        JsonElement curve = await client.GetJsonAsync($"{address}/batch-curve?upTo=6");

        Assert.Equal(
            [10m, 20m, 30m, 35m, 35m, 35m], curve.GetProperty("points").EnumerateArray().Select(p => p.GetProperty("cash").GetDecimal()));
        Assert.Equal(4, curve.GetProperty("rollFrom").GetProperty("times").GetInt32());
    }

    [Fact]
    public async Task Curve_is_drawn()
    {
        using HttpClient client = hosts.Plain.CreateClient();
        string address = await CreateAsync(client, FourOfSix);

        using HttpResponseMessage response = await client.GetAsync(new Uri($"{address}/batch-curve.svg?upTo=3", UriKind.Relative));

        Assert.Equal("image/svg+xml", response.Content.Headers.ContentType?.MediaType);
        var drawing = System.Xml.Linq.XDocument.Parse(await response.Content.ReadAsStringAsync());
        Assert.Equal(3, drawing.Descendants().Count(element => element.Name.LocalName == "circle"));
        Assert.Equal(2, drawing.Descendants().Count(element => element.Attribute("stroke")?.Value == "#b3261e" && element.Name.LocalName == "rect"));
        Assert.DoesNotContain(drawing.Descendants(), element => element.Name.LocalName is "script" or "style");
    }

    [Fact]
    public async Task Curve_of_no_number_goes_to_ten()
    {
        using var planner = new SamplePlanner();
        using var host = new TestHost(planner.PlanAtOnce);
        using HttpClient client = host.CreateClient();
        string address = await CreateAsync(client, SampleOrders.Smallest);

        await client.GetJsonAsync($"{address}/batch-curve");

        Assert.Equal([2, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20], planner.Orders.Select(order => order.Panels[0].Quantity));
        Assert.All(planner.Orders.Skip(1), order => Assert.Equal(PanelService.Cutting.Effort.Quick, order.Effort));
    }

    [Fact]
    public async Task Curve_ends_at_what_one_line_may_have()
    {
        using var planner = new SamplePlanner();
        using var host = new TestHost(planner.PlanAtOnce);
        using HttpClient client = host.CreateClient();
        string address = await CreateAsync(client, Json.With(SampleOrders.Smallest, "panels[0].quantity", "40000"));

        JsonElement curve = await client.GetJsonAsync($"{address}/batch-curve");

        Assert.Equal(2, curve.GetProperty("points").GetArrayLength());
        Assert.Contains("100000", curve.GetProperty("endsBecause").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("21")]
    [InlineData("-1")]
    [InlineData("2.5")]
    [InlineData("ten")]
    [InlineData("")]
    [InlineData("99999999999")]
    public async Task Curve_of_a_wrong_number_is_400_naming_it(string upTo)
    {
        using var planner = new SamplePlanner();
        using var host = new TestHost(planner.PlanAtOnce);
        using HttpClient client = host.CreateClient();
        string address = await CreateAsync(client, SampleOrders.Smallest);

        using HttpResponseMessage response = await client.GetAsync(new Uri($"{address}/batch-curve?upTo={upTo}", UriKind.Relative));

        JsonElement problem = await Json.ReadProblemAsync(response, 400, "/problems/invalid-request");
        Assert.Contains("1 to 20", problem.GetProperty("errors").GetProperty("upTo")[0].GetString(), StringComparison.Ordinal);
        Assert.Single(planner.Orders);
    }

    [Fact]
    public async Task Curve_of_no_plan_is_404()
    {
        using HttpClient client = hosts.Plain.CreateClient();

        using HttpResponseMessage response = await client.GetAsync(new Uri("/api/plans/none/batch-curve", UriKind.Relative));

        await Json.ReadProblemAsync(response, 404, "/problems/no-such-plan");
    }

    [Fact]
    public async Task Curve_while_planner_and_queue_are_taken_is_503_with_retry_after()
    {
        using var planner = new SamplePlanner();
        bool isFirst = true;
        using var host = new TestHost(
            (order, progress, cancellation, unwanted) =>
            {
                PlanOutcome outcome = isFirst ? new Planned(SamplePlanner.PlanOf(order)) : planner.PlanBehindGate(order, progress, cancellation, unwanted);
                isFirst = false;
                return outcome;
            },
            ("Planning:Planners", "1"),
            ("Planning:Waiting", "1"));
        using HttpClient client = host.CreateClient();
        string address = await CreateAsync(client, SampleOrders.Smallest);
        using HttpResponseMessage planned = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest);
        await planner.BegunAsync();
        using HttpResponseMessage waiting = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest);

        using HttpResponseMessage response = await client.GetAsync(new Uri($"{address}/batch-curve", UriKind.Relative));

        await Json.ReadProblemAsync(response, 503, "/problems/busy");
        Assert.Equal("5", response.Headers.RetryAfter?.ToString());
        planner.Open();
    }

    [Fact]
    public async Task Curve_stops_when_the_client_goes_away()
    {
        using var planner = new SamplePlanner();
        var ended = new TaskCompletionSource<bool>();
        bool isFirst = true;
        using var host = new TestHost((order, progress, cancellation, unwanted) =>
        {
            if (isFirst)
            {
                isFirst = false;
                return new Planned(SamplePlanner.PlanOf(order));
            }

            PlanOutcome outcome = planner.PlanBehindGate(order, progress, cancellation, unwanted);
            ended.SetResult(cancellation.IsCancellationRequested);
            return outcome;
        });
        using HttpClient client = host.CreateClient();
        string address = await CreateAsync(client, SampleOrders.Smallest);
        using var leaving = new CancellationTokenSource();
        Task<HttpResponseMessage> curve = client.GetAsync(new Uri($"{address}/batch-curve", UriKind.Relative), leaving.Token);
        await planner.BegunAsync();

        await leaving.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => curve);
        Assert.True(await ended.Task);
        Assert.Single(planner.Orders);
    }

    private static async Task<string> CreateAsync(HttpClient client, string order)
    {
        using HttpResponseMessage made = await client.PostOrderAsync(order);
        Assert.Equal(HttpStatusCode.Created, made.StatusCode);
        return made.Headers.Location!.OriginalString;
    }
}
