using System.Text.Json;
using PanelService.Api.Tests.Hosts;

namespace PanelService.Api.Tests.Orders;

/// <summary>Orders with faults: each is refused with 400, names its field, says what would be right, and is never planned.</summary>
public sealed class OrderFaultTests : IClassFixture<RefusingService>
{
    // Each line is right by itself.
    private const string Many = """{"width":8,"height":10,"quantity":100000,"spares":100000}""";

    private readonly RefusingService _service;

    public OrderFaultTests(RefusingService service)
    {
        ArgumentNullException.ThrowIfNull(service);
        _service = service;
    }

    [Theory]
    [InlineData("title", "17", "title", "Expected text")]
    [InlineData("title", "\"line\\nbreak\"", "title", "printable")]
    [InlineData("units", "\"inches\"", "units", "\"inch\"")]
    [InlineData("units", "1", "units", "\"inch\", \"centimetre\", \"millimetre\"")]
    [InlineData("currency", "\"EURO\"", "currency", "ISO 4217")]
    [InlineData("currency", "\"eur\"", "currency", "ISO 4217")]
    [InlineData("panels", null, "panels", "Required")]
    [InlineData("panels", "[]", "panels", "1 to 500 lines")]
    [InlineData("panels", "{}", "panels", "Expected an array")]
    [InlineData("panels", $"[{Many},{Many},{Many},{Many},{Many},{Many}]", "panels", "1200000 panels")]
    [InlineData("panels[1]", "7", "panels[1]", "Expected an object")]
    [InlineData("panels[1]", "null", "panels[1]", "Expected an object")]
    [InlineData("panels[1].width", null, "panels[1].width", "Required")]
    [InlineData("panels[1].width", "0", "panels[1].width", "from 1 mm to 100 m")]
    [InlineData("panels[1].width", "-3", "panels[1].width", "from 1 mm to 100 m")]
    [InlineData("panels[1].width", "0.00001", "panels[1].width", "from 1 mm to 100 m")]
    [InlineData("panels[1].width", "3938", "panels[1].width", "from 1 mm to 100 m")]
    [InlineData("panels[1].width", "1e30", "panels[1].width", "too large")]
    [InlineData("panels[1].width", "1e400", "panels[1].width", "too large")]
    [InlineData("panels[1].width", "true", "panels[1].width", "Expected a length")]
    [InlineData("panels[1].width", "\"16 furlongs\"", "panels[1].width", "\"furlongs\" is no unit")]
    [InlineData("panels[1].width", "\"NaN\"", "panels[1].width", "is no length")]
    [InlineData("panels[1].height", "\"3/0\"", "panels[1].height", "cannot be 0")]
    [InlineData("panels[1].height", "[10]", "panels[1].height", "Expected a length")]
    [InlineData("panels[1].quantity", null, "panels[1].quantity", "Required")]
    [InlineData("panels[1].quantity", "0", "panels[1].quantity", "1 to 100000")]
    [InlineData("panels[1].quantity", "100001", "panels[1].quantity", "1 to 100000")]
    [InlineData("panels[1].quantity", "2.5", "panels[1].quantity", "whole number")]
    [InlineData("panels[1].quantity", "\"3\"", "panels[1].quantity", "this is text")]
    [InlineData("panels[1].quantity", "99999999999", "panels[1].quantity", "whole number")]
    [InlineData("panels[1].spares", "-1", "panels[1].spares", "0 to 100000")]
    [InlineData("panels[1].surface", "\"oak\"", "panels[1].surface", "\"bare\", \"cloth\", \"primed\", \"loose\"")]
    [InlineData("panels[1].surface", "\"primd\"", "panels[1].surface", "Did you mean \"primed\"?")]
    [InlineData("panels[1].mayTurn", "\"yes\"", "panels[1].mayTurn", "true or false")]
    [InlineData("panels[1].mark", "\"A\"", "panels[1].mark", "already the mark at panels[0].mark")]
    [InlineData("panels[1].mark", "\"\"", "panels[1].mark", "1 to 16 characters")]
    [InlineData("panels[1].mark", "\"a mark that is too long\"", "panels[1].mark", "1 to 16 characters")]
    [InlineData("panels[1].thickness", "0", "panels[1].thickness", "above 0")]
    [InlineData("panels[1].mayBuy", "true", "panels[1].mayBuy", "shopPrice")]
    [InlineData("panels[1].mayBuy", "true", "panels[1].shopPrice", "Required where mayBuy")]
    [InlineData("panels[0].shopPrice", "7.405", "panels[0].shopPrice", "EUR has 2 decimal digits")]
    [InlineData("panels[0].shopPrice", "-1", "panels[0].shopPrice", "0 to 10000000")]
    [InlineData("panels[0].shopPrice", "10000000.01", "panels[0].shopPrice", "0 to 10000000")]
    [InlineData("panels[0].adhesive", "\"paste\"", "panels[0].adhesive", "no adhesive with the id \"paste\"")]
    [InlineData("panels[0].primer", "\"chalk\"", "panels[0].primer", "no primer with the id \"chalk\"")]
    [InlineData("panels[1].widht", "8", "panels[1].widht", "Did you mean \"width\"?")]
    [InlineData("pannels", "[]", "pannels", "Did you mean \"panels\"?")]
    [InlineData("boards[0].priceFrom", """[{"count":1,"price":5}]""", "boards[0].priceFrom[0].count", "from 2")]
    [InlineData("boards[0].priceFrom", """[{"count":10}]""", "boards[0].priceFrom[0].price", "Required")]
    [InlineData("boards[0].priceFrom", """[{"count":10,"price":6000}]""", "boards[0].priceFrom[0].price", "larger numbers cost less each")]
    [InlineData("boards[0].priceFrom", """[{"count":10,"price":0.9},{"count":10,"price":0.8}]""", "boards[0].priceFrom[1].count", "Must be more than 10")]
    [InlineData("boards[0].priceFrom", """[{"count":10,"price":0.9},{"count":20,"price":0.9}]""", "boards[0].priceFrom[1].price", "Must be less than 0.9")]
    [InlineData("cloths[0].sale.priceFrom", """[{"price":1}]""", "cloths[0].sale.priceFrom[0].count", "Required")]
    [InlineData("adhesives[0].containers[0].priceFrom", """[{"count":2,"price":-1}]""", "adhesives[0].containers[0].priceFrom[0].price", "0 to 10000000")]
    [InlineData("boards[0].shop", "\"yard\"", "boards[0].shop", "no shop with the id \"yard\"")]
    [InlineData("strips", """[{"id":"pine","length":"8 ft","price":4.20,"shop":"mill"}]""", "strips[0].shop", "no shop with the id \"mill\"")]
    [InlineData("strips", """[{"id":"pine","length":"8 ft","price":4.20,"priceFrom":[{"count":3,"price":4.50}]}]""", "strips[0].priceFrom[0].price", "Must be less than")]
    [InlineData("boards[0].elasticityAcross", "5", "boards[0].elasticityAcross", "10 to 500000")]
    [InlineData("boards[0].shear", "0", "boards[0].shear", "1 to 200000")]
    [InlineData("shops", "[{}]", "shops[0].id", "Required")]
    [InlineData("shops", """[{"id":"a"},{"id":"a"}]""", "shops[1].id", "already the id of a shop at shops[0].id")]
    [InlineData("shops", """[{"id":"a","charge":-1}]""", "shops[0].charge", "0 to 10000000")]
    [InlineData("shops", """[{"id":"a","freeFrom":0.001}]""", "shops[0].freeFrom", "EUR has 2 decimal digits")]
    [InlineData("budget", "-1", "budget", "0 to 10000000")]
    [InlineData("panels[0].worth", "1.001", "panels[0].worth", "EUR has 2 decimal digits")]
    [InlineData("tax", "{}", "tax.percent", "Required")]
    [InlineData("tax", """{"percent":101}""", "tax.percent", "from 0 to 100")]
    [InlineData("consumables", "[{}]", "consumables[0].per", "sawMetre")]
    [InlineData("consumables", "[{}]", "consumables[0].price", "Required")]
    [InlineData("consumables", "[{}]", "consumables[0].lasts", "Required")]
    [InlineData("consumables", """[{"per":"mile","price":1,"lasts":1}]""", "consumables[0].per", "\"sawMetre\", \"sawFoot\"")]
    [InlineData("consumables", """[{"per":"panel","price":1,"lasts":0}]""", "consumables[0].lasts", "from 0.01")]
    [InlineData("consumables", """[{"per":"panel","price":1.001,"lasts":1}]""", "consumables[0].price", "EUR has 2 decimal digits")]
    [InlineData("tools", "[{}]", "tools[0].price", "Required")]
    [InlineData("tools", "[{}]", "tools[0].spreadOver", "Required")]
    [InlineData("tools", """[{"price":-1,"spreadOver":0}]""", "tools[0].price", "0 to 10000000")]
    [InlineData("tools", """[{"price":-1,"spreadOver":0}]""", "tools[0].spreadOver", "1 to 1000000")]
    [InlineData("zebra", "1", "zebra", "Known here: title, units")]
    [InlineData("wishes[0].mark", "\"A\"", "wishes[0].mark", "already the mark at panels[0].mark")]
    [InlineData("wishes[0].width", null, "wishes[0].width", "Required")]
    [InlineData("wishes[0].atMost", null, "wishes[0].atMost", "Required")]
    [InlineData("wishes[0].atMost", "0", "wishes[0].atMost", "1 to 100000")]
    [InlineData("wishes[0].surface", "\"cloth\"", "wishes[0].surface", "\"bare\" or \"primed\"")]
    [InlineData("boards", null, "boards", "nothing is saved")]
    [InlineData("boards[0].id", null, "boards[0].id", "Required")]
    [InlineData("boards[1].id", "\"hb3\"", "boards[1].id", "already the id of a board at boards[0].id")]
    [InlineData("boards[0].thickness", null, "boards[0].thickness", "Required")]
    [InlineData("boards[0].width", "\"two feet\"", "boards[0].width", "is no length")]
    [InlineData("boards[0].width", "400", "boards[0].width", "from 1 mm to 10 m")]
    [InlineData("boards[0].height", null, "boards[0].height", "Required")]
    [InlineData("boards[0].price", null, "boards[0].price", "forSale 0")]
    [InlineData("boards[0].price", "\"6.10\"", "boards[0].price", "Expected a number")]
    [InlineData("boards[0].price", "6.101", "boards[0].price", "EUR has 2 decimal digits")]
    [InlineData("boards[0].forSale", "-1", "boards[0].forSale", "0 to 1000000")]
    [InlineData("boards[0].onHand", "1.5", "boards[0].onHand", "whole number")]
    [InlineData("boards[0].value", "-0.01", "boards[0].value", "0 to 10000000")]
    [InlineData("boards[0].edgeTrim", "12", "boards[0].edgeTrim", "leaves nothing of board \"hb3\"")]
    [InlineData("boards[0].grain", "\"width\"", "boards[0].grain", "\"none\", \"height\"")]
    [InlineData("cloths", null, "cloths", "nothing is saved")]
    [InlineData("cloths[1].id", "\"lin-wide\"", "cloths[1].id", "already the id of a cloth at cloths[0].id")]
    [InlineData("cloths[1].sale", null, "cloths[1].sale", "Required where there are no remnants")]
    [InlineData("cloths[1].sale.by", "\"yard\"", "cloths[1].sale.by", "\"length\", \"roll\"")]
    [InlineData("cloths[1].sale.by", null, "cloths[1].sale.by", "Required")]
    [InlineData("cloths[1].sale.length", null, "cloths[1].sale.length", "Required")]
    [InlineData("cloths[1].sale.price", null, "cloths[1].sale.price", "Required")]
    [InlineData("cloths[1].sale.step", "36", "cloths[1].sale.step", "Belongs to a sale by length")]
    [InlineData("cloths[0].sale.step", "0", "cloths[0].sale.step", "above 0")]
    [InlineData("cloths[0].sale.forSale", "2", "cloths[0].sale.forSale", "Belongs to a sale by roll")]
    [InlineData("cloths[0].selvedge", "31", "cloths[0].selvedge", "leaves nothing")]
    [InlineData("cloths[0].remnants[0].length", null, "cloths[0].remnants[0].length", "Required")]
    [InlineData("cloths[0].remnants[0].quantity", "-1", "cloths[0].remnants[0].quantity", "0 to 1000000")]
    [InlineData("cloths[0].warp", "\"none\"", "cloths[0].warp", "\"any\", \"height\"")]
    [InlineData("adhesives[0].coverage", null, "adhesives[0].coverage", "Required")]
    [InlineData("adhesives[0].coverage.area", "0", "adhesives[0].coverage.area", "from 0.001 to")]
    [InlineData("adhesives[0].coverage.volume", null, "adhesives[0].coverage.volume", "Required")]
    [InlineData("adhesives[0].containers", null, "adhesives[0].containers", "Required")]
    [InlineData("primers[0].containers", "[]", "primers[0].containers", "at least one")]
    [InlineData("adhesives[0].containers[1].volume", "-8", "adhesives[0].containers[1].volume", "from 0.000001 to")]
    [InlineData("adhesives[0].containers[1].price", null, "adhesives[0].containers[1].price", "Required")]
    [InlineData("adhesives[0].containers[1].volume", "0.000004", "adhesives[0].containers[1].volume", "more than 1000000 of these")]
    [InlineData("primers[0].coats", "0", "primers[0].coats", "1 to 100")]
    [InlineData("saw.kerf", "-0.125", "saw.kerf", "from 0 to")]
    [InlineData("saw.kerf", "2", "saw.kerf", "from 0 to")]
    [InlineData("saw.edgeTrim", "12", "saw.edgeTrim", "leaves nothing of board \"hb3\"")]
    [InlineData("saw.undersize", "8", "saw.undersize", "leaves nothing of the smallest panel")]
    [InlineData("saw.smallestKept", "[4]", "saw.smallestKept", "array of two lengths")]
    [InlineData("saw.smallestKept", "[4, \"x\"]", "saw.smallestKept[1]", "is no length")]
    [InlineData("saw.smallestKept", "[4, 0]", "saw.smallestKept", "above 0")]
    [InlineData("bench.margin", "[1, 2, 3]", "bench.margin", "array of two lengths")]
    [InlineData("bench.margin", "-1", "bench.margin", "0 to 1 m")]
    [InlineData("bench.pressSpaces", "0", "bench.pressSpaces", "1 to 1000")]
    [InlineData("bench.pressHours", "0", "bench.pressHours", "from 0.01 to")]
    [InlineData("labour.perHour", "-5", "labour.perHour", "0 to 10000000")]
    [InlineData("overheads[0].cost", "\"dear\"", "overheads[0].cost", "Expected a number")]
    [InlineData("effort", "\"utmost\"", "effort", "\"quick\", \"steady\", \"thorough\"")]
    public async Task Create_order_with_one_fault_is_refused_naming_the_field_and_what_is_right(
        string path, string? value, string key, string expected)
    {
        HttpClient client = _service.Client;

        using HttpResponseMessage response = await client.PostOrderAsync(Json.With(SampleOrders.Full, path, value));

        JsonElement problem = await Json.ReadProblemAsync(response, 400, "/problems/invalid-request");
        string message = Assert.Single(problem.GetProperty("errors").GetProperty(key).EnumerateArray()).GetString()!;
        Assert.Contains(expected, message, StringComparison.Ordinal);
        Assert.Empty(_service.Planned);
    }

