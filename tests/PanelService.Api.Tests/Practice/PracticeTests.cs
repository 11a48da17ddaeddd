using System.Text.Json;
using PanelService.Api.Tests.Hosts;

namespace PanelService.Api.Tests.Practice;

public sealed class PracticeTests(PlainHosts hosts) : IClassFixture<PlainHosts>
{
    [Fact]
    public async Task Get_practice_gives_each_setting_with_its_value_and_where_it_comes_from()
    {
        using HttpClient client = hosts.Plain.CreateClient();

        JsonElement table = await client.GetJsonAsync("/api/practice");

        Assert.Equal("inch", table.GetProperty("units").GetString());
        JsonElement kerf = table.GetProperty("settings").EnumerateArray().Single(s => s.GetProperty("setting").GetString() == "saw.kerf");
        Assert.Equal("1/8 in", kerf.GetProperty("text").GetString());
        Assert.Equal(3.175m, kerf.GetProperty("millimetres")[0].GetDecimal());
        Assert.Equal(0.125m, kerf.GetProperty("inches")[0].GetDecimal());
        Assert.Equal("commonPractice", kerf.GetProperty("mark").GetString());
        Assert.All(table.GetProperty("settings").EnumerateArray(), s => Assert.NotEqual("", s.GetProperty("source").GetString()));
    }

    // The French standard series as tabulated in public encyclopaedias: 10F is 55 × 46 cm.
    [Fact]
    public async Task Get_formats_gives_each_series_in_the_unit_its_sizes_are_whole_in()
    {
        using HttpClient client = hosts.Plain.CreateClient();

        JsonElement all = await client.GetJsonAsync("/api/formats");

        JsonElement french = all.EnumerateArray().Single(s => s.GetProperty("name").GetString() == "French");
        Assert.Equal("centimetre", french.GetProperty("units").GetString());
        JsonElement ten = french.GetProperty("formats").EnumerateArray().Single(f => f.GetProperty("name").GetString() == "10F");
        Assert.Equal((46m, 55m), (ten.GetProperty("width").GetDecimal(), ten.GetProperty("height").GetDecimal()));
    }

    [Fact]
    public async Task Get_health_says_the_service_is_up()
    {
        using HttpClient client = hosts.Plain.CreateClient();

        Assert.Equal("ok", (await client.GetJsonAsync("/health")).GetProperty("status").GetString());
    }

    [Fact]
    public async Task Get_root_is_the_page()
    {
        using HttpClient client = hosts.Plain.CreateClient();

        using HttpResponseMessage response = await client.GetAsync(new Uri("/", UriKind.Relative));

        Assert.Equal("text/html", response.Content.Headers.ContentType?.MediaType);
        Assert.Contains("script-src 'self'", Assert.Single(response.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
        Assert.True(response.Headers.CacheControl?.NoCache);
        Assert.Contains("Panel Service", await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }
}
