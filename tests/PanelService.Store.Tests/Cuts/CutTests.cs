using System.Text.Json;
using PanelService.Store.Tests.Hosts;

namespace PanelService.Store.Tests.Cuts;

/// <summary>Plans that are carried out: booked as a whole or not at all, with the true result, and taken back as a whole.</summary>
public abstract class CutTests(IDatabase database)
{
    // A sheet bought, one on hand, linen by the yard, glue of which some is there.
    private const string Order =
        """
        { "title": "Study week", "units": "inch", "currency": "EUR",
          "panels": [ { "mark": "A", "width": 8, "height": 10, "quantity": 12, "surface": "cloth" } ],
          "boards": [ { "id": "hb3", "kind": "hardboard", "thickness": "1/8", "width": 24, "height": 48, "price": 6.10, "onHand": 1, "value": 2.00 } ],
          "cloths": [ { "id": "lin", "width": 62, "selvedge": "1/2", "sale": { "by": "length", "step": 36, "price": 31.00 } } ],
          "adhesives": [ { "id": "glue", "coverage": { "area": 80, "volume": 0.4 }, "containers": [ { "volume": 8, "price": 8.00 } ], "onHand": 3.0, "value": 3.00 } ] }
        """;

    [Fact]
    public async Task Cut_books_what_was_declared_used_left_over_and_finished()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string address = await client.PlanAsync(Order);
        JsonElement plan = await client.GetJsonAsync(address);

        JsonElement cut = await client.TakenAsync(HttpMethod.Post, $"{address}/cut");

        JsonElement[] stock = [.. (await client.GetJsonAsync("/api/stock")).GetProperty("stock").EnumerateArray()];
        decimal keptArea = plan.GetProperty("sheets").EnumerateArray().Sum(sheet => sheet.GetProperty("copies").GetInt32()
            * sheet.GetProperty("offcuts").EnumerateArray().Where(IsKept).Sum(Area));
        Assert.Equal(keptArea, stock.Where(IsSort("offcut")).Sum(item => Area(item) * item.GetProperty("count").GetInt32()));
        Assert.All(stock.Where(IsSort("offcut")), item => Assert.Equal(0, item.GetProperty("edgeTrim").GetInt32()));
        Assert.DoesNotContain(stock, item => item.GetProperty("sort").GetString() == "board");
        JsonElement panels = Assert.Single(stock, item => IsSort("panel")(item));
        Assert.Equal(12, panels.GetProperty("count").GetInt32());
        Assert.Equal("A", panels.GetProperty("mark").GetString());

