using System.Text.Json;
using PanelService.Api.Tests.Hosts;

namespace PanelService.Api.Tests.Orders;

/// <summary>Faults in what the bench is told: each is refused with 400, names its field, and is never planned.</summary>
public sealed class BenchFaultTests : IClassFixture<RefusingService>
{
    private readonly RefusingService _service;

    public BenchFaultTests(RefusingService service)
    {
        ArgumentNullException.ThrowIfNull(service);
        _service = service;
    }

    [Theory]
    [InlineData("strength", "{ \"limit\": 5 }", "strength.limit", "10 to 10000")]
    [InlineData("strength", "{ \"load\": -1 }", "strength.load", "from 0 to")]
    [InlineData("strength", "{ \"humidity\": [80, 35] }", "strength.humidity", "damper")]
    [InlineData("strength", "{ \"humidity\": [35] }", "strength.humidity", "two relative humidities")]
    [InlineData("strength", "{ \"faces\": [50, 100] }", "strength.faces", "from 0 to 99")]
    [InlineData("strength", "{ \"faces\": [50, \"wet\"] }", "strength.faces[1]", "Expected a number")]
    [InlineData("strength", "{ \"temperature\": 60 }", "strength.temperature", "0 to 50")]
    [InlineData("strength", "{ \"stripWidth\": 0 }", "strength.stripWidth", "above 0")]
    [InlineData("panels[0].pack", "-1", "panels[0].pack", "0 to 100000")]
    [InlineData("panels[0].pack", "99999", "panels[0].pack", "at most its quantity")]
    [InlineData("panels[0].cradle", "1", "panels[0].cradle", "true or false")]
    [InlineData("panels[1]", "{ \"width\": 8, \"height\": 10, \"quantity\": 1, \"surface\": \"loose\", \"cradle\": true }", "panels[1].cradle", "Loose cloth")]
    [InlineData("panels[1].mount", "\"later\"", "panels[1].mount", "Only cloth is mounted")]
    [InlineData("panels[0].mount", "\"never\"", "panels[0].mount", "\"now\", \"later\"")]
    [InlineData("panels[0].first", "1", "panels[0].first", "true or false")]
    [InlineData("bench.margin", "[1, 2, 3]", "bench.margin", "two lengths")]
    [InlineData("bench.margin", "[1, 2, 3, -4]", "bench.margin", "four")]
    [InlineData("bench.shrinkage", "51", "bench.shrinkage", "0 to 50")]
    [InlineData("bench.shrinkage", "[1, 2, 3]", "bench.shrinkage", "one percentage or two")]
    [InlineData("bench.pressure", "0", "bench.pressure", "0.001 to 200")]
    [InlineData("bench.restHours", "-1", "bench.restHours", "0 to 1000")]
    [InlineData("bench.roomTemperature", "99", "bench.roomTemperature", "-40 to 60")]
    [InlineData("primers[0].faces", "3", "primers[0].faces", "1 to 2")]
    [InlineData("primers[0].thinning", "95", "primers[0].thinning", "0 to 90")]
    [InlineData("adhesives[0].loss", "101", "adhesives[0].loss", "0 to 100")]
    [InlineData("adhesives[0].openMinutes", "0", "adhesives[0].openMinutes", "1 to 1000")]
    [InlineData("adhesives[0].base", "\"milk\"", "adhesives[0].base", "\"water\", \"oil\", \"solvent\"")]
    [InlineData("cloths[0].ground", "\"egg\"", "cloths[0].ground", "\"none\", \"acrylic\", \"oil\"")]
    [InlineData("schedule", "{ \"start\": \"tomorrow\" }", "schedule.start", "such as \"2026-12-01\"")]
    [InlineData("schedule", "{ \"from\": \"9\" }", "schedule.from", "such as \"09:00\"")]
    [InlineData("schedule", "{ \"from\": \"09:00\", \"to\": \"09:30\" }", "schedule.to", "at least an hour")]
    [InlineData("schedule", "{ \"from\": \"23:30\" }", "schedule.from", "at least an hour")]
    [InlineData("schedule", "{ \"days\": [] }", "schedule.days", "1 to 7")]
    [InlineData("schedule", "{ \"days\": [\"someday\"] }", "schedule.days[0]", "\"monday\"")]
    [InlineData("schedule", "{ \"hands\": 0 }", "schedule.hands", "1 to 100")]
    [InlineData("schedule", "{ \"zone\": \"Tern/Island\" }", "schedule.zone", "time zone")]
    [InlineData("strips", "[ { \"length\": 96, \"price\": 4.20 } ]", "strips[0].id", "Required")]
    [InlineData("strips", "[ { \"id\": \"a\", \"price\": 4.20 } ]", "strips[0].length", "Required")]
    [InlineData("strips", "[ { \"id\": \"a\", \"length\": 96 } ]", "strips[0].price", "Required")]
    [InlineData("strips", "[ { \"id\": \"a\", \"length\": \"11 m\", \"price\": 1 } ]", "strips[0].length", "from 1 mm to 10 m")]
    [InlineData("strips", "[ { \"id\": \"a\", \"length\": 96, \"price\": 1 }, { \"id\": \"a\", \"length\": 72, \"price\": 1 } ]", "strips[1].id", "already")]
    [InlineData("boards[0].density", "0", "boards[0].density", "50 to 5000")]
    [InlineData("boards[0].elasticity", "0", "boards[0].elasticity", "10 to 500000")]
    [InlineData("boards[0].poisson", "0.5", "boards[0].poisson", "0 to 0.49")]
    [InlineData("boards[0].expansion", "-1", "boards[0].expansion", "0 to 10")]
    [InlineData("cloths[0].weight", "-1", "cloths[0].weight", "0 to 10000")]
    public async Task Create_with_one_fault_is_refused_and_says_where_and_what(string path, string json, string key, string expected)
    {
        using HttpResponseMessage response = await _service.Client.PostOrderAsync(Json.With(SampleOrders.Full, path, json));

        JsonElement problem = await Json.ReadProblemAsync(response, 400, "/problems/invalid-request");
        string message = Assert.Single(problem.GetProperty("errors").GetProperty(key).EnumerateArray()).GetString()!;
        Assert.Contains(expected, message, StringComparison.Ordinal);
        Assert.Empty(_service.Planned);
    }
}
