using System.Text.Json;
using PanelService.Store.Tests.Hosts;

namespace PanelService.Store.Tests.Supplies;

/// <summary>What can be bought and the studio's settings: saved, versioned, and what orders leave out is taken from them.</summary>
public abstract class SupplyTests(IDatabase database)
{
    private const string Board = """{ "id": "hb3", "name": "Hardboard", "kind": "hardboard", "thickness": "1/8", "width": 24, "height": 48, "price": 6.10, "units": "inch", "currency": "EUR" }""";
    private const string Line = """{ "width": 8, "height": 10, "quantity": 10 }""";

    [Fact]
    public async Task Put_saves_a_good_and_get_gives_it_back_with_the_day_of_its_price()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage created = await client.SendJsonAsync(HttpMethod.Put, "/api/supplies/boards/hb3", Board);
        JsonElement found = await client.GetJsonAsync("/api/supplies/boards/hb3");
        JsonElement all = await client.GetJsonAsync("/api/supplies");

        Assert.Equal(HttpStatusCode.Created, created.StatusCode);
        Assert.Equal("\"1\"", created.Headers.ETag!.Tag);
        Assert.Equal("1/8", found.GetProperty("thickness").GetString());
        Assert.Equal(6.10m, found.GetProperty("price").GetDecimal());
        Assert.Matches("^20[0-9]{2}-[0-9]{2}-[0-9]{2}$", found.GetProperty("pricedOn").GetString());
        Assert.Equal("hb3", Assert.Single(all.GetProperty("boards").EnumerateArray()).GetProperty("id").GetString());
        Assert.Equal(0, all.GetProperty("cloths").GetArrayLength());
    }

    [Fact]
    public async Task Yield_without_boards_is_answered_for_all_that_is_saved_and_in_stock_with_the_saved_saw()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        const string Question = """{ "panel": { "width": 8, "height": 10 } }""";
        using HttpResponseMessage early = await client.SendJsonAsync(HttpMethod.Post, "/api/yield", Question);
        await client.TakenAsync(HttpMethod.Put, "/api/supplies/boards/hb3", Board);
        await client.TakenAsync(HttpMethod.Post, "/api/stock", """{ "sort": "offcut", "count": 3, "thickness": "1/8", "width": 16, "height": 10, "units": "inch", "currency": "EUR" }""");

        // With a kerf of 1/8 in two panels of 8 in do not come out of 16 in; with none they do.
        JsonElement usual = await client.TakenAsync(HttpMethod.Post, "/api/yield", Question);
        await client.TakenAsync(HttpMethod.Put, "/api/settings", """{ "units": "inch", "currency": "EUR", "saw": { "kerf": 0 } }""");
        JsonElement saved = await client.TakenAsync(HttpMethod.Post, "/api/yield", Question);

        JsonElement problem = await early.ReadProblemAsync(400, "/problems/invalid-request");
        Assert.True(problem.GetProperty("errors").TryGetProperty("boards", out _), problem.ToString());
        Assert.Equal([("hb3", 10, 0), ("B1", 1, 3)], usual.GetProperty("boards").EnumerateArray().Select(Told));
        Assert.Equal([("hb3", 14, 0), ("B1", 2, 6)], saved.GetProperty("boards").EnumerateArray().Select(Told));

        static (string?, int, int) Told(JsonElement board) => (board.GetProperty("board").GetString(), board.GetProperty("count").GetInt32(), board.GetProperty("fromHand").GetInt32());
    }

    [Fact]
    public async Task Put_over_another_version_is_refused_as_the_standards_say()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        await client.TakenAsync(HttpMethod.Put, "/api/supplies/boards/hb3", Board);
        string dearer = Board.Replace("6.10", "7.00", StringComparison.Ordinal);

        using HttpResponseMessage bare = await client.SendJsonAsync(HttpMethod.Put, "/api/supplies/boards/hb3", dearer);
        using HttpResponseMessage stale = await client.SendJsonAsync(HttpMethod.Put, "/api/supplies/boards/hb3", dearer, "\"7\"");
        using HttpResponseMessage right = await client.SendJsonAsync(HttpMethod.Put, "/api/supplies/boards/hb3", dearer, "\"1\"");
        using HttpResponseMessage again = await client.SendJsonAsync(HttpMethod.Put, "/api/supplies/boards/hb3", Board, "\"1\"");
        using HttpResponseMessage noSuch = await client.SendJsonAsync(HttpMethod.Put, "/api/supplies/boards/other", Board.Replace("hb3", "other", StringComparison.Ordinal), "\"1\"");

        await bare.ReadProblemAsync(428, "/problems/version-needed");
        await stale.ReadProblemAsync(412, "/problems/version-changed");
        Assert.Equal(HttpStatusCode.OK, right.StatusCode);
        Assert.Equal("\"2\"", right.Headers.ETag!.Tag);
        await again.ReadProblemAsync(412, "/problems/version-changed");
        await noSuch.ReadProblemAsync(412, "/problems/version-changed");
        Assert.Equal(7.00m, (await client.GetJsonAsync("/api/supplies/boards/hb3")).GetProperty("price").GetDecimal());
    }

    [Fact]
    public async Task Put_keeps_the_day_of_a_price_that_stays()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string dated = Board.Replace("\"units\"", "\"pricedOn\": \"2020-02-29\", \"units\"", StringComparison.Ordinal);
        await client.TakenAsync(HttpMethod.Put, "/api/supplies/boards/hb3", dated);

        JsonElement renamed = await client.TakenAsync(HttpMethod.Put, "/api/supplies/boards/hb3", Board.Replace("\"Hardboard\"", "\"Brown board\"", StringComparison.Ordinal), "\"1\"");
        JsonElement dearer = await client.TakenAsync(HttpMethod.Put, "/api/supplies/boards/hb3", Board.Replace("6.10", "7.00", StringComparison.Ordinal), "\"2\"");

        Assert.Equal("2020-02-29", renamed.GetProperty("pricedOn").GetString());
        Assert.NotEqual("2020-02-29", dearer.GetProperty("pricedOn").GetString());
    }

    [Theory]
    [InlineData("boards", """{ "width": 24 }""", "thickness")]
    [InlineData("boards", """{ "id": "other", "thickness": "1/8", "width": 24, "height": 48, "price": 6 }""", "id")]
    [InlineData("boards", """{ "thickness": "1/8", "width": 24, "height": 48, "price": 6, "colour": "brown" }""", "colour")]
    [InlineData("boards", """{ "thickness": "1/8", "width": 24, "height": 48, "price": 6.123, "currency": "EUR" }""", "price")]
    [InlineData("cloths", """{ "width": 62 }""", "sale")]
    [InlineData("adhesives", """{ "coverage": { "area": 80 }, "containers": [] }""", "coverage.volume")]
    [InlineData("primers", """{ "units": "furlong", "coverage": { "area": 80, "volume": 1 }, "containers": [ { "volume": 1, "price": 1 } ] }""", "units")]
    public async Task Put_with_faults_says_where_they_are_and_saves_nothing(string sort, string body, string field)
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage response = await client.SendJsonAsync(HttpMethod.Put, $"/api/supplies/{sort}/one", body);

        JsonElement problem = await response.ReadProblemAsync(400, "/problems/invalid-request");
        Assert.True(problem.GetProperty("errors").TryGetProperty(field, out _), problem.ToString());
        Assert.Equal(0, (await client.GetJsonAsync("/api/supplies")).GetProperty(sort).GetArrayLength());
    }

    [Fact]
    public async Task Put_of_what_is_on_hand_leaves_that_out_and_says_so()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();

        JsonElement saved = await client.TakenAsync(HttpMethod.Put, "/api/supplies/boards/hb3", Board.Replace("\"units\"", "\"onHand\": 3, \"value\": 0, \"units\"", StringComparison.Ordinal));

        Assert.False(saved.TryGetProperty("onHand", out _));
        Assert.Contains("onHand", Assert.Single(saved.GetProperty("warnings").EnumerateArray()).GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Delete_takes_a_good_away()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        await client.TakenAsync(HttpMethod.Put, "/api/supplies/boards/hb3", Board);

        using HttpResponseMessage stale = await client.SendJsonAsync(HttpMethod.Delete, "/api/supplies/boards/hb3", null, "\"9\"");
        using HttpResponseMessage deleted = await client.SendJsonAsync(HttpMethod.Delete, "/api/supplies/boards/hb3", null);
        using HttpResponseMessage twice = await client.SendJsonAsync(HttpMethod.Delete, "/api/supplies/boards/hb3", null);
        using HttpResponseMessage sort = await client.SendJsonAsync(HttpMethod.Get, "/api/supplies/nails", null);

        await stale.ReadProblemAsync(412, "/problems/version-changed");
        Assert.Equal(HttpStatusCode.NoContent, deleted.StatusCode);
        await twice.ReadProblemAsync(404, "/problems/no-such-supply");
        await sort.ReadProblemAsync(404, "/problems/no-such-supply");
    }

    [Fact]
    public async Task Order_without_boards_takes_the_saved_ones_and_the_saved_settings()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        using HttpResponseMessage before = await client.SendJsonAsync(HttpMethod.Post, "/api/plans", $$"""{ "panels": [ {{Line}} ] }""");
        await client.TakenAsync(HttpMethod.Put, "/api/supplies/boards/hb3", Board);
        await client.TakenAsync(HttpMethod.Put, "/api/settings", """{ "units": "inch", "currency": "EUR", "saw": { "kerf": "3/32" } }""");

        JsonElement plan = await client.TakenAsync(HttpMethod.Post, "/api/plans", $$"""{ "panels": [ {{Line}} ] }""");
        JsonElement own = await client.TakenAsync(HttpMethod.Post, "/api/plans", $$"""{ "panels": [ {{Line}} ], "saw": { "kerf": "1/8" } }""");

        await before.ReadProblemAsync(400, "/problems/invalid-request");
        Assert.Equal("hb3", plan.GetProperty("sheets")[0].GetProperty("board").GetString());
        Assert.Equal(0.09375m, plan.GetProperty("sheets")[0].GetProperty("kerf").GetDecimal());
        Assert.Equal(0.125m, own.GetProperty("sheets")[0].GetProperty("kerf").GetDecimal());
        Assert.Equal(6.10m, plan.GetProperty("cost").GetProperty("cash").GetDecimal());
        Assert.DoesNotContain(plan.GetProperty("warnings").EnumerateArray(), warning => warning.GetProperty("id").GetString() == "units-assumed");
    }

    [Fact]
    public async Task Order_in_other_units_and_currency_converts_measures_but_never_money()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        await client.TakenAsync(HttpMethod.Put, "/api/supplies/boards/hb3", Board);
        await client.TakenAsync(HttpMethod.Put, "/api/supplies/adhesives/glue", """{ "units": "inch", "currency": "EUR", "coverage": { "area": 80, "volume": 0.4 }, "containers": [ { "volume": 8, "price": 7.90 } ] }""");
        await client.TakenAsync(HttpMethod.Put, "/api/supplies/cloths/lin", """{ "units": "millimetre", "currency": "EUR", "width": 1500, "sale": { "by": "length", "step": 100, "price": 3.00 } }""");
        const string metric = """{ "units": "millimetre", "currency": "EUR", "panels": [ { "width": 203.2, "height": 254, "quantity": 10, "surface": "cloth" } ] }""";

        JsonElement plan = await client.TakenAsync(HttpMethod.Post, "/api/plans", metric);
        using HttpResponseMessage dollars = await client.SendJsonAsync(HttpMethod.Post, "/api/plans", metric.Replace("EUR", "USD", StringComparison.Ordinal));

        Assert.Equal(609.6m, plan.GetProperty("sheets")[0].GetProperty("width").GetDecimal());
        Assert.Equal(4 * 29.5735295625m, plan.GetProperty("liquids")[0].GetProperty("needed").GetDecimal(), 3);
        Assert.Equal(236.588m, plan.GetProperty("liquids")[0].GetProperty("bought")[0].GetProperty("volume").GetDecimal(), 3);
        JsonElement problem = await dollars.ReadProblemAsync(400, "/problems/invalid-request");
        Assert.Contains("EUR", problem.GetProperty("errors").GetProperty("boards")[0].GetString(), StringComparison.Ordinal);
    }

    // Cloth and glue at prices in another currency: panels of bare board want neither.
    [Fact]
    public async Task Order_that_needs_no_cloth_does_not_mind_what_currency_the_saved_cloth_is_in()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        await client.TakenAsync(HttpMethod.Put, "/api/supplies/cloths/lin", """{ "units": "inch", "currency": "EUR", "width": 60, "sale": { "by": "length", "step": 36, "price": 31.00 } }""");
        const string order = """
            { "units": "inch", "currency": "USD", "panels": [ { "width": 8, "height": 10, "quantity": 2, "surface": "bare" } ],
              "boards": [ { "id": "hb3", "thickness": "1/8", "width": 24, "height": 48, "price": 6.10 } ] }
            """;

        JsonElement plan = await client.TakenAsync(HttpMethod.Post, "/api/plans", order);
        using HttpResponseMessage clothed = await client.SendJsonAsync(HttpMethod.Post, "/api/plans", order.Replace("bare", "cloth", StringComparison.Ordinal));

        Assert.Equal(6.10m, plan.GetProperty("cost").GetProperty("cash").GetDecimal());
        JsonElement problem = await clothed.ReadProblemAsync(400, "/problems/invalid-request");
        Assert.Equal("cloths", Assert.Single(problem.GetProperty("errors").EnumerateObject()).Name);
    }

    [Fact]
    public async Task Settings_are_versioned_and_forgotten()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        const string settings = """{ "units": "millimetre", "currency": "EUR", "bench": { "pressHours": 24 } }""";

        JsonElement none = await client.GetJsonAsync("/api/settings");
        await client.TakenAsync(HttpMethod.Put, "/api/settings", settings);
        using HttpResponseMessage bare = await client.SendJsonAsync(HttpMethod.Put, "/api/settings", settings);
        using HttpResponseMessage faulty = await client.SendJsonAsync(HttpMethod.Put, "/api/settings", """{ "saw": { "kerf": -1 } }""", "\"1\"");
        using HttpResponseMessage right = await client.SendJsonAsync(HttpMethod.Put, "/api/settings", settings, "\"1\"");
        JsonElement saved = await client.GetJsonAsync("/api/settings");
        using HttpResponseMessage deleted = await client.SendJsonAsync(HttpMethod.Delete, "/api/settings", null);

        Assert.Empty(none.EnumerateObject());
        await bare.ReadProblemAsync(428, "/problems/version-needed");
        await faulty.ReadProblemAsync(400, "/problems/invalid-request");
        Assert.Equal(HttpStatusCode.OK, right.StatusCode);
        Assert.Equal(24, saved.GetProperty("bench").GetProperty("pressHours").GetInt32());
        Assert.Equal(HttpStatusCode.NoContent, deleted.StatusCode);
        Assert.Empty((await client.GetJsonAsync("/api/settings")).EnumerateObject());
    }
}

/// <summary>On SQLite.</summary>
public sealed class SqliteSupplyTests() : SupplyTests(new SqliteDatabase());

/// <summary>On PostgreSQL.</summary>
[Trait(PostgresDatabase.Trait, PostgresDatabase.Name)]
public sealed class PostgresSupplyTests() : SupplyTests(new PostgresDatabase());
