using System.Text.Json.Nodes;
using PanelService.Checking;

namespace PanelService.Outside.Tests.Checker;

/// <summary>
/// The checker itself: a plan made by hand passes, and every kind of fault put into it is found and given to its rule.
/// </summary>
public sealed class PlanCheckerTests
{
    private static readonly string Order = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Checker", "good-order.json"));
    private static readonly string Plan = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Checker", "good-plan.json"));

    /// <summary>A path into the plan, the value put there, and the rule that must find it.</summary>
    public static TheoryData<Rule, string, string> Faults() => new()
    {
        { Rule.Document, "sheets", "null" },
        { Rule.Document, "sheets[0].cuts[0].axis", "\"z\"" },
        { Rule.Document, "sheets[0].pieces[1].x", "8.12504" },
        { Rule.Document, "cost.cash", "37.901" },
        { Rule.Geometry, "sheets[0].pieces[1].x", "8.25" },
        { Rule.Geometry, "sheets[0].cuts[2].at", "16.25" },
        { Rule.Geometry, "sheets[0].cuts[4].workpiece.width", "10.125" },
        { Rule.Geometry, "sheets[0].cuts[4].axis", "\"x\"" },
        { Rule.Geometry, "sheets[0].cuts[10].number", "12" },
        { Rule.Geometry, "sheets[0].offcuts[0].kept", "false" },
        { Rule.Geometry, "sheets[0].offcuts[2].kept", "true" },
        { Rule.Geometry, "sheets[0].offcuts[5].width", "1.5" },
        { Rule.Geometry, "sheets[0].waste.scrap", "61.9" },
        { Rule.Geometry, "sheets[1].number", "3" },
        { Rule.Demand, "sheets[0].copies", "2" },
        { Rule.Demand, "sheets[1].pieces[0].mark", "\"W\"" },
        { Rule.Demand, "sheets[1].pieces[0].mark", "\"X\"" },
        { Rule.Demand, "panels[1].made", "3" },
        { Rule.Demand, "panels[1].bought", "2" },
        { Rule.Demand, "panels[1].spares", "0" },
        { Rule.Demand, "panels[0].surface", "\"loose\"" },
        { Rule.Demand, "panels[2].quantity", "3" },
        { Rule.Demand, "panels[0].mark", "\"B\"" },
        { Rule.Demand, "cost.panels[0].mark", "\"B\"" },
        { Rule.Demand, "cost.panels[0].quantity", "5" },
        { Rule.Demand, "cloth[0].copies", "2" },
        { Rule.Size, "panels[0].cutWidth", "8.125" },
        { Rule.Size, "panels[0].cutWidth", "7.75" },
        { Rule.Size, "panels[2].cutHeight", "6.9375" },
        { Rule.Size, "panels[0].width", "8.5" },
        { Rule.Size, "sheets[0].pieces[2].turned", "false" },
        { Rule.Supply, "sheets[1].copies", "2" },
        { Rule.Supply, "sheets[0].copies", "3" },
        { Rule.Supply, "sheets[0].board", "\"unknown\"" },
        { Rule.Supply, "sheets[1].source", "\"bought\"" },
        { Rule.Supply, "panels[0].thicknesses[0]", "0.25" },
        { Rule.Supply, "cloth[0].length", "13" },
        { Rule.Supply, "cloth[0].remnant", "\"r1\"" },
        { Rule.Supply, "cloth[0].copies", "4" },
        { Rule.Supply, "buy[0].quantity", "2" },
        { Rule.Supply, "buy[1].quantity", "2" },
        { Rule.Supply, "buy[2].unitPrice", "7.80" },
        { Rule.Supply, "buy[4].quantity", "2" },
        { Rule.Supply, "liquids[0].needed", "1.7" },
        { Rule.Supply, "liquids[0].fromHand", "0.5" },
        { Rule.Supply, "liquids[0].left", "7.5" },
        { Rule.Supply, "liquids[1].bought[0].volume", "16" },
        { Rule.Supply, "liquids[1].bought[0].count", "2" },
        { Rule.Proof, "boardProof.leastPossible", "6.60" },
        { Rule.Proof, "boardProof.leastPossible", "6.40" },
        { Rule.Proof, "boardProof.spent", "6.00" },
        { Rule.Proof, "clothProof.spent", "9.00" },
        { Rule.Proof, "clothProof.proven", "false" },
        { Rule.Proof, "proof.proven", "true" },
        { Rule.Proof, "proof.spent", "38.89" },
        { Rule.Proof, "proof.leastPossible", "-1" },
        { Rule.SawRun, "sawProof.settings", "99" },
        { Rule.SawRun, "sawProof.leastPossible", "99" },
        { Rule.SawRun, "sawProof.leastPossible", "0" },
        { Rule.SawRun, "sawProof.proven", "false" },
        { Rule.SawRun, "sawProof.changes", "99" },
        { Rule.SawRun, "sawProof.leastChanges", "0" },
        { Rule.SawRun, "sawProof.leastChanges", "99" },
        { Rule.SawRun, "sawProof.cuts", "99" },
        { Rule.SawRun, "sawProof.leastCuts", "0" },
        { Rule.SawRun, "sawProof.leastCuts", "99" },
        { Rule.SawRun, "sawRun[0].passes[0].cut", "2" },
        { Rule.SawRun, "sawRun[6].passes[0].cut", "8" },
        { Rule.SawRun, "sawRun[6].passes[0].cut", "12" },
        { Rule.SawRun, "sawRun[3].fence", "8.125" },
        { Rule.SawRun, "sawRun[3].tool", "\"hand\"" },
        { Rule.SawRun, "sawRun[3].step", "5" },
        { Rule.SawRun, "sawRun[3].passes", "[]" },
        {
            Rule.SawRun, "sheets[0].cuts[1]",
            """{"number":2,"workpiece":{"x":0,"y":0,"width":24,"height":10},"axis":"x","at":8,"by":"supplier","kerf":0.125}"""
        },
        { Rule.Cloth, "cloth[0].pieces[0].x", "0.25" },
        { Rule.Cloth, "cloth[0].pieces[1].x", "9.25" },
        { Rule.Cloth, "cloth[0].pieces[1].y", "1.5" },
        { Rule.Cloth, "cloth[0].pieces[1].width", "8" },
        { Rule.Cloth, "cloth[0].pieces[1].turned", "true" },
        { Rule.Cloth, "cloth[0].offcuts[0].kept", "false" },
        { Rule.Cloth, "cloth[0].offcuts[1].y", "11.5" },
        { Rule.Money, "cost.cash", "37.91" },
        { Rule.Money, "cost.used", "16.57" },
        { Rule.Money, "cost.backOnRack", "23.35" },
        { Rule.Money, "buy[0].cost", "6.01" },
        { Rule.Money, "cost.panels[0].each", "2.95" },
        { Rule.Money, "cost.panels[0].total", "11.67" },
        { Rule.Money, "cost.panels[0].board", "4.00" },
        { Rule.Money, "cost.panels[0].overheads", "0.72" },
        { Rule.Money, "cost.panels[0].labour", "0.01" },
        { Rule.Money, "cost.panels[1].ready", "1.00" },
        { Rule.Money, "cost.panels[0].byArea.board", "0.90" },
        { Rule.Money, "cost.panels[0].byArea.each", "2.60" },
        { Rule.Money, "cost.panels[0].shopPrice", "7.50" },
        { Rule.Money, "cost.panels[0].savedEach", "4.40" },
        { Rule.Money, "cost.panels[0].savedShare", "0.5" },
        { Rule.Money, "cost.savedTotal", "19.55" },
        { Rule.Money, "cost.savedShare", "0.6" },
    };

