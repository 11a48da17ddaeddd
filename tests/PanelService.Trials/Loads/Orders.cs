using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using PanelService.Trials.Fuzzing;

namespace PanelService.Trials.Loads;

/// <summary>Orders for the trials: small and quick ones, and ones made to be hard.</summary>
internal static class Orders
{
    private static readonly int[] Sides = [4, 5, 6, 7, 8, 9, 10, 11, 12];

    /// <summary>Three formats of a few panels, and one board.</summary>
    internal static string Small(Dice dice) => Order(
        "inch",
        Enumerable.Range(0, 3).Select(_ => Line(dice.One(Sides), dice.One(Sides), 1 + dice.Below(9))),
        ["""{"id":"hb","thickness":"3/16","width":24,"height":48,"price":6.10}"""],
        "quick");

    /// <summary>Each with a name.</summary>
    internal static IEnumerable<(string Name, string Order)> Hard()
    {
        var dice = new Dice(7);
        string[] twoBoards = [Board("a", 12200, 24400, 1000), Board("b", 12200, 24400, 1200)];
        yield return ("500 odd formats", Order("millimetre", Odd(dice, 500, 500, 12000, 40), twoBoards, "steady"));
        yield return ("500 small formats, 100 000 of each", Order("millimetre", Many(dice, 500, 100_000), twoBoards, "steady"));
        yield return ("500 small formats, 2000 of each", Order("millimetre", Many(dice, 500, 2000), twoBoards, "steady"));
        yield return ("100 odd formats on 100 odd boards", Order("millimetre", Odd(dice, 100, 500, 12000, 40), [.. Enumerable.Range(0, 100).Select(i => Board($"b{i}", 6000 + dice.Below(24000), 6000 + dice.Below(24000), 500 + dice.Below(4500)))], "steady"));
        yield return ("200 odd formats, cut smaller where that saves", With(Order("millimetre", Odd(dice, 200, 500, 6000, 40), twoBoards, "steady"), order => order["saw"]!["undersize"] = 3));
        yield return ("200 odd formats that may be bought", With(Order("millimetre", Odd(dice, 200, 500, 6000, 40), twoBoards, "steady"), Buyable));
        yield return ("300 odd formats of loose cloth from 40 cloths", With(Order("millimetre", Odd(dice, 300, 500, 9000, 40), [], "steady"), order => Loose(order, dice)));
        yield return ("300 odd formats of loose cloth from 20 remnants", With(Order("millimetre", Odd(dice, 300, 50, 900, 10), [], "steady"), order => Remnants(order, dice)));
        yield return ("100 wishes", With(Order("millimetre", Odd(dice, 50, 500, 6000, 40), twoBoards, "steady"), order => order["wishes"] = Wishes(dice)));
        yield return ("thorough, 100 odd formats", Order("millimetre", Odd(dice, 100, 500, 12000, 100), twoBoards, "thorough"));
        yield return ("100 odd formats of loose cloth from 1000 remnants", With(Order("millimetre", Odd(dice, 100, 500, 9000, 3), [], "steady"), order => ManyRemnants(order, dice)));
        yield return ("a million panels in rows on 10 m boards", Order("millimetre", Enumerable.Range(0, 10).Select(_ => Line(100, 100, 100_000)), [Board("a", 100_000, 100_000, 1000)], "quick"));
        yield return ("a million panels of 500 formats on 10 m boards", Order("millimetre", Odd(dice, 500, 900, 2000, 1).Select(line => Times(line, 2000)), [Board("a", 100_000, 100_000, 1000)], "quick"));
        yield return ("12 mm panels on 10 m boards, a fence of 600 mm", With(Order("millimetre", [Line(12, 12, 20_000)], [Board("a", 100_000, 100_000, 1000)], "quick"), order => order["saw"]!["fenceReach"] = 600));
        yield return ("200 odd formats within four limits", With(Order("millimetre", Odd(dice, 200, 1000, 5800, 20), twoBoards, "steady"), Limited));
        yield return ("the best of 500 odd formats within a budget", With(Order("millimetre", Odd(dice, 500, 1000, 9000, 40), twoBoards, "steady"), order => Budgeted(order, dice)));
        yield return ("500 odd formats on 200 odd boards", With(Order("millimetre", Odd(dice, 500, 500, 12000, 40), [.. Enumerable.Range(0, 200).Select(i => Board($"b{i}", 6000 + dice.Below(94_000), 6000 + dice.Below(94_000), 500 + dice.Below(9500)))], "steady"), order => order["saw"]!["kerf"] = 0.1));
        yield return ("1 mm panels on 10 m boards", Order("millimetre", [Line(1, 1, 100_000)], [Board("a", 100_000, 100_000, 1000)], "steady"));
    }

    private static JsonObject Line(decimal width, decimal height, int quantity) => new() { ["width"] = width, ["height"] = height, ["quantity"] = quantity };

