using System.Net;
using System.Text.Json;
using PanelService.Api.Tests.Hosts;
using PanelService.Planning.Plans;
using PanelService.Work;

namespace PanelService.Api.Tests.Plans;

/// <summary>Planning that comes to no plan: what cannot be made, and faults of our own.</summary>
public sealed class PlanFailureTests(PlainHosts hosts) : IClassFixture<PlainHosts>
{
    private const string Secret = "the inner workings";

    [Theory]
    [InlineData(CannotReason.NoBoardFits, "/problems/no-board-fits")]
    [InlineData(CannotReason.NotEnoughStock, "/problems/not-enough-stock")]
    [InlineData(CannotReason.NoClothFits, "/problems/no-cloth-fits")]
    [InlineData(CannotReason.TooManyPlaces, "/problems/too-many-places")]
    public async Task Create_order_that_cannot_be_made_is_422_with_the_marks_and_what_is_missing(Enum reason, string type)
    {
        using var host = new TestHost(Refusing((CannotReason)reason));
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage response = await client.PostOrderAsync(SampleOrders.Smallest);

        JsonElement problem = await Json.ReadProblemAsync(response, 422, type);
        JsonElement mark = Assert.Single(problem.GetProperty("marks").EnumerateArray());
        Assert.Equal("A", mark.GetProperty("mark").GetString());
        Assert.Equal("no board of 3/16 or thicker is at least 24 × 36", mark.GetProperty("missing").GetString());
        Assert.Equal(2, mark.GetProperty("count").GetInt32());
    }

    [Fact]
    public async Task Get_order_in_the_background_that_cannot_be_made_is_failed_with_the_problem_document()
    {
        using var host = new TestHost(Refusing(CannotReason.NotEnoughStock));
        using HttpClient client = host.CreateClient();
        using HttpResponseMessage begun = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest);
        string address = begun.Headers.Location!.OriginalString;
        await client.GetStringAsync($"{address}/progress");

        JsonElement state = await client.GetJsonAsync(address);