    [Fact]
    public void Plan_made_by_hand_breaks_no_rule() => Assert.Empty(PlanChecker.Check(Order, Plan));

    [Theory]
    [MemberData(nameof(Faults))]
    public void Fault_put_into_a_good_plan_is_found_by_its_rule(Rule rule, string path, string value)
    {
        var found = PlanChecker.Check(Order, Put(Plan, path, value));

        Assert.Contains(rule, found.Select(violation => violation.Rule));
    }

    [Theory]
    [InlineData("saw.fenceReach", "9", "farther than the fence reaches")]
    [InlineData("saw.fenceReach", "10", null)]
    [InlineData("saw.carry", "[23, 24]", "does not fit the car")]
    [InlineData("saw.carry", "[24, 24]", null)]
    [InlineData("saw.largest", "[24, 23]", "larger than one person handles")]
    [InlineData("saw.largest", "[24, 24]", null)]
    [InlineData("saw.heaviest", "2.5", "weighs")]
    [InlineData("saw.heaviest", "2.7", null)]
    public void Limit_the_plan_does_not_keep_is_found(string path, string value, string? words)
    {
        var found = PlanChecker.Check(Put(Order, path, value), Plan).Select(violation => violation.Words).ToList();

        Assert.True(words is null ? found.Count == 0 : found.Exists(one => one.Contains(words, StringComparison.Ordinal)), string.Join("\n", found));
    }