    // Sizes in tenths of a millimetre.
    private static IEnumerable<JsonObject> Odd(Dice dice, int lines, int least, int most, int quantity) =>
        Enumerable.Range(0, lines).Select(_ => Line((least + dice.Below(most - least)) / 10m, (least + dice.Below(most - least)) / 10m, 1 + dice.Below(quantity)));

    private static IEnumerable<JsonObject> Many(Dice dice, int lines, int quantity) => Odd(dice, lines, 50, 300, 1).Select(line => Times(line, quantity));

    private static JsonObject Times(JsonObject line, int quantity)
    {
        line["quantity"] = quantity;
        return line;
    }

    private static string Board(string id, int width, int height, int cents) => string.Create(
        CultureInfo.InvariantCulture, $"{{\"id\":\"{id}\",\"thickness\":5,\"width\":{width / 10m},\"height\":{height / 10m},\"price\":{cents / 100m}}}");

    private static string Order(string units, IEnumerable<JsonObject> lines, string[] boards, string effort)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{{\"units\":\"{units}\",\"currency\":\"EUR\",\"effort\":\"{effort}\",\"saw\":{{}},");
        text.Append(CultureInfo.InvariantCulture, $"\"boards\":[{string.Join(',', boards)}],\"cloths\":[],\"adhesives\":[],\"primers\":[],");
        text.Append(CultureInfo.InvariantCulture, $"\"panels\":[{string.Join(',', lines.Select(line => line.ToJsonString()))}]}}");
        return text.ToString();
    }

    private static string With(string order, Action<JsonNode> change)
    {
        JsonNode node = JsonNode.Parse(order)!;
        change(node);
        return node.ToJsonString();
    }

    private static void Buyable(JsonNode order)
    {
        foreach (JsonNode? line in order["panels"]!.AsArray())
        {
            line!["mayBuy"] = true;
            line["shopPrice"] = Math.Round(1 + ((decimal)line["width"]! * (decimal)line["height"]! / 40_000), 2);
        }
    }

    private static void Limited(JsonNode order) => order["saw"] = new JsonObject
    {
        ["fenceReach"] = 400,
        ["largest"] = new JsonArray(900, 1300),
        ["carry"] = new JsonArray(600, 1000),
        ["heaviest"] = 6000,
        ["supplierKerf"] = 5,
        ["kerf"] = 2.2,
    };

    private static void Budgeted(JsonNode order, Dice dice)
    {
        order["budget"] = 2000;
        foreach (JsonNode? line in order["panels"]!.AsArray())
        {
            line!["worth"] = 1 + (dice.Below(4900) / 100m);
        }
    }

    private static void Loose(JsonNode order, Dice dice)
    {
        foreach (JsonNode? line in order["panels"]!.AsArray())
        {
            line!["surface"] = "loose";
        }

        order["cloths"] = new JsonArray([.. Enumerable.Range(0, 40).Select(i => Cloth(i, dice))]);
    }

    private static void Remnants(JsonNode order, Dice dice)
    {
        Loose(order, dice);
        foreach (JsonNode? cloth in order["cloths"]!.AsArray().Take(20))
        {
            cloth!["remnants"] = new JsonArray(new JsonObject { ["width"] = 2000 + (dice.Below(10_000) / 10m), ["length"] = 4000 + (dice.Below(20_000) / 10m), ["quantity"] = 1 });
        }
    }

    private static void ManyRemnants(JsonNode order, Dice dice)
    {
        Loose(order, dice);
        order["cloths"]!.AsArray()[0]!["remnants"] = new JsonArray([.. Enumerable.Range(0, 1000).Select(_ => new JsonObject
        {
            ["width"] = 300 + (dice.Below(12_000) / 10m), ["length"] = 300 + (dice.Below(30_000) / 10m), ["quantity"] = 1,
        })]);
    }

    private static JsonNode Cloth(int i, Dice dice) => JsonNode.Parse(i % 2 == 0
        ? $"{{\"id\":\"c{i}\",\"width\":{1000 + dice.Below(2000)},\"sale\":{{\"by\":\"length\",\"step\":{10 + dice.Below(990)},\"price\":5}}}}"
        : $"{{\"id\":\"c{i}\",\"width\":{1000 + dice.Below(2000)},\"sale\":{{\"by\":\"roll\",\"length\":{3000 + dice.Below(27000)},\"price\":50}}}}")!;

    private static JsonArray Wishes(Dice dice) => new([.. Enumerable.Range(0, 100).Select(i => JsonNode.Parse(string.Create(
        CultureInfo.InvariantCulture, $"{{\"mark\":\"W{i}\",\"width\":{50 + dice.Below(500)},\"height\":{50 + dice.Below(500)},\"atMost\":1000,\"worth\":{1 + dice.Below(9)}}}")))]);
}
