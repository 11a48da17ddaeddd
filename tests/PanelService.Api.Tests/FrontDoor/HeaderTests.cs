using PanelService.Api.Tests.Hosts;

namespace PanelService.Api.Tests.FrontDoor;

/// <summary>What a browser says about where a request comes from, and what it is told it may do with the answer.</summary>
public sealed class HeaderTests(PlainHosts hosts) : IClassFixture<PlainHosts>
{
    [Theory]
    [InlineData("evil.example")]
    [InlineData("localhost.evil.example")]
    [InlineData("192.0.2.7")]
    public async Task A_name_that_is_not_its_own_is_not_answered(string name)
    {
        using HttpClient client = hosts.Plain.CreateClient();
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
        using HttpClient client = hosts.Named.CreateClient();
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
        using HttpClient client = hosts.Plain.CreateClient();
        client.DefaultRequestHeaders.Add(header, value);
        using HttpResponseMessage refused = await client.PostOrderAsync(SampleOrders.Smallest);
        _ = await Json.ReadProblemAsync(refused, 403, "/problems/cross-origin");
    }

    // It could not see the answer, but what is asked for again and again costs this machine all the same.
    [Theory]
    [InlineData("cross-site", "no-cors", false)]
    [InlineData("same-site", "cors", false)]
    [InlineData("cross-site", "navigate", true)]
    [InlineData("same-origin", "cors", true)]
    [InlineData("none", "navigate", true)]
    public async Task A_page_elsewhere_has_nothing_read_for_it_but_its_links_lead_here(string site, string mode, bool passes)
    {
        using HttpClient client = hosts.Plain.CreateClient();
        client.DefaultRequestHeaders.Add("Sec-Fetch-Site", site);
        client.DefaultRequestHeaders.Add("Sec-Fetch-Mode", mode);
        using HttpResponseMessage answer = await client.GetAsync("/api/export");
        if (passes)
        {
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        }
        else
        {
            _ = await Json.ReadProblemAsync(answer, 403, "/problems/cross-origin");
        }
    }

    // ASVS 4.0.3, 8.2.1 and 5.0, 14.3.2: what the studio has stays in no browser's cache.
    [Theory]
    [InlineData("/api/practice", "no-store")]
    [InlineData("/api/plans/none", "no-store")]
    [InlineData("/api/export", "no-store")]
    [InlineData("/", "no-cache")]
    public async Task What_the_studio_has_is_in_no_cache(string address, string expected)
    {
        using HttpClient client = hosts.Plain.CreateClient();
        using HttpResponseMessage response = await client.GetAsync(address);
        Assert.Equal(expected, response.Headers.CacheControl?.ToString());
    }