        Assert.Equal("failed", state.GetProperty("state").GetString());
        Assert.Equal(422, state.GetProperty("problem").GetProperty("status").GetInt32());
        Assert.Equal("A", state.GetProperty("problem").GetProperty("marks")[0].GetProperty("mark").GetString());
        await Json.ReadProblemAsync(await client.GetAsync(new Uri($"{address}/cost", UriKind.Relative)), 409, "/problems/no-plan");
    }

    [Fact]
    public async Task Stop_before_there_is_a_plan_never_says_that_there_is_too_little()
    {
        using var begun = new SemaphoreSlim(0);
        using var host = new TestHost((order, progress, cancellation, unwanted) =>
        {
            begun.Release();
            cancellation.WaitHandle.WaitOne();
            return Refusing(CannotReason.NotEnoughStock)(order, progress, cancellation, unwanted);
        });
        using HttpClient client = host.CreateClient();
        using HttpResponseMessage accepted = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest);
        await begun.WaitAsync();

        using HttpResponseMessage stopped = await client.PostAsync($"{accepted.Headers.Location}/stop", null);

        JsonElement state = await Json.ReadAsync(stopped);
        Assert.Equal("failed", state.GetProperty("state").GetString());
        Assert.Equal("/problems/no-plan-in-time", state.GetProperty("problem").GetProperty("type").GetString());
    }

    [Fact]
    public async Task Stop_planner_that_does_not_come_back_leaves_nobody_waiting()
    {
        using var planner = new SamplePlanner();
        using var deaf = new ManualResetEventSlim();
        using var host = new TestHost(
            (order, progress, cancellation, unwanted) =>
            {
                deaf.Wait(CancellationToken.None);
                return planner.PlanAtOnce(order, progress, cancellation, unwanted);
            },
            ("Planning:GraceSeconds", "0.01"));
        using HttpClient client = host.CreateClient();
        using HttpResponseMessage accepted = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest);

        using HttpResponseMessage stopped = await client.PostAsync($"{accepted.Headers.Location}/stop", null);

        JsonElement state = await Json.ReadAsync(stopped);
        deaf.Set();
        Assert.Equal("/problems/no-plan-in-time", state.GetProperty("problem").GetProperty("type").GetString());
    }

    [Fact]
    public async Task Stop_planner_that_writes_too_long_a_plan_is_free_for_the_next_order_once_nobody_waits()
    {
        using var planner = new SamplePlanner();
        bool isFirst = true;
        using var host = new TestHost(
            (order, progress, cancellation, unwanted) =>
            {
                if (isFirst)
                {
                    isFirst = false;
                    unwanted.WaitHandle.WaitOne();
                    unwanted.ThrowIfCancellationRequested();
                }

                return planner.PlanAtOnce(order, progress, cancellation, unwanted);
            },
            ("Planning:GraceSeconds", "0.01"),
            ("Planning:Planners", "1"));
        using HttpClient client = host.CreateClient();
        using HttpResponseMessage accepted = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest);
        using HttpResponseMessage stopped = await client.PostAsync($"{accepted.Headers.Location}/stop", null);

        using HttpResponseMessage next = await client.PostOrderAsync(SampleOrders.Smallest);

        Assert.Equal(HttpStatusCode.Created, next.StatusCode);
        Assert.Equal("/problems/no-plan-in-time", (await Json.ReadAsync(stopped)).GetProperty("problem").GetProperty("type").GetString());
    }

    [Fact]
    public async Task Create_plan_that_takes_far_too_much_memory_after_its_search_was_ended_is_given_up()
    {
        using var host = new TestHost(
            (order, progress, cancellation, unwanted) =>
            {
                unwanted.WaitHandle.WaitOne();
                throw new OperationCanceledException(unwanted);
            },
            ("Planning:MostMegabytes", "64"),
            ("Planning:GraceSeconds", "600"));
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage response = await client.PostOrderAsync(SampleOrders.Smallest);

        await Json.ReadProblemAsync(response, 503, "/problems/no-plan-in-time");
    }

    [Fact]
    public async Task Create_when_planning_breaks_down_is_500_without_a_word_of_the_insides()
    {
        using var host = new TestHost(Broken);
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage response = await client.PostOrderAsync(SampleOrders.Smallest);

        await Json.ReadProblemAsync(response, 500, "/problems/internal-error");
        Assert.DoesNotContain(Secret, await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Create_after_planning_has_broken_down_is_planned_by_the_same_planner()
    {
        int calls = 0;
        using var host = new TestHost(
            (order, progress, cancellation, unwanted) => calls++ == 0 ? Broken(order, progress, cancellation, unwanted) : new Planned(SamplePlanner.PlanOf(order)),
            ("Planning:Planners", "1"));
        using HttpClient client = host.CreateClient();
        using HttpResponseMessage broken = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest);
        await client.GetStringAsync($"{broken.Headers.Location}/progress");

        using HttpResponseMessage next = await client.PostOrderAsync(SampleOrders.Smallest);

        Assert.Equal("failed", (await client.GetJsonAsync(broken.Headers.Location!.OriginalString)).GetProperty("state").GetString());
        Assert.Equal(HttpStatusCode.Created, next.StatusCode);
    }

    [Theory]
    [InlineData("GET", "/api/plans/0123456789abcdef0123456789abcdef", 404, "/problems/no-such-plan")]
    [InlineData("DELETE", "/api/plans/none", 404, "/problems/no-such-plan")]
    [InlineData("POST", "/api/plans/none/stop", 404, "/problems/no-such-plan")]
    [InlineData("GET", "/api/plans/none/progress", 404, "/problems/no-such-plan")]
    [InlineData("GET", "/api/plans/none/sheets/1.svg", 404, "/problems/no-such-plan")]
    [InlineData("GET", "/api/plans/none/cloth/1.svg", 404, "/problems/no-such-plan")]
    [InlineData("GET", "/api/plans/none/cost", 404, "/problems/no-such-plan")]
    [InlineData("GET", "/api/plans/none/buy.csv", 404, "/problems/no-such-plan")]
    [InlineData("GET", "/api/plans/none/sheets/one.svg", 404, "/problems/not-found")]
    [InlineData("GET", "/api/plans/none/sheets/99999999999.svg", 404, "/problems/not-found")]
    [InlineData("GET", "/api/nothing", 404, "/problems/not-found")]
    [InlineData("GET", "/nothing.html", 404, "/problems/not-found")]
    [InlineData("GET", "/api/demo/none", 404, "/problems/no-such-part")]
    [InlineData("GET", "/api/demo/..%2F..%2FREADME", 404, "/problems/no-such-part")]
    [InlineData("PUT", "/api/plans", 405, "/problems/method-not-allowed")]
    [InlineData("PUT", "/api/plans/none", 405, "/problems/method-not-allowed")]
    [InlineData("DELETE", "/health", 405, "/problems/method-not-allowed")]
    public async Task Request_for_what_is_not_there_is_a_problem_document(string method, string address, int status, string type)
    {
        using HttpClient client = hosts.Plain.CreateClient();
        using var request = new HttpRequestMessage(new HttpMethod(method), address);
        request.Headers.Add("Accept", "text/html");

        using HttpResponseMessage response = await client.SendAsync(request);

        await Json.ReadProblemAsync(response, status, type);
    }

    [Fact]
    public async Task Get_part_of_a_plan_still_in_the_making_is_409()
    {
        using var planner = new SamplePlanner();
        using var host = new TestHost(planner.PlanBehindGate);
        using HttpClient client = host.CreateClient();
        using HttpResponseMessage begun = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest);

        using HttpResponseMessage response = await client.GetAsync(new Uri($"{begun.Headers.Location}/cost", UriKind.Relative));

        await Json.ReadProblemAsync(response, 409, "/problems/not-planned-yet");
    }

    [Theory]
    [InlineData("sheets")]
    [InlineData("cloth")]
    public async Task Get_drawing_the_plan_does_not_have_is_404(string part)
    {
        using var planner = new SamplePlanner();
        using var host = new TestHost(planner.PlanAtOnce);
        using HttpClient client = host.CreateClient();
        using HttpResponseMessage made = await client.PostOrderAsync(SampleOrders.Smallest);

        using HttpResponseMessage response = await client.GetAsync(new Uri($"{made.Headers.Location}/{part}/1.svg", UriKind.Relative));

        await Json.ReadProblemAsync(response, 404, "/problems/no-such-part");
    }

    [Fact]
    public async Task Create_with_a_query_that_means_nothing_is_400_naming_it()
    {
        using var planner = new SamplePlanner();
        using var host = new TestHost(planner.PlanAtOnce);
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage response = await client.PostOrderAsync(SampleOrders.Smallest, "/api/plans?drawings=outline");

        JsonElement problem = await Json.ReadProblemAsync(response, 400, "/problems/invalid-request");
        Assert.Contains("inline", problem.GetProperty("errors").GetProperty("drawings")[0].GetString(), StringComparison.Ordinal);
        Assert.Empty(planner.Orders);
    }

    private static PlanOutcome Broken(Planning.Orders.Order order, IProgress<PlanProgress>? progress, CancellationToken cancellation, CancellationToken unwanted) =>
        throw new InvalidOperationException(Secret);

    private static PlanOrder Refusing(CannotReason reason) => (_, _, _, _) => new CannotBeMade(
        reason, "Line A cannot be made.", [new UnmakeableLine("A", "no board of 3/16 or thicker is at least 24 × 36", 2)]);
}
