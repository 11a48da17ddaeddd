using System.Text.Json;
using PanelService.Store.Tests.Hosts;

namespace PanelService.Store.Tests.Stock;

/// <summary>What is in the studio: pencil ids, corrections, the ledger and its undoing, and orders that use it.</summary>
public abstract class StockTests(IDatabase database)
{
    private const string Offcut = """{ "sort": "offcut", "kind": "hardboard", "thickness": "1/8", "width": 20, "height": 24, "value": 1.50, "units": "inch", "currency": "EUR" }""";
    private const string Glue = """{ "sort": "adhesive", "volume": 3.0, "value": 2.00, "coverage": { "area": 80, "volume": 0.4 }, "units": "inch", "currency": "EUR" }""";
    private const string Remnant = """{ "sort": "remnant", "kind": "linen", "width": 60, "length": 40, "units": "inch", "currency": "EUR" }""";

    [Fact]
    public async Task Post_gives_each_sort_its_letter_and_never_a_number_twice()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();

        string[] ids =
        [
            await AddAsync(client, Offcut), await AddAsync(client, Offcut), await AddAsync(client, Remnant), await AddAsync(client, Glue),
            await AddAsync(client, """{ "sort": "panel", "width": 8, "height": 10, "count": 3 }"""),
        ];
        await client.TakenAsync(HttpMethod.Patch, "/api/stock/B2", """{ "count": 0 }""");