        // 12 panels at 0.4 fl oz: 3.0 from hand, 1.8 of a bottle of 8 at 8.00.
        JsonElement glue = Assert.Single(stock, item => IsSort("adhesive")(item));
        Assert.Equal(6.2m, glue.GetProperty("volume").GetDecimal());
        Assert.Equal(6.20m, glue.GetProperty("value").GetDecimal());
        Assert.Equal(cut.GetProperty("movements").GetArrayLength(), (await client.GetJsonAsync("/api/stock/movements")).GetProperty("movements").GetArrayLength());
        Assert.Equal(["declared", "used"], [.. cut.GetProperty("movements").EnumerateArray().Take(2).Select(movement => movement.GetProperty("reason").GetString()!)]);
        Assert.True((await client.GetJsonAsync("/api/plans")).GetProperty("plans")[0].GetProperty("isCut").GetBoolean());
    }

    // The fence cannot trim the ends of a sheet of 96 in: the leftover is cut off at the supplier's and comes home with them on.
    [Fact]
    public async Task Offcut_with_a_factory_edge_enters_the_stock_with_what_is_still_to_be_trimmed()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string address = await client.PlanAsync(
            """
            { "title": "Long sheets", "units": "inch", "currency": "EUR",
              "panels": [ { "mark": "A", "width": 8, "height": 10, "quantity": 4 } ],
              "boards": [ { "id": "hb3", "thickness": "1/8", "width": 24, "height": 96, "price": 12.20, "edgeTrim": "1/4" } ],
              "saw": { "fenceReach": 30 } }
            """);
        JsonElement sheet = Assert.Single((await client.GetJsonAsync(address)).GetProperty("sheets").EnumerateArray());
        JsonElement kept = Assert.Single(sheet.GetProperty("offcuts").EnumerateArray(), offcut => IsKept(offcut) && offcut.GetProperty("width").GetDecimal() == 24);

        await client.TakenAsync(HttpMethod.Post, $"{address}/cut");

        JsonElement heap = Assert.Single(
            (await client.GetJsonAsync("/api/stock")).GetProperty("stock").EnumerateArray(),
            item => IsSort("offcut")(item) && Area(item) == Area(kept));
        Assert.Equal(0.25m, heap.GetProperty("edgeTrim").GetDecimal());
    }

    [Theory]
    [InlineData("""{ "tax": { "percent": 20 }, """, "")]
    [InlineData("{", """, "priceFrom": [ { "count": 2, "price": 4.00 } ]""")]
    public async Task Kept_offcuts_carry_their_share_of_what_was_paid(string head, string offer)
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string address = await client.PlanAsync(
            head + """
            "title": "Paid", "units": "inch", "currency": "EUR",
              "panels": [ { "mark": "A", "width": 12, "height": 20, "quantity": 5, "thickness": "1/8" } ],
              "boards": [ { "id": "hb3", "thickness": "1/8", "width": 24, "height": 48, "price": 6.10
            """ + offer + " } ] }");
        decimal rack = (await client.GetJsonAsync(address)).GetProperty("cost").GetProperty("backOnRack").GetDecimal();

        await client.TakenAsync(HttpMethod.Post, $"{address}/cut");

        JsonElement[] kept = [.. (await client.GetJsonAsync("/api/stock")).GetProperty("stock").EnumerateArray().Where(item => IsSort("offcut")(item))];
        Assert.NotEmpty(kept);
        Assert.InRange(kept.Sum(item => item.GetProperty("value").GetDecimal() * item.GetProperty("count").GetInt32()), rack - 0.02m, rack + 0.02m);
    }

    // Twenty strips at a cent cost less than the few that are cut: the others go on the rack as they were bought.
    [Fact]
    public async Task Strips_bought_beyond_what_is_cut_enter_the_stock_whole()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string address = await client.PlanAsync(
            """
            { "title": "Braced", "units": "inch", "currency": "EUR",
              "panels": [ { "mark": "A", "width": 16, "height": 20, "quantity": 2, "cradle": true } ],
              "boards": [ { "id": "hb5", "thickness": "3/16", "width": 24, "height": 48, "price": 8.10 } ],
              "strips": [ { "id": "pine", "length": 96, "price": 4.20, "priceFrom": [ { "count": 20, "price": 0.01 } ] } ] }
            """);
        JsonElement surplus = Assert.Single((await client.GetJsonAsync(address)).GetProperty("surplus").EnumerateArray());

        await client.TakenAsync(HttpMethod.Post, $"{address}/cut");

        JsonElement[] strips = [.. (await client.GetJsonAsync("/api/stock")).GetProperty("stock").EnumerateArray().Where(item => IsSort("strip")(item))];
        JsonElement whole = Assert.Single(strips, strip => strip.GetProperty("length").GetDecimal() == 96);
        Assert.Equal(("strip", surplus.GetProperty("quantity").GetInt32()), (surplus.GetProperty("saleUnit").GetString(), whole.GetProperty("count").GetInt32()));
        Assert.Equal(0.01m, whole.GetProperty("value").GetDecimal());
    }

    [Fact]
    public async Task Cut_twice_is_refused_and_a_cut_plan_is_not_deleted()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string address = await client.PlanAsync(Order);
        using HttpResponseMessage early = await client.SendJsonAsync(HttpMethod.Get, $"{address}/cut", null);
        await client.TakenAsync(HttpMethod.Post, $"{address}/cut");

        using HttpResponseMessage twice = await client.SendJsonAsync(HttpMethod.Post, $"{address}/cut", "{}");
        using HttpResponseMessage deleted = await client.SendJsonAsync(HttpMethod.Delete, address, null);
        using HttpResponseMessage unknown = await client.SendJsonAsync(HttpMethod.Post, "/api/plans/nothing/cut", null);

        await early.ReadProblemAsync(409, "/problems/not-cut");
        await twice.ReadProblemAsync(409, "/problems/already-cut");
        await deleted.ReadProblemAsync(409, "/problems/plan-is-cut");
        await unknown.ReadProblemAsync(404, "/problems/no-such-plan");
        Assert.Equal(JsonValueKind.Object, (await client.GetJsonAsync($"{address}/cut")).ValueKind);
    }

    [Fact]
    public async Task Two_cuts_of_one_offcut_at_once_one_wins_and_the_other_says_what_is_missing()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        await client.TakenAsync(HttpMethod.Post, "/api/stock", """{ "sort": "offcut", "thickness": "1/8", "width": 20, "height": 24, "units": "inch", "currency": "EUR" }""");
        const string order = """{ "units": "inch", "currency": "EUR", "panels": [ { "width": 8, "height": 10, "quantity": 4 } ] }""";
        string[] plans = [await client.PlanAsync(order), await client.PlanAsync(order)];

        HttpResponseMessage[] answers = await Task.WhenAll(plans.Select(address => client.SendJsonAsync(HttpMethod.Post, $"{address}/cut", null)));

        Assert.Single(answers, answer => answer.StatusCode == HttpStatusCode.OK);
        JsonElement problem = await Assert.Single(answers, answer => answer.StatusCode != HttpStatusCode.OK).ReadProblemAsync(409, "/problems/goods-gone");
        Assert.Equal("B1", problem.GetProperty("missing")[0].GetProperty("id").GetString());
        Assert.Equal(1, problem.GetProperty("missing")[0].GetProperty("needed").GetInt32());
        Assert.Equal(0, problem.GetProperty("missing")[0].GetProperty("there").GetInt32());
        JsonElement[] stock = [.. (await client.GetJsonAsync("/api/stock")).GetProperty("stock").EnumerateArray()];
        Assert.Equal(4, Assert.Single(stock, item => IsSort("panel")(item)).GetProperty("count").GetInt32());
    }

    [Fact]
    public async Task Cut_from_a_piece_that_measures_otherwise_since_is_refused()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        await client.TakenAsync(HttpMethod.Post, "/api/stock", """{ "sort": "offcut", "thickness": "1/8", "width": 20, "height": 24, "units": "inch", "currency": "EUR" }""");
        string address = await client.PlanAsync("""{ "units": "inch", "currency": "EUR", "panels": [ { "width": 8, "height": 10, "quantity": 4 } ] }""");
        await client.TakenAsync(HttpMethod.Patch, "/api/stock/B1", """{ "height": 12 }""");

        using HttpResponseMessage refused = await client.SendJsonAsync(HttpMethod.Post, $"{address}/cut", null);

        JsonElement problem = await refused.ReadProblemAsync(409, "/problems/goods-gone");
        Assert.Contains("measure", problem.GetProperty("missing")[0].GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cut_with_spoiled_panels_books_the_true_result_and_offers_an_order_for_the_rest()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string address = await client.PlanAsync(Order.Replace("\"quantity\": 12", "\"quantity\": 10, \"spares\": 2", StringComparison.Ordinal));

        JsonElement cut = await client.TakenAsync(HttpMethod.Post, $"{address}/cut", """{ "spoiled": [ { "mark": "A", "count": 3 } ] }""");

        JsonElement panels = Assert.Single(cut.GetProperty("entered").EnumerateArray(), item => IsSort("panel")(item));
        Assert.Equal(9, panels.GetProperty("count").GetInt32());
        JsonElement replacements = cut.GetProperty("replacements");
        Assert.Equal(1, replacements.GetProperty("panels")[0].GetProperty("quantity").GetInt32());
        string again = await client.PlanAsync(replacements.GetRawText());
        JsonElement plan = await client.GetJsonAsync(again);
        Assert.StartsWith("B", plan.GetProperty("fromStock")[0].GetProperty("id").GetString(), StringComparison.Ordinal);
        await client.TakenAsync(HttpMethod.Post, $"{again}/cut");
    }

    // Linen by the yard leaves remnants. Of 3.0 fl oz of glue on hand and a bottle of 8 twelve panels take 4.8, two more take 0.8.
    [Fact]
    public async Task An_order_for_the_spoiled_ones_takes_the_remnants_and_the_liquids_that_are_left()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string address = await client.PlanAsync(Order.Replace("\"surface\": \"cloth\"", "\"surface\": \"cloth\", \"adhesive\": \"glue\"", StringComparison.Ordinal));
        JsonElement cut = await client.TakenAsync(HttpMethod.Post, $"{address}/cut", """{ "spoiled": [ { "mark": "A", "count": 2 } ] }""");
        string[] remnants = [.. cut.GetProperty("entered").EnumerateArray().Where(item => IsSort("remnant")(item)).Select(item => item.GetProperty("id").GetString()!)];

        string again = await client.PlanAsync(cut.GetProperty("replacements").GetRawText());

        JsonElement plan = await client.GetJsonAsync(again);
        Assert.Equal(0, plan.GetProperty("cost").GetProperty("cash").GetDecimal());
        Assert.All(plan.GetProperty("cloth").EnumerateArray(), cloth => Assert.Contains(cloth.GetProperty("remnant").GetString(), remnants));
        Assert.Equal(0.8m, Assert.Single(plan.GetProperty("liquids").EnumerateArray()).GetProperty("fromHand").GetDecimal());
        string[] taken = [.. plan.GetProperty("fromStock").EnumerateArray().Select(one => one.GetProperty("id").GetString()![..1]).Order()];
        Assert.Equal(["B", "C", "L"], taken);

        // From those heaps it is booked, none of them a second time.
        JsonElement second = await client.TakenAsync(HttpMethod.Post, $"{again}/cut");
        Assert.DoesNotContain(second.GetProperty("movements").EnumerateArray(), movement => movement.GetProperty("reason").GetString() == "declared");
        JsonElement glue = Assert.Single((await client.GetJsonAsync("/api/stock")).GetProperty("stock").EnumerateArray(), item => IsSort("adhesive")(item));
        Assert.Equal(5.4m, glue.GetProperty("volume").GetDecimal());
    }

    // Two bottles begun, of which neither is enough: they are poured together, and what is missing is bought of the same.
    [Fact]
    public async Task An_order_for_the_spoiled_ones_pours_what_is_left_together()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        const string little = """
            { "units": "inch", "currency": "EUR",
              "panels": [ { "mark": "A", "width": 8, "height": 10, "quantity": 12, "surface": "primed" } ],
              "boards": [ { "id": "hb3", "kind": "hardboard", "thickness": "1/8", "width": 24, "height": 48, "price": 6.10 } ],
              "primers": [ { "id": "ground", "coverage": { "area": 80, "volume": 0.4 }, "containers": [ { "volume": 5, "price": 5.00 } ] } ] }
            """;
        foreach (int _ in Enumerable.Range(0, 2))
        {
            await client.TakenAsync(HttpMethod.Post, $"{await client.PlanAsync(little)}/cut");
        }

        string third = await client.PlanAsync(little);
        JsonElement cut = await client.TakenAsync(HttpMethod.Post, $"{third}/cut", """{ "spoiled": [ { "mark": "A", "count": 1 } ] }""");

        // 12 panels take 4.8 of 5, so that each batch leaves 0.2: three make the 0.6 of which one panel takes 0.4.
        string again = await client.PlanAsync(cut.GetProperty("replacements").GetRawText());
        JsonElement plan = await client.GetJsonAsync(again);
        Assert.Equal(0.4m, Assert.Single(plan.GetProperty("liquids").EnumerateArray()).GetProperty("fromHand").GetDecimal());
        await client.TakenAsync(HttpMethod.Post, $"{again}/cut");
        JsonElement ground = Assert.Single((await client.GetJsonAsync("/api/stock")).GetProperty("stock").EnumerateArray(), item => IsSort("primer")(item));
        Assert.Equal(0.2m, ground.GetProperty("volume").GetDecimal());
    }

    [Fact]
    public async Task Cut_with_a_spoiled_sheet_books_neither_its_panels_nor_its_offcuts_and_offers_an_order_for_them()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string address = await client.PlanAsync(Order);
        JsonElement[] sheets = [.. (await client.GetJsonAsync(address)).GetProperty("sheets").EnumerateArray()];
        JsonElement spoiled = sheets.MaxBy(sheet => sheet.GetProperty("offcuts").EnumerateArray().Where(IsKept).Sum(Area));
        int lost = spoiled.GetProperty("pieces").GetArrayLength();
        string body = $$"""{ "spoiledSheets": [ { "sheet": {{spoiled.GetProperty("number").GetInt32()}}, "count": 1 } ] }""";

        JsonElement cut = await client.TakenAsync(HttpMethod.Post, $"{address}/cut", body);

        JsonElement[] entered = [.. cut.GetProperty("entered").EnumerateArray()];
        Assert.Equal(12 - lost, Assert.Single(entered, item => IsSort("panel")(item)).GetProperty("count").GetInt32());
        decimal kept = sheets.Sum(sheet => sheet.GetProperty("copies").GetInt32() * sheet.GetProperty("offcuts").EnumerateArray().Where(IsKept).Sum(Area));
        decimal gone = spoiled.GetProperty("offcuts").EnumerateArray().Where(IsKept).Sum(Area);
        Assert.True(gone > 0, "The sheet has no offcut to lose.");
        Assert.Equal(kept - gone, entered.Where(IsSort("offcut")).Sum(item => Area(item) * item.GetProperty("count").GetInt32()));
        JsonElement told = Assert.Single(cut.GetProperty("spoiled").EnumerateArray());
        Assert.Equal(("A", lost, spoiled.GetProperty("number").GetInt32()), (told.GetProperty("mark").GetString(), told.GetProperty("count").GetInt32(), told.GetProperty("sheet").GetInt32()));
        Assert.Equal(lost, cut.GetProperty("replacements").GetProperty("panels")[0].GetProperty("quantity").GetInt32());
        Assert.Equal(cut.GetProperty("spoiled").GetRawText(), (await client.GetJsonAsync($"{address}/cut")).GetProperty("spoiled").GetRawText());
    }

    [Fact]
    public async Task Cut_with_enough_spares_left_needs_no_replacements()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string address = await client.PlanAsync(Order.Replace("\"quantity\": 12", "\"quantity\": 10, \"spares\": 2", StringComparison.Ordinal));

        JsonElement cut = await client.TakenAsync(HttpMethod.Post, $"{address}/cut", """{ "spoiled": [ { "mark": "A", "count": 2 } ] }""");

        Assert.False(cut.TryGetProperty("replacements", out _));
    }

    [Theory]
    [InlineData("""{ "spoiled": [ { "mark": "Z", "count": 1 } ] }""", "spoiled[0].mark")]
    [InlineData("""{ "spoiled": [ { "mark": "A", "count": 13 } ] }""", "spoiled[0].count")]
    [InlineData("""{ "spoiled": [ { "mark": "A", "count": 12 }, { "mark": "A", "count": 1 } ] }""", "spoiled[1].count")]
    [InlineData("""{ "spoiled": [ { "mark": "A" } ] }""", "spoiled[0].count")]
    [InlineData("""{ "spoilt": [] }""", "spoilt")]
    [InlineData("""{ "spoiledSheets": [ { "sheet": 99, "count": 1 } ] }""", "spoiledSheets[0].sheet")]
    [InlineData("""{ "spoiledSheets": [ { "sheet": 1, "count": 1 }, { "sheet": 1, "count": 5 } ] }""", "spoiledSheets[1].count")]
    [InlineData("""{ "spoiledSheets": [ { "sheet": 1 } ] }""", "spoiledSheets[0].count")]
    [InlineData("""{ "spoiledSheets": [ { "sheet": 1, "count": 1 } ], "spoiled": [ { "mark": "A", "count": 12 } ] }""", "spoiled[0].count")]
    public async Task Cut_with_a_faulty_result_books_nothing(string body, string field)
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string address = await client.PlanAsync(Order);

        using HttpResponseMessage response = await client.SendJsonAsync(HttpMethod.Post, $"{address}/cut", body);

        JsonElement problem = await response.ReadProblemAsync(400, "/problems/invalid-request");
        Assert.True(problem.GetProperty("errors").TryGetProperty(field, out _), problem.ToString());
        Assert.Equal(0, (await client.GetJsonAsync("/api/stock/movements")).GetProperty("movements").GetArrayLength());
    }

    [Fact]
    public async Task Undo_takes_a_whole_cut_back_and_the_plan_can_be_cut_again()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string address = await client.PlanAsync(Order);
        await client.TakenAsync(HttpMethod.Post, $"{address}/cut");

        await client.TakenAsync(HttpMethod.Post, $"{address}/cut/undo");
        using HttpResponseMessage twice = await client.SendJsonAsync(HttpMethod.Post, $"{address}/cut/undo", null);
        JsonElement empty = await client.GetJsonAsync("/api/stock");
        await client.TakenAsync(HttpMethod.Post, $"{address}/cut");

        await twice.ReadProblemAsync(409, "/problems/not-cut");
        Assert.Equal(0, empty.GetProperty("stock").GetArrayLength());
        JsonElement panels = Assert.Single((await client.GetJsonAsync("/api/stock")).GetProperty("stock").EnumerateArray(), item => IsSort("panel")(item));
        Assert.Equal("P2", panels.GetProperty("id").GetString());
    }

    // A sheet taken back by itself stays out of it; taken back and given again it belongs to the cut as before.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public async Task Undo_of_a_cut_gives_back_what_stands_of_it_however_often_a_movement_was_taken_back(int times)
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        await client.TakenAsync(HttpMethod.Post, "/api/stock", """{ "sort": "board", "thickness": "1/8", "width": 24, "height": 48, "count": 2, "units": "inch", "currency": "EUR" }""");
        string address = await client.PlanAsync("""{ "units": "inch", "currency": "EUR", "panels": [ { "width": 8, "height": 10, "quantity": 10 } ] }""");
        JsonElement cut = await client.TakenAsync(HttpMethod.Post, $"{address}/cut");
        int movement = cut.GetProperty("movements").EnumerateArray().First(one => one.GetProperty("reason").GetString() == "used").GetProperty("id").GetInt32();
        for (int time = 0; time < times; time++)
        {
            JsonElement undone = await client.TakenAsync(HttpMethod.Post, $"/api/stock/movements/{movement}/undo");
            movement = undone.GetProperty("movements")[0].GetProperty("id").GetInt32();
        }

        await client.TakenAsync(HttpMethod.Post, $"{address}/cut/undo");

        JsonElement left = Assert.Single((await client.GetJsonAsync("/api/stock")).GetProperty("stock").EnumerateArray());
        Assert.Equal(2, left.GetProperty("count").GetInt32());
    }

    [Fact]
    public async Task Whoever_saw_a_heap_before_a_cut_took_of_it_must_look_again()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        await client.TakenAsync(HttpMethod.Post, "/api/stock", """{ "sort": "board", "thickness": "1/8", "width": 24, "height": 48, "count": 5, "units": "inch", "currency": "EUR" }""");
        string address = await client.PlanAsync("""{ "units": "inch", "currency": "EUR", "panels": [ { "width": 8, "height": 10, "quantity": 10 } ] }""");
        await client.TakenAsync(HttpMethod.Post, $"{address}/cut");

        using HttpResponseMessage stale = await client.SendJsonAsync(HttpMethod.Patch, "/api/stock/B1", """{ "count": 6 }""", "\"1\"");

        await stale.ReadProblemAsync(412, "/problems/version-changed");
        Assert.Equal(4, (await client.GetJsonAsync("/api/stock/B1")).GetProperty("count").GetInt32());
    }

    [Fact]
    public async Task Undo_of_a_cut_whose_panels_are_gone_is_refused_whole()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string address = await client.PlanAsync(Order);
        await client.TakenAsync(HttpMethod.Post, $"{address}/cut");
        await client.TakenAsync(HttpMethod.Patch, "/api/stock/P1", """{ "count": 11 }""");
        int before = (await client.GetJsonAsync("/api/stock/movements")).GetProperty("movements").GetArrayLength();

        using HttpResponseMessage refused = await client.SendJsonAsync(HttpMethod.Post, $"{address}/cut/undo", null);

        JsonElement problem = await refused.ReadProblemAsync(409, "/problems/goods-gone");
        Assert.Equal("P1", problem.GetProperty("missing")[0].GetProperty("id").GetString());
        Assert.Equal(before, (await client.GetJsonAsync("/api/stock/movements")).GetProperty("movements").GetArrayLength());
    }

    private static Func<JsonElement, bool> IsSort(string sort) => item => item.GetProperty("sort").GetString() == sort;

    private static bool IsKept(JsonElement offcut) => offcut.GetProperty("kept").GetBoolean();

    private static decimal Area(JsonElement item) => item.GetProperty("width").GetDecimal() * item.GetProperty("height").GetDecimal();
}

/// <summary>On SQLite.</summary>
public sealed class SqliteCutTests() : CutTests(new SqliteDatabase());

/// <summary>On PostgreSQL.</summary>
[Trait(PostgresDatabase.Trait, PostgresDatabase.Name)]
public sealed class PostgresCutTests() : CutTests(new PostgresDatabase());
