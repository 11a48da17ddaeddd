using PanelService.Api.Tests.Hosts;

namespace PanelService.Api.Tests.FrontDoor;

/// <summary>Open to the network: nothing without a key or a browser that has joined.</summary>
public sealed class DoorTests
{
    private const string Something = "/api/demo";
    private const string NotIn = "/problems/not-in";

    [Fact]
    public async Task Without_a_key_nothing_of_the_API_answers_but_health_and_the_door()
    {
        using var host = new OpenHost();
        using HttpClient stranger = host.Client();
        foreach (string address in new[] { Something, "/api/plans/x", "/api/practice", "/openapi/panel-service.json", "/docs/index.html", "/nothing-here" })
        {
            using HttpResponseMessage refused = await stranger.GetAsync(address);
            _ = await Json.ReadProblemAsync(refused, 401, NotIn);
            Assert.Equal("Bearer", refused.Headers.WwwAuthenticate.ToString());
        }

        Assert.True((await stranger.GetJsonAsync("/api/access")).GetProperty("asked").GetBoolean());
        Assert.Equal("ok", (await stranger.GetJsonAsync("/health")).GetProperty("status").GetString());
    }

    [Fact]
    public async Task A_stranger_cannot_plan_or_drop_anything()
    {
        using var host = new OpenHost();
        using HttpClient script = host.Client(host.Key);
        using HttpClient stranger = host.Client();
        using HttpResponseMessage made = await script.PostOrderAsync(SampleOrders.Smallest);
        string address = made.Headers.Location!.ToString();

        using HttpResponseMessage planned = await stranger.PostOrderAsync(SampleOrders.Smallest);
        using HttpResponseMessage dropped = await stranger.DeleteAsync(address);

        _ = await Json.ReadProblemAsync(planned, 401, NotIn);
        _ = await Json.ReadProblemAsync(dropped, 401, NotIn);
        _ = await script.GetJsonAsync(address);
    }

    [Fact]
    public async Task The_key_opens_and_a_nearly_right_one_does_not()
    {
        using var host = new OpenHost();
        using HttpClient script = host.Client(host.Key);
        using HttpClient wrong = host.Client(host.Key[..^1] + (host.Key[^1] == 'A' ? 'B' : 'A'));

        _ = await script.GetJsonAsync(Something);
        using HttpResponseMessage refused = await wrong.GetAsync(Something);
        _ = await Json.ReadProblemAsync(refused, 401, NotIn);
    }

    [Fact]
    public async Task Six_digits_let_a_browser_in_once()
    {
        using var host = new OpenHost();
        using HttpClient phone = host.Client();
        using HttpClient other = host.Client();
        string code = await host.NewCodeAsync();

        using HttpResponseMessage joined = await OpenHost.JoinAsync(phone, code);
        using HttpResponseMessage again = await OpenHost.JoinAsync(other, code);

        Assert.Equal(HttpStatusCode.NoContent, joined.StatusCode);
        Assert.Matches("^[0-9]{6}$", code);
        string cookie = Assert.Single(joined.Headers.GetValues("Set-Cookie"));
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        _ = await phone.GetJsonAsync(Something);
        _ = await Json.ReadProblemAsync(again, 403, "/problems/wrong-code");
    }

    [Fact]
    public async Task Five_wrong_tries_and_the_digits_are_worth_nothing()
    {
        using var host = new OpenHost();
        using HttpClient phone = host.Client();
        string code = await host.NewCodeAsync();
        for (int i = 0; i < 5; i++)
        {
            using HttpResponseMessage wrong = await OpenHost.JoinAsync(phone, code == "000000" ? "111111" : "000000");
            Assert.Equal(HttpStatusCode.Forbidden, wrong.StatusCode);
        }

        using HttpResponseMessage late = await OpenHost.JoinAsync(phone, code);
        Assert.Equal(HttpStatusCode.Forbidden, late.StatusCode);
    }

