using PanelService.Api.Tests.Hosts;

namespace PanelService.Api.Tests.FrontDoor;

/// <summary>A browser's stay, by the requirements of OWASP ASVS 5.0 for sessions and cookies (docs/asvs.md).</summary>
public sealed class StayTests
{
    private const string Something = "/api/demo";
    private const string Access = "/api/access";
    private const string NotIn = "/problems/not-in";

    // 7.4.1: leaving ends the stay where it is checked, not only in the browser that left.
    [Fact]
    public async Task A_copy_of_the_cookie_is_worth_nothing_once_its_browser_left()
    {
        using var host = new OpenHost();
        using HttpClient browser = host.SecureClient(keepsCookies: false);
        string cookie = await JoinAsync(host, browser);
        Assert.Equal(HttpStatusCode.OK, await AskAsync(browser, cookie));

        using HttpResponseMessage left = await browser.SendAsync(With(HttpMethod.Delete, Access, cookie));

        Assert.Equal(HttpStatusCode.NoContent, left.StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, await AskAsync(browser, cookie));
        Assert.Single(host.Kept("", "ended-stays"));
    }

    // 7.2.4: joining anew ends the stay before.
    [Fact]
    public async Task Joining_again_gives_another_cookie_and_ends_the_one_before()
    {
        using var host = new OpenHost();
        using HttpClient browser = host.SecureClient(keepsCookies: false);
        string first = await JoinAsync(host, browser);
        string second = await JoinAsync(host, browser, first);

        Assert.NotEqual(first, second);
        Assert.Equal(HttpStatusCode.Unauthorized, await AskAsync(browser, first));
        Assert.Equal(HttpStatusCode.OK, await AskAsync(browser, second));
    }

    // 3.3.1 (and 3.3.2 to 3.3.4): over TLS the cookie is held to this host, to TLS and to the server.
    [Fact]
    public async Task Over_TLS_the_cookie_is_bound_to_the_host()
    {
        using var host = new OpenHost();
        using HttpClient browser = host.SecureClient(keepsCookies: false);
        using HttpResponseMessage joined = await OpenHost.JoinAsync(browser, await host.NewCodeAsync());

        string[] parts = [.. Assert.Single(joined.Headers.GetValues("Set-Cookie")).Split("; ")];
        Assert.StartsWith("__Host-panel-service=", parts[0], StringComparison.Ordinal);
        Assert.Superset(new HashSet<string> { "path=/", "secure", "samesite=strict", "httponly" }, parts[1..].Select(part => part.ToLowerInvariant()).ToHashSet());
        Assert.DoesNotContain(parts, part => part.StartsWith("domain", StringComparison.OrdinalIgnoreCase));
    }

    // 14.3.1: a browser that leaves keeps nothing.
    [Fact]
    public async Task A_browser_that_leaves_is_told_to_keep_nothing()
    {
        using var host = new OpenHost();
        using HttpClient browser = host.SecureClient();
        using HttpResponseMessage left = await browser.DeleteAsync(Access);
        Assert.Equal("\"cache\", \"storage\"", Assert.Single(left.Headers.GetValues("Clear-Site-Data")));
    }

    // 9.1.1, 9.1.2, 11.3.2: what a cookie says is sealed by one approved algorithm; a changed sign breaks the seal.
    [Fact]
    public async Task A_changed_cookie_is_no_cookie()
    {
        using var host = new OpenHost();
        using HttpClient browser = host.SecureClient(keepsCookies: false);
        string cookie = await JoinAsync(host, browser);
        char last = cookie[^20];

        Assert.Equal(HttpStatusCode.Unauthorized, await AskAsync(browser, cookie[..^20] + (last == 'A' ? 'B' : 'A') + cookie[^19..]));
        FileInfo key = Assert.Single(host.Kept("cookie-keys", "key-*.xml"));
        Assert.Contains("<encryption algorithm=\"AES_256_GCM\"", await File.ReadAllTextAsync(key.FullName), StringComparison.Ordinal);
    }

    private static async Task<string> JoinAsync(OpenHost host, HttpClient browser, string? cookie = null)
    {
        using HttpRequestMessage request = With(HttpMethod.Post, "/api/access/join", cookie);
        request.Content = Json.Content(System.Text.Encoding.UTF8.GetBytes($"{{\"code\":\"{await host.NewCodeAsync()}\"}}"));
        using HttpResponseMessage joined = await browser.SendAsync(request);
        Assert.Equal(HttpStatusCode.NoContent, joined.StatusCode);
        return Assert.Single(joined.Headers.GetValues("Set-Cookie")).Split(';')[0];
    }

    private static async Task<HttpStatusCode> AskAsync(HttpClient browser, string cookie)
    {
        using HttpResponseMessage answer = await browser.SendAsync(With(HttpMethod.Get, Something, cookie));
        if (answer.StatusCode == HttpStatusCode.Unauthorized)
        {
            _ = await Json.ReadProblemAsync(answer, 401, NotIn);
        }

        return answer.StatusCode;
    }

    private static HttpRequestMessage With(HttpMethod method, string address, string? cookie)
    {
        var request = new HttpRequestMessage(method, address);
        if (cookie is not null)
        {
            request.Headers.Add("Cookie", cookie);
        }

        return request;
    }
}