    [Fact]
    public async Task Create_order_with_many_faults_of_all_sorts_is_told_all_of_them_at_once()
    {
        HttpClient client = _service.Client;
        const string body =
            """
            { "panels": [ { "widht": 8, "height": "x", "quantity": 1.5 }, { "width": 0, "height": 10, "quantity": 3, "mark": "A" }, { "mark": "A", "width": 1, "height": 1, "quantity": 1, "mayBuy": true } ],
              "boards": [ { "id": "b", "thickness": 1, "width": 4, "height": "4 ells", "price": 1.001, "onHand": -1 } ],
              "saw": { "kerf": "wide" }, "efort": "quick" }
            """;

        using HttpResponseMessage response = await client.PostOrderAsync(body);

        JsonElement problem = await Json.ReadProblemAsync(response, 400, "/problems/invalid-request");
        Assert.Equal(
            new[]
            {
                "boards[0].height", "boards[0].onHand", "boards[0].price", "efort", "panels[0].height", "panels[0].quantity",
                "panels[0].widht", "panels[0].width", "panels[1].width", "panels[2].mark", "panels[2].mayBuy", "panels[2].shopPrice", "saw.kerf",
            },
            problem.GetProperty("errors").EnumerateObject().Select(e => e.Name).Order(StringComparer.Ordinal));
    }

