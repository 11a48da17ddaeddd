using PanelService.Api.Tests.Hosts;

namespace PanelService.Api.Tests.FrontDoor;

/// <summary>What a browser says about where a request comes from, and what it is told it may do with the answer.</summary>
public sealed class HeaderTests
{
    [Theory]
    [InlineData("evil.example")]
    [InlineData("localhost.evil.example")]
    [InlineData("192.0.2.7")]
    public async Task A_name_that_is_not_its_own_is_not_answered(string name)
    {
        using var host = new TestHost();
        using HttpClient client = host.CreateClient();
        client.DefaultRequestHeaders.Host = name;
        using HttpResponseMessage response = await client.GetAsync("/health");
        _ = await Json.ReadProblemAsync(response, 421, "/problems/wrong-host");
    }

    [Theory]
    [InlineData("localhost:5180")]
    [InlineData("127.0.0.1:5180")]
    [InlineData("[::1]:5180")]
    [InlineData("ticket.workshop.example")]
    public async Task Its_own_names_are(string name)
    {
        using var host = new TestHost(null, ("FrontDoor:Hosts:0", "ticket.workshop.example"));
        using HttpClient client = host.CreateClient();
        client.DefaultRequestHeaders.Host = name;
        Assert.Equal("ok", (await client.GetJsonAsync("/health")).GetProperty("status").GetString());
    }

    [Fact]
    public async Task Open_to_the_network_it_answers_to_plain_addresses_and_the_machines_name()
    {
        using var host = new OpenHost();
        using HttpClient client = host.Client();
        foreach (string name in new[] { "192.0.2.7:5180", Environment.MachineName, $"{Environment.MachineName}.local" })
        {
            client.DefaultRequestHeaders.Host = name;
            _ = await client.GetJsonAsync("/health");
        }

        client.DefaultRequestHeaders.Host = "evil.example";
        using HttpResponseMessage refused = await client.GetAsync("/health");
        _ = await Json.ReadProblemAsync(refused, 421, "/problems/wrong-host");
    }

    [Theory]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    [InlineData("Origin", "http://evil.example")]
    [InlineData("Origin", "null")]
    [InlineData("Origin", "http://localhost:81")]
    public async Task A_page_elsewhere_cannot_write(string header, string value)
    {
        using var host = new TestHost();
        using HttpClient client = host.CreateClient();
        client.DefaultRequestHeaders.Add(header, value);
        using HttpResponseMessage refused = await client.PostOrderAsync(SampleOrders.Smallest);
        _ = await Json.ReadProblemAsync(refused, 403, "/problems/cross-origin");
    }

    [Theory]
    [InlineData("Sec-Fetch-Site", "same-origin")]
    [InlineData("Sec-Fetch-Site", "none")]
    [InlineData("Origin", "http://localhost")]
    [InlineData("Origin", "https://localhost")]
    public async Task Its_own_page_can(string header, string value)
    {
        using var host = new TestHost();
        using HttpClient client = host.CreateClient();
        client.DefaultRequestHeaders.Add(header, value);
        using HttpResponseMessage made = await client.PostOrderAsync(SampleOrders.Smallest);
        Assert.Equal(HttpStatusCode.Created, made.StatusCode);
    }

    [Theory]
    [InlineData("/", "script-src 'self'; style-src 'self';")]
    [InlineData("/health", "script-src 'self'; style-src 'self';")]
    [InlineData("/docs/index.html", "script-src 'self'; style-src 'self' 'unsafe-inline';")]
    public async Task Every_answer_says_that_nothing_of_another_origin_runs(string address, string scripts)
    {
        using var host = new TestHost();
        using HttpClient client = host.CreateClient();
        using HttpResponseMessage response = await client.GetAsync(address);
        string policy = Assert.Single(response.Headers.GetValues("Content-Security-Policy"));
        Assert.StartsWith("default-src 'none';", policy, StringComparison.Ordinal);
        Assert.Contains(scripts, policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(response.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("DENY", Assert.Single(response.Headers.GetValues("X-Frame-Options")));
        Assert.False(response.Headers.Contains("Server"));
    }
}