    [Fact]
    public async Task Tries_beyond_the_limit_are_told_to_wait()
    {
        using var host = new OpenHost(("FrontDoor:TriesPerMinute", "3"));
        using HttpClient phone = host.Client();
        for (int i = 0; i < 3; i++)
        {
            using HttpResponseMessage wrong = await OpenHost.JoinAsync(phone, "1");
            Assert.Equal(HttpStatusCode.Forbidden, wrong.StatusCode);
        }

        using HttpResponseMessage refused = await OpenHost.JoinAsync(phone, "1");
        _ = await Json.ReadProblemAsync(refused, 429, "/problems/too-many-requests");
        Assert.InRange(refused.Headers.RetryAfter!.Delta!.Value.TotalSeconds, 1, 60);
    }

    [Fact]
    public async Task Who_asks_without_end_is_told_to_wait()
    {
        using var host = new OpenHost(("FrontDoor:RequestsPerMinute", "10"));
        using HttpClient script = host.Client(host.Key);
        HttpResponseMessage answer = await script.GetAsync(Something);
        for (int i = 0; i < 1000 && answer.StatusCode == HttpStatusCode.OK; i++)
        {
            answer.Dispose();
            answer = await script.GetAsync(Something);
        }

        _ = await Json.ReadProblemAsync(answer, 429, "/problems/too-many-requests");
        Assert.InRange(answer.Headers.RetryAfter!.Delta!.Value.TotalSeconds, 1, 60);
        answer.Dispose();
    }

    [Fact]
    public async Task Another_key_ends_the_old_one_and_every_browsers_stay()
    {
        using var host = new OpenHost();
        using HttpClient script = host.Client(host.Key);
        using HttpClient phone = host.Client();
        using HttpResponseMessage joined = await OpenHost.JoinAsync(phone, await host.NewCodeAsync());
        Assert.Equal(HttpStatusCode.NoContent, joined.StatusCode);
        host.MakeOtherKey();

        foreach (HttpClient client in new[] { script, phone })
        {
            using HttpResponseMessage refused = await client.GetAsync(Something);
            _ = await Json.ReadProblemAsync(refused, 401, NotIn);
        }
    }

    [Fact]
    public async Task A_browser_that_left_is_out()
    {
        using var host = new OpenHost();
        using HttpClient phone = host.Client();
        using HttpResponseMessage joined = await OpenHost.JoinAsync(phone, await host.NewCodeAsync());
        using HttpResponseMessage left = await phone.DeleteAsync("/api/access");
        using HttpResponseMessage refused = await phone.GetAsync(Something);

        Assert.Equal(HttpStatusCode.NoContent, left.StatusCode);
        _ = await Json.ReadProblemAsync(refused, 401, NotIn);
    }

    [Fact]
    public async Task On_this_machine_alone_nobody_is_asked_and_nobody_can_join()
    {
        using var host = new TestHost();
        using HttpClient client = host.CreateClient();

        Assert.False((await client.GetJsonAsync("/api/access")).GetProperty("asked").GetBoolean());
        using HttpResponseMessage codes = await client.PostAsync("/api/access/codes", null);
        _ = await Json.ReadProblemAsync(codes, 409, "/problems/nothing-to-join");
    }

    [Fact]
    public async Task A_stranger_may_not_send_much()
    {
        using var host = new TestHost();
        host.UseKestrel(0);
        host.StartServer();
        using HttpClient stranger = host.CreateClient();
        using HttpResponseMessage refused = await OpenHost.JoinAsync(stranger, new string('1', 5000));
        var problem = await Json.ReadProblemAsync(refused, 413, "/problems/payload-too-large");
        Assert.Equal("A body may have at most 4096 bytes.", problem.GetProperty("detail").GetString());
    }

    [Theory]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("{\"code\":7}")]
    public async Task A_body_that_is_none_is_refused_as_such(string body)
    {
        using var host = new OpenHost();
        using HttpClient phone = host.Client();
        using HttpResponseMessage refused = await phone.PostAsync("/api/access/join", Json.Content(System.Text.Encoding.UTF8.GetBytes(body)));
        _ = await Json.ReadProblemAsync(refused, 400, "/problems/bad-request");
    }
}