    // Nothing is wrong with the step by itself; ten milliards of them are more than are counted.
    [Fact]
    public async Task Create_with_more_steps_of_cloth_than_are_counted_is_refused()
    {
        const string body =
            """
            { "units": "millimetre", "currency": "EUR", "panels": [ { "width": 900, "height": 9000, "quantity": 100000, "surface": "loose" } ],
              "boards": [], "cloths": [ { "id": "c", "width": 1000, "sale": { "by": "length", "step": 0.01, "price": 0.01 } } ] }
            """;

        using HttpResponseMessage response = await _service.Client.PostOrderAsync(body);

        JsonElement problem = await Json.ReadProblemAsync(response, 400, "/problems/invalid-request");
        string message = Assert.Single(problem.GetProperty("errors").GetProperty("cloths[0].sale.step").EnumerateArray()).GetString()!;
        Assert.Contains("more than 1000000000 of these", message, StringComparison.Ordinal);
        Assert.Empty(_service.Planned);
    }

    [Fact]
    public async Task Create_more_than_500_lines_is_refused()
    {
        HttpClient client = _service.Client;
        string lines = string.Join(',', Enumerable.Repeat("""{ "width": 8, "height": 10, "quantity": 1 }""", 501));

        using HttpResponseMessage response = await client.PostOrderAsync(Json.With(SampleOrders.Full, "panels", $"[{lines}]"));

        JsonElement problem = await Json.ReadProblemAsync(response, 400, "/problems/invalid-request");
        Assert.Contains("501", problem.GetProperty("errors").GetProperty("panels")[0].GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Create_more_than_100_wishes_is_refused()
    {
        HttpClient client = _service.Client;
        string wishes = string.Join(',', Enumerable.Range(0, 101).Select(i => $$"""{ "mark": "W{{i}}", "width": 5, "height": 7, "atMost": 1 }"""));

        using HttpResponseMessage response = await client.PostOrderAsync(Json.With(SampleOrders.Full, "wishes", $"[{wishes}]"));

        JsonElement problem = await Json.ReadProblemAsync(response, 400, "/problems/invalid-request");
        Assert.Contains("at most 100", problem.GetProperty("errors").GetProperty("wishes")[0].GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Create_a_body_of_nothing_but_unknown_fields_is_answered_briefly()
    {
        HttpClient client = _service.Client;
        string body = "{" + string.Join(',', Enumerable.Range(0, 20_000).Select(i => $"\"unknown{i}\":1")) + "}";

        using HttpResponseMessage response = await client.PostOrderAsync(body);

        JsonElement problem = await Json.ReadProblemAsync(response, 400, "/problems/invalid-request");
        Assert.InRange(problem.GetProperty("errors").EnumerateObject().Count(), 100, 200);
    }
}