    [Theory]
    [InlineData("Sec-Fetch-Site", "same-origin")]
    [InlineData("Sec-Fetch-Site", "none")]
    [InlineData("Origin", "http://localhost")]
    [InlineData("Origin", "https://localhost")]
    public async Task Its_own_page_can(string header, string value)
    {
        using HttpClient client = hosts.Plain.CreateClient();
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
        using HttpClient client = hosts.Plain.CreateClient();
        using HttpResponseMessage response = await client.GetAsync(address);
        string policy = Assert.Single(response.Headers.GetValues("Content-Security-Policy"));
        Assert.StartsWith("default-src 'none';", policy, StringComparison.Ordinal);
        Assert.Contains(scripts, policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(response.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("DENY", Assert.Single(response.Headers.GetValues("X-Frame-Options")));
        Assert.False(response.Headers.Contains("Server"));
    }

    // Fetch, "CORB" and "nosniff", and CSP level 3, 4: a policy binds documents and workers, a script the one of its page.
    [Theory]
    [InlineData("/main.js", false)]
    [InlineData("/styles/page.css", false)]
    [InlineData("/sw.js", true)]
    [InlineData("/no-such-module.js", true)]
    public async Task A_part_of_a_page_is_kept_to_this_origin_and_the_policy_is_its_page_s(string address, bool bringsItsOwn)
    {
        using HttpClient client = hosts.Plain.CreateClient();
        using HttpResponseMessage response = await client.GetAsync(address);
        Assert.Equal("nosniff", Assert.Single(response.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("same-origin", Assert.Single(response.Headers.GetValues("Cross-Origin-Resource-Policy")));
        Assert.Equal(bringsItsOwn, response.Headers.Contains("Content-Security-Policy"));
    }

    // ASVS 5.0, 3.2.1: opened by itself a document or a drawing runs and loads nothing.
    [Theory]
    [InlineData("/api/practice")]
    [InlineData("/api/plans/none/sheets/1.svg")]
    [InlineData("/api/nothing-here")]
    public async Task A_document_opened_by_itself_is_boxed_in(string address)
    {
        using HttpClient client = hosts.Plain.CreateClient();
        using HttpResponseMessage response = await client.GetAsync(address);
        string policy = Assert.Single(response.Headers.GetValues("Content-Security-Policy"));
        Assert.Equal("default-src 'none'; object-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; sandbox", policy);
    }

    [Fact]
    public async Task An_answer_to_an_exception_carries_them_too()
    {
        using HttpClient client = hosts.Plain.CreateClient();
        using HttpResponseMessage refused = await client.PostAsync("/api/access/join", Json.Content("{"u8.ToArray()));
        _ = await Json.ReadProblemAsync(refused, 400, "/problems/bad-request");
        Assert.Contains("sandbox", Assert.Single(refused.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(refused.Headers.GetValues("X-Content-Type-Options")));
    }

    // Found by `fuzz`: the platform's reader breaks down over them.
    [Theory]
    [InlineData("nonsense")]
    [InlineData("utf-7")]
    [InlineData("utf-16")]
    public async Task Characters_it_does_not_know_are_refused_in_words(string charset)
    {
        using HttpClient client = hosts.Plain.CreateClient();
        using var content = new StringContent("{}");
        content.Headers.ContentType = System.Net.Http.Headers.MediaTypeHeaderValue.Parse($"application/json; charset={charset}");
        using HttpResponseMessage refused = await client.PostAsync("/api/access/join", content);
        _ = await Json.ReadProblemAsync(refused, 415, "/problems/unsupported-media-type");
    }

    // ASVS 5.0, 4.1.1: text and XML say how their characters are written.
    [Theory]
    [InlineData("/", "text/html")]
    [InlineData("/main.js", "text/javascript")]
    [InlineData("/styles/page.css", "text/css")]
    [InlineData("/icon.svg", "image/svg+xml")]
    [InlineData("/docs/index.html", "text/html")]
    [InlineData("/docs/swagger-ui.css", "text/css")]
    public async Task Text_says_how_its_characters_are_written(string address, string type)
    {
        using HttpClient client = hosts.Plain.CreateClient();
        using HttpResponseMessage response = await client.GetAsync(address);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal((type, "utf-8"), (response.Content.Headers.ContentType?.MediaType, response.Content.Headers.ContentType?.CharSet));
    }

    // ASVS 5.0, 3.4.1: a year, over TLS; never for localhost, which is every other service's name as well.
    [Theory]
    [InlineData("https://ticket.workshop.example", "max-age=31536000")]
    [InlineData("http://ticket.workshop.example", null)]
    [InlineData("https://localhost", null)]
    public async Task Over_TLS_it_asks_for_TLS_from_now_on(string address, string? expected)
    {
        using HttpClient client = hosts.Named.CreateClient(new() { BaseAddress = new Uri(address) });
        using HttpResponseMessage response = await client.GetAsync("/health");
        Assert.Equal(expected, response.Headers.TryGetValues("Strict-Transport-Security", out var values) ? Assert.Single(values) : null);
    }

    // ASVS 5.0, 3.4.2: no other origin is ever allowed to read.
    [Theory]
    [InlineData("GET")]
    [InlineData("OPTIONS")]
    public async Task No_other_origin_may_read(string method)
    {
        using HttpClient client = hosts.Plain.CreateClient();
        using var request = new HttpRequestMessage(new HttpMethod(method), "/api/practice");
        request.Headers.Add("Origin", "http://evil.example");
        request.Headers.Add("Access-Control-Request-Method", "POST");
        using HttpResponseMessage response = await client.SendAsync(request);
        Assert.DoesNotContain(response.Headers, header => header.Key.StartsWith("Access-Control-", StringComparison.OrdinalIgnoreCase));
    }
}