    [Fact]
    public void Cut_made_at_the_supplier_without_need_is_found()
    {
        string cut = """{"number":1,"workpiece":{"x":0,"y":0,"width":24,"height":24},"axis":"y","at":10,"by":"supplier","kerf":0.125}""";

        Assert.Contains(PlanChecker.Check(Order, Put(Plan, "sheets[0].cuts[0]", cut)), found => found.Words.Contains("could be taken home", StringComparison.Ordinal));
    }

    [Fact]
    public void Money_moved_between_lines_is_found()
    {
        string moved = Put(Put(Plan, "cost.panels[0].board", "4.97"), "cost.panels[0].total", "12.66");
        moved = Put(Put(moved, "cost.panels[1].board", "0.10"), "cost.panels[1].total", "3.39");

        Assert.Contains(PlanChecker.Check(Order, moved), found => found.Words.StartsWith("board ", StringComparison.Ordinal));
    }

    [Fact]
    public void Cloth_pieces_in_a_pinwheel_are_found()
    {
        // Five pieces of which no straight cut frees one: the classic arrangement that no guillotine can part.
        string order = Put(Put(Order, "panels[0].width", "3"), "panels[0].height", "6");
        string pieces = """
            [{"mark":"A","x":1,"y":0,"width":4,"height":7,"turned":false},{"mark":"A","x":5,"y":0,"width":7,"height":4,"turned":true},
             {"mark":"A","x":8,"y":4,"width":4,"height":7,"turned":false},{"mark":"A","x":1,"y":7,"width":7,"height":4,"turned":true}]
            """;
        string plan = Put(Put(Plan, "panels[0].cutWidth", "3"), "panels[0].cutHeight", "6");
        plan = Put(Put(plan, "cloth[0].pieces", pieces), "cloth[0].offcuts", "[]");

        Assert.Contains(PlanChecker.Check(order, plan), found => found.Words.Contains("no straight cuts", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("delivery nobody is told of", "[]", "[]")]
    [InlineData("delivery beside the shopping list", """[{"shop":"s","goods":6,"charge":3}]""", "[]")]
    [InlineData("surplus that saves nothing", """[{"shop":"s","goods":6,"charge":3}]""", """[{"id":"hb","saleUnit":"sheet","quantity":1,"cost":6,"reason":"quantityPrice"}]""")]
    [InlineData("surplus for a delivery that is charged", """[{"shop":"s","goods":6,"charge":3}]""", """[{"id":"hb","saleUnit":"sheet","quantity":1,"cost":6,"reason":"freeDelivery"}]""")]
    public void Shop_that_charges_is_looked_after(string fault, string deliveries, string surplus)
    {
        string order = Put(Put(Order, "shops", """[{"id":"s","charge":3}]"""), "boards[0].shop", "\"s\"");
        string plan = Put(Put(Plan, "deliveries", deliveries), "surplus", surplus);

        Assert.True(PlanChecker.Check(order, plan).Any(found => found.Rule == Rule.Money), fault);
    }

    [Theory]
    [InlineData("panels[0].mayTurn", "false", Rule.Size)]
    [InlineData("boards[0].grain", "\"height\"", Rule.Size)]
    [InlineData("boards[0].edgeTrim", "\"1/4\"", Rule.Geometry)]
    [InlineData("panels[0].board", "\"plywood\"", Rule.Supply)]
    [InlineData("panels[0].thickness", "\"1/4\"", Rule.Supply)]
    [InlineData("panels[0].cloth", "\"cotton\"", Rule.Supply)]
    [InlineData("panels[0].height", "\"26 cm\"", Rule.Size)]
    [InlineData("panels[1].mayBuy", "false", Rule.Demand)]
    [InlineData("saw.kerf", "\"3/32\"", Rule.Geometry)]
    [InlineData("saw.smallestKept", "[6, 6]", Rule.Geometry)]
    [InlineData("bench.margin", "[1, 1]", Rule.Cloth)]
    [InlineData("cloths[0].selvedge", "1", Rule.Cloth)]
    [InlineData("overheads[0].cost", "2", Rule.Money)]
    [InlineData("consumables", """[{"per":"sawFoot","price":12,"lasts":40}]""", Rule.Money)]
    [InlineData("consumables", """[{"per":"clothMetre","price":12,"lasts":40}]""", Rule.Money)]
    [InlineData("consumables", """[{"per":"panel","price":1,"lasts":10}]""", Rule.Money)]
    [InlineData("budget", "100", Rule.Money)]
    [InlineData("boards[0].priceFrom", """[{"count":2,"price":2.5}]""", Rule.Money)]
    [InlineData("boards[0].priceFrom", """[{"count":1,"price":5.5}]""", Rule.Supply)]
    [InlineData("cloths[0].sale.priceFrom", """[{"count":2,"price":4}]""", Rule.Money)]
    [InlineData("adhesives[0].containers[0].priceFrom", """[{"count":1,"price":7}]""", Rule.Supply)]
    [InlineData("tax", """{"percent":10}""", Rule.Supply)]
    [InlineData("tools", """[{"price":30,"spreadOver":100}]""", Rule.Money)]
    public void Plan_of_another_order_is_found(string path, string value, Rule rule)
    {
        var found = PlanChecker.Check(Put(Order, path, value), Plan);

        Assert.Contains(rule, found.Select(violation => violation.Rule));
    }

    [Fact]
    public void Plans_alike_but_for_id_and_times_count_as_repeated()
    {
        string first = Put(Plan, "made", "\"2026-03-01T10:00:00Z\"");
        string again = Put(Plan, "made", "\"2026-03-02T11:30:00.5Z\"").Replace("p1", "p2", StringComparison.Ordinal);

        Assert.Empty(PlanChecker.CheckRepeated(first, again));
    }

    [Fact]
    public void Plans_that_differ_break_the_last_rule()
    {
        string again = Put(Plan, "sheets[0].pieces[0].x", "0.125");

        Assert.Equal(Rule.Repeatable, Assert.Single(PlanChecker.CheckRepeated(Plan, again)).Rule);
    }

    [Fact]
    public void Plan_that_was_stopped_early_need_not_repeat()
    {
        string stopped = Put(Plan, "stoppedEarly", "true");

        Assert.Empty(PlanChecker.CheckRepeated(Plan, stopped));
    }

    private static string Put(string document, string path, string value)
    {
        var root = JsonNode.Parse(document)!;
        string[] steps = path.Replace("[", ".[", StringComparison.Ordinal).Split('.');
        var parent = steps[..^1].Aggregate(root, Step);
        var put = JsonNode.Parse(value);
        if (steps[^1].StartsWith('['))
        {
            parent.AsArray()[Index(steps[^1])] = put;
        }
        else
        {
            parent[steps[^1]] = put;
        }

        return root.ToJsonString();
    }

    private static JsonNode Step(JsonNode at, string step) => step.StartsWith('[') ? at[Index(step)]! : at[step]!;

    private static int Index(string step) => int.Parse(step.Trim('[', ']'), System.Globalization.CultureInfo.InvariantCulture);
}
