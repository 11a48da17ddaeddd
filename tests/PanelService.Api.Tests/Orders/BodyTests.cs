using System.Text;
using System.Text.Json;
using PanelService.Api.Tests.Hosts;

namespace PanelService.Api.Tests.Orders;

/// <summary>Bodies that are no JSON document at all, too large, or of another type.</summary>
public sealed class BodyTests : IClassFixture<RefusingService>
{
    private const string Malformed = "/problems/malformed-json";

    private readonly HttpClient _client;

    public BodyTests(RefusingService service)
    {
        ArgumentNullException.ThrowIfNull(service);
        _client = service.Client;
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("   ", "line 1")]
    [InlineData("{", "line 1")]
    [InlineData("{ \"panels\": [ }", "line 1")]
    [InlineData("{\n\"units\": inch }", "line 2, byte 10")]
    [InlineData("{ \"units\": \"inch\", }", "line 1")]
    [InlineData("{ \"units\": \"inch\" } // all", "line 1")]
    [InlineData("{ \"units\": NaN }", "line 1")]
    [InlineData("{ \"units\": Infinity }", "line 1")]
    [InlineData("{ \"units\": 01 }", "line 1")]
    [InlineData("{} {}", "line 1")]
    [InlineData("width=8&height=10", "line 1")]
    public async Task Create_body_that_is_no_json_is_400_and_says_where(string body, string expected)
    {
        HttpClient client = _client;

        using HttpResponseMessage response = await client.PostOrderAsync(body);

        JsonElement problem = await Json.ReadProblemAsync(response, 400, Malformed);
        Assert.Contains(expected, problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.Equal(problem.GetProperty("detail").GetString(), problem.GetProperty("errors").GetProperty("$")[0].GetString());
    }

    [Theory]
    [InlineData("[]", "an array")]
    [InlineData("\"order\"", "text")]
    [InlineData("42", "a number")]
    [InlineData("null", "null")]
    public async Task Create_body_that_is_no_object_is_400(string body, string expected)
    {
        HttpClient client = _client;

        using HttpResponseMessage response = await client.PostOrderAsync(body);

        JsonElement problem = await Json.ReadProblemAsync(response, 400, "/problems/invalid-request");
        Assert.EndsWith($"this is {expected}.", problem.GetProperty("errors").GetProperty("$")[0].GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{ \"units\": \"inch\", \"units\": \"millimetre\" }", "units")]
    [InlineData("{ \"panels\": [ { \"width\": 1, \"width\": 2 } ] }", "panels[0].width")]
    public async Task Create_field_that_stands_twice_is_400(string body, string key)
    {
        HttpClient client = _client;

        using HttpResponseMessage response = await client.PostOrderAsync(body);

        JsonElement problem = await Json.ReadProblemAsync(response, 400, "/problems/invalid-request");
        Assert.Contains("twice", problem.GetProperty("errors").GetProperty(key)[0].GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{ \"\\ud800\": 1 }", "$", "Unicode")]
    [InlineData("{ \"title\": \"half \\ud800 character\" }", "title", "printable")]
    [InlineData("{ \"units\": \"\\udfff\" }", "units", "Expected one of")]
    [InlineData("{ \"panels\": [ { \"width\": \"\\ud800\" } ] }", "panels[0].width", "Expected a length")]
    public async Task Create_text_with_half_a_character_is_400(string body, string key, string expected)
    {
        HttpClient client = _client;

        using HttpResponseMessage response = await client.PostOrderAsync(body);

        JsonElement problem = await Json.ReadProblemAsync(response, 400, "/problems/invalid-request");
        Assert.Contains(expected, problem.GetProperty("errors").GetProperty(key)[0].GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Create_body_nested_beyond_reason_is_400()
    {
        HttpClient client = _client;
        string deep = string.Concat(Enumerable.Repeat("{\"panels\":", 10_000)) + "1" + new string('}', 10_000);

        using HttpResponseMessage response = await client.PostOrderAsync(deep);

        await Json.ReadProblemAsync(response, 400, Malformed);
    }

    [Fact]
    public async Task Create_body_that_is_not_utf8_is_400()
    {
        HttpClient client = _client;
        byte[] body = [.. Encoding.UTF8.GetBytes("{ \"title\": \""), 0xC3, 0x28, .. Encoding.UTF8.GetBytes("\" }")];

        using HttpResponseMessage response = await client.PostAsync("/api/plans", Json.Content(body));

        JsonElement problem = await Json.ReadProblemAsync(response, 400, Malformed);
        Assert.Contains("UTF-8", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Create_body_with_a_byte_order_mark_is_read()
    {
        HttpClient client = _client;
        byte[] body = [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(SampleOrders.Smallest)];

        using HttpResponseMessage response = await client.PostAsync("/api/plans", Json.Content(body));

        Assert.Equal(HttpStatusCode.Created, response.StatusCode);
    }

    [Theory]
    [InlineData("POST", "/api/stock", "application/json")]
    [InlineData("POST", "/api/stock.csv", "text/csv")]
    public async Task Body_of_another_type_is_told_what_the_address_takes(string method, string address, string expected)
    {
        using var host = new TestHost();
        using HttpClient client = host.CreateClient();
        using var request = new HttpRequestMessage(new HttpMethod(method), address) { Content = new StringContent("eight by ten", Encoding.UTF8, "text/plain") };

        using HttpResponseMessage response = await client.SendAsync(request);

        JsonElement problem = await Json.ReadProblemAsync(response, 415, "/problems/unsupported-media-type");
        Assert.Equal($"Expected Content-Type: {expected} in UTF-8; this is text/plain; charset=utf-8.", problem.GetProperty("detail").GetString());
    }

    [Fact]
    public async Task Word_for_a_number_in_an_address_is_told_as_that()
    {
        using var host = new TestHost();
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage response = await client.GetAsync(new Uri("/api/stock/movements?after=x", UriKind.Relative));

        JsonElement problem = await Json.ReadProblemAsync(response, 400, "/problems/bad-request");
        Assert.StartsWith("A value in the address", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("text/plain")]
    [InlineData("application/x-www-form-urlencoded")]
    [InlineData("application/json; charset=utf-16")]
    public async Task Create_body_of_another_type_is_415(string? type)
    {
        HttpClient client = _client;

        using HttpResponseMessage response = await client.PostAsync("/api/plans", Json.Content(Encoding.UTF8.GetBytes(SampleOrders.Smallest), type));

        await Json.ReadProblemAsync(response, 415, "/problems/unsupported-media-type");
    }

    [Theory]
    [InlineData("application/json; charset=utf-8")]
    [InlineData("application/json; charset=\"UTF-8\"")]
    [InlineData("application/vnd.studio+json")]
    public async Task Create_body_of_a_json_type_is_read(string type)
    {
        HttpClient client = _client;

        using HttpResponseMessage response = await client.PostAsync("/api/plans", Json.Content(Encoding.UTF8.GetBytes(SampleOrders.Smallest), type));

        Assert.Equal(HttpStatusCode.Created, response.StatusCode);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Create_body_over_a_mebibyte_is_413_chunked_or_not(bool chunked)
    {
        HttpClient client = _client;
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/plans") { Content = Json.Content(Padded(1024 * 1024 + 1)) };
        request.Headers.TransferEncodingChunked = chunked;

        using HttpResponseMessage response = await client.SendAsync(request);

        await Json.ReadProblemAsync(response, 413, "/problems/body-too-large");
    }

    [Fact]
    public async Task Create_body_of_a_mebibyte_exactly_is_read()
    {
        HttpClient client = _client;

        using HttpResponseMessage response = await client.PostAsync("/api/plans", Json.Content(Padded(1024 * 1024)));

        Assert.Equal(HttpStatusCode.Created, response.StatusCode);
    }

    private static byte[] Padded(int bytes) => Encoding.UTF8.GetBytes(SampleOrders.Smallest.PadRight(bytes));
}