        Assert.Equal(["B1", "B2", "C1", "L1", "P1"], ids);
        Assert.Equal("B3", await AddAsync(client, Offcut));
        JsonElement stock = await client.GetJsonAsync("/api/stock");
        Assert.Equal(["B1", "B3", "C1", "L1", "P1"], stock.GetProperty("stock").EnumerateArray().Select(item => item.GetProperty("id").GetString()));
        Assert.Equal(6, (await client.GetJsonAsync("/api/stock?empty=true")).GetProperty("stock").GetArrayLength());
        Assert.Equal(0, (await client.GetJsonAsync("/api/stock/B1")).GetProperty("edgeTrim").GetInt32());
        Assert.Equal(3.0m, (await client.GetJsonAsync("/api/stock/L1")).GetProperty("volume").GetDecimal());
    }

    [Theory]
    [InlineData("""{ }""", "sort")]
    [InlineData("""{ "sort": "offcut", "thickness": "1/8", "width": 5 }""", "height")]
    [InlineData("""{ "sort": "board", "supply": "none" }""", "supply")]
    [InlineData("""{ "sort": "remnant", "width": 5 }""", "length")]
    [InlineData("""{ "sort": "adhesive", "volume": 5 }""", "coverage")]
    [InlineData("""{ "sort": "adhesive", "count": 5, "coverage": { "area": 1, "volume": 1 } }""", "volume")]
    [InlineData("""{ "sort": "panel", "width": 5, "height": 5, "volume": 1 }""", "volume")]
    [InlineData("""{ "sort": "panel", "width": 5, "height": 5, "count": -1 }""", "count")]
    public async Task Post_with_faults_says_where_they_are_and_books_nothing(string body, string field)
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage response = await client.SendJsonAsync(HttpMethod.Post, "/api/stock", body);

        JsonElement problem = await response.ReadProblemAsync(400, "/problems/invalid-request");
        Assert.True(problem.GetProperty("errors").TryGetProperty(field, out _), problem.ToString());
        Assert.Equal(0, (await client.GetJsonAsync("/api/stock/movements")).GetProperty("movements").GetArrayLength());
    }

    [Fact]
    public async Task Patch_corrects_the_count_by_a_movement_and_heeds_the_version()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string id = await AddAsync(client, Offcut.Replace("\"sort\"", "\"count\": 4, \"sort\"", StringComparison.Ordinal));

        JsonElement corrected = await client.TakenAsync(HttpMethod.Patch, $"/api/stock/{id}", """{ "count": 3, "width": 19, "note": "one split" }""", "\"1\"");
        using HttpResponseMessage stale = await client.SendJsonAsync(HttpMethod.Patch, $"/api/stock/{id}", """{ "count": 9 }""", "\"1\"");
        using HttpResponseMessage unknown = await client.SendJsonAsync(HttpMethod.Patch, "/api/stock/B99", """{ "count": 9 }""");
        using HttpResponseMessage volume = await client.SendJsonAsync(HttpMethod.Patch, $"/api/stock/{id}", """{ "volume": 9 }""");

        Assert.Equal(3, corrected.GetProperty("count").GetInt32());
        Assert.Equal(19, corrected.GetProperty("width").GetInt32());
        Assert.Equal(2, corrected.GetProperty("version").GetInt32());
        await stale.ReadProblemAsync(412, "/problems/version-changed");
        await unknown.ReadProblemAsync(404, "/problems/no-such-stock");
        await volume.ReadProblemAsync(400, "/problems/invalid-request");
        JsonElement[] ledger = [.. (await client.GetJsonAsync("/api/stock/movements")).GetProperty("movements").EnumerateArray()];
        Assert.Equal([4, -1], ledger.Select(movement => movement.GetProperty("count").GetInt32()));
        Assert.Equal("one split", ledger[1].GetProperty("note").GetString());
    }

    [Fact]
    public async Task Undo_adds_the_opposite_once_and_gives_back_what_was_corrected()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string id = await AddAsync(client, Offcut);
        await client.TakenAsync(HttpMethod.Patch, $"/api/stock/{id}", """{ "count": 5, "width": 19 }""");

        JsonElement undone = await client.TakenAsync(HttpMethod.Post, "/api/stock/movements/2/undo");
        using HttpResponseMessage twice = await client.SendJsonAsync(HttpMethod.Post, "/api/stock/movements/2/undo", null);
        using HttpResponseMessage unknown = await client.SendJsonAsync(HttpMethod.Post, "/api/stock/movements/77/undo", null);
        using HttpResponseMessage word = await client.SendJsonAsync(HttpMethod.Post, "/api/stock/movements/last/undo", null);

        Assert.Equal(-4, undone.GetProperty("movements")[0].GetProperty("count").GetInt32());
        Assert.Equal(2, undone.GetProperty("movements")[0].GetProperty("undoOf").GetInt32());
        await twice.ReadProblemAsync(409, "/problems/already-undone");
        await unknown.ReadProblemAsync(404, "/problems/no-such-movement");
        await word.ReadProblemAsync(404, "/problems/no-such-movement");
        JsonElement item = await client.GetJsonAsync($"/api/stock/{id}");
        Assert.Equal(1, item.GetProperty("count").GetInt32());
        Assert.Equal(20, item.GetProperty("width").GetInt32());
    }

    [Fact]
    public async Task Undo_gives_the_value_back_too_and_undone_itself_gives_the_correction_again()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string id = await AddAsync(client, Offcut);
        await client.TakenAsync(HttpMethod.Patch, $"/api/stock/{id}", """{ "count": 5, "width": 19, "value": 3 }""");

        await client.TakenAsync(HttpMethod.Post, "/api/stock/movements/2/undo");
        JsonElement undone = await client.GetJsonAsync($"/api/stock/{id}");
        await client.TakenAsync(HttpMethod.Post, "/api/stock/movements/3/undo");
        JsonElement again = await client.GetJsonAsync($"/api/stock/{id}");

        Assert.Equal([1, 20, 1.50m], Is(undone));
        Assert.Equal([5, 19, 3m], Is(again));

        static decimal[] Is(JsonElement item) => [.. new[] { "count", "width", "value" }.Select(name => item.GetProperty(name).GetDecimal())];
    }

    [Fact]
    public async Task Undo_leaves_a_value_that_was_corrected_again_since()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string id = await AddAsync(client, Offcut);
        await client.TakenAsync(HttpMethod.Patch, $"/api/stock/{id}", """{ "width": 19, "value": 3 }""");
        await client.TakenAsync(HttpMethod.Patch, $"/api/stock/{id}", """{ "value": 4 }""");

        await client.TakenAsync(HttpMethod.Post, "/api/stock/movements/2/undo");

        JsonElement item = await client.GetJsonAsync($"/api/stock/{id}");
        Assert.Equal(20, item.GetProperty("width").GetInt32());
        Assert.Equal(4m, item.GetProperty("value").GetDecimal());
    }

    [Fact]
    public async Task Whoever_saw_a_heap_before_an_undo_changed_it_must_look_again()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string id = await AddAsync(client, Offcut);
        await client.TakenAsync(HttpMethod.Patch, $"/api/stock/{id}", """{ "count": 5 }""");
        await client.TakenAsync(HttpMethod.Post, "/api/stock/movements/2/undo");

        using HttpResponseMessage stale = await client.SendJsonAsync(HttpMethod.Patch, $"/api/stock/{id}", """{ "count": 4 }""", "\"2\"");

        await stale.ReadProblemAsync(412, "/problems/version-changed");
        Assert.Equal(1, (await client.GetJsonAsync($"/api/stock/{id}")).GetProperty("count").GetInt32());
    }

    [Fact]
    public async Task Undo_of_what_has_been_used_since_is_refused_and_says_what_is_missing()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string id = await AddAsync(client, Offcut);
        await client.TakenAsync(HttpMethod.Patch, $"/api/stock/{id}", """{ "count": 0 }""");

        using HttpResponseMessage refused = await client.SendJsonAsync(HttpMethod.Post, "/api/stock/movements/1/undo", null);

        JsonElement problem = await refused.ReadProblemAsync(409, "/problems/goods-gone");
        Assert.Equal(id, problem.GetProperty("missing")[0].GetProperty("id").GetString());
        Assert.Equal(2, (await client.GetJsonAsync("/api/stock/movements")).GetProperty("movements").GetArrayLength());
    }

    [Fact]
    public async Task Order_without_goods_is_cut_from_stock_and_plan_and_drawing_name_the_pieces()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string board = await AddAsync(client, Offcut);
        string cloth = await AddAsync(client, Remnant);
        string glue = await AddAsync(client, Glue);

        JsonElement plan = await client.TakenAsync(
            HttpMethod.Post, "/api/plans?drawings=inline", """{ "units": "inch", "currency": "EUR", "panels": [ { "width": 8, "height": 10, "quantity": 4, "surface": "cloth", "cloth": "linen", "board": "hardboard" } ] }""");

        Assert.Equal(board, plan.GetProperty("sheets")[0].GetProperty("board").GetString());
        Assert.Equal("onHand", plan.GetProperty("sheets")[0].GetProperty("source").GetString());
        Assert.Contains(board, plan.GetProperty("sheets")[0].GetProperty("svg").GetString(), StringComparison.Ordinal);
        Assert.Equal(cloth, plan.GetProperty("cloth")[0].GetProperty("remnant").GetString());
        Assert.Contains(cloth, plan.GetProperty("cloth")[0].GetProperty("svg").GetString(), StringComparison.Ordinal);
        Assert.Equal([board, cloth, glue], plan.GetProperty("fromStock").EnumerateArray().Select(one => one.GetProperty("id").GetString()));
        Assert.Equal(1.6m, plan.GetProperty("fromStock")[2].GetProperty("volume").GetDecimal());
        Assert.Equal(0m, plan.GetProperty("cost").GetProperty("cash").GetDecimal());
        Assert.Equal(1.50m + 1.07m, plan.GetProperty("cost").GetProperty("onHandUsed").GetDecimal());
    }

    internal static async Task<string> AddAsync(HttpClient client, string body) =>
        (await client.TakenAsync(HttpMethod.Post, "/api/stock", body)).GetProperty("id").GetString()!;
}

/// <summary>On SQLite.</summary>
public sealed class SqliteStockTests() : StockTests(new SqliteDatabase());

/// <summary>On PostgreSQL.</summary>
[Trait(PostgresDatabase.Trait, PostgresDatabase.Name)]
public sealed class PostgresStockTests() : StockTests(new PostgresDatabase());
