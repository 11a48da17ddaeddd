using System.Text.Json;

namespace PanelService.Checking.Reading;

/// <summary>Reads a plan as the contract describes it. A missing field throws.</summary>
internal sealed class PlanReader(Units units, long sawKerf)
{
    /// <summary>Reads the whole document.</summary>
    public PlanFacts Read(JsonElement plan) => new(
        [.. plan.GetProperty("panels").EnumerateArray().Select(Panel)],
        [.. plan.GetProperty("sheets").EnumerateArray().Select(Sheet)],
        [.. plan.GetProperty("sawRun").EnumerateArray().Select(Step)],
        SawProof(plan.GetProperty("sawProof")),
        [.. plan.GetProperty("cloth").EnumerateArray().Select(Cloth)],
        [.. plan.GetProperty("liquids").EnumerateArray().Select(Liquid)],
        [.. plan.GetProperty("buy").EnumerateArray().Select(Buy)],
        Proof(plan.GetProperty("proof")),
        Proof(plan.GetProperty("boardProof")),
        Proof(plan.GetProperty("clothProof")),
        Cost(plan.GetProperty("cost")),
        [.. plan.GetProperty("surplus").EnumerateArray().Select(one => new SurplusFacts(
            one.GetProperty("id").GetString()!, one.GetProperty("saleUnit").GetString()!, one.GetProperty("quantity").GetInt64(),
            units.Money(one.GetProperty("cost")), one.GetProperty("reason").GetString()!))],
        [.. plan.GetProperty("deliveries").EnumerateArray().Select(one => new DeliveryFacts(
            one.GetProperty("shop").GetString()!, units.Money(one.GetProperty("goods")), units.Money(one.GetProperty("charge"))))],
        plan.Flag("stoppedEarly", false),
        [.. plan.List("strips").Select(Strip)],
        plan.Field("stripProof") is { } strips ? Proof(strips) : null,
        Bars(plan),
        Weak(plan),
        plan.Field("benchPlan") is { } bench ? Bench(bench) : null)
    {
        Budget = plan.Field("budget") is { } budget ? Budget(budget) : null,
    };

    private BudgetFacts Budget(JsonElement budget)
    {
        bool byArea = budget.GetProperty("by").GetString() == "area";
        decimal Worth(string name) => byArea ? budget.GetProperty(name).GetDecimal() : units.RoughMoney(budget.GetProperty(name));
        return new BudgetFacts(
            Worth("worth"),
            Worth("mostPossible"),
            budget.GetProperty("proven").GetBoolean(),
            [.. budget.GetProperty("lines").EnumerateArray().Select(line => (
                line.GetProperty("mark").GetString()!, line.GetProperty("wanted").GetInt64(), line.GetProperty("made").GetInt64()))]);
    }

    private long Length(JsonElement parent, string name) => units.PlanLength(parent.GetProperty(name));

    private PanelFacts Panel(JsonElement panel) => new(
        panel.GetProperty("mark").GetString()!,
        Length(panel, "width"),
        Length(panel, "height"),
        Length(panel, "cutWidth"),
        Length(panel, "cutHeight"),
        panel.GetProperty("quantity").GetInt64(),
        panel.GetProperty("spares").GetInt64(),
        panel.GetProperty("made").GetInt64(),
        panel.GetProperty("bought").GetInt64(),
        panel.GetProperty("surface").GetString()!,
        [.. panel.GetProperty("thicknesses").EnumerateArray().Select(units.PlanLength)]);

    private SheetFacts Sheet(JsonElement sheet) => new(
        sheet.GetProperty("number").GetInt32(),
        sheet.GetProperty("copies").GetInt64(),
        sheet.GetProperty("board").GetString()!,
        OnHand(sheet),
        new Box(0, 0, Length(sheet, "width"), Length(sheet, "height")),
        [.. sheet.GetProperty("pieces").EnumerateArray().Select(Piece)],
        [.. sheet.GetProperty("offcuts").EnumerateArray().Select(offcut => Offcut(offcut, "height"))],
        [.. sheet.GetProperty("cuts").EnumerateArray().Select(Cut)],
        sheet.GetProperty("waste") is var waste
            ? waste.GetProperty("kerf").GetDecimal() + waste.GetProperty("trim").GetDecimal() + waste.GetProperty("scrap").GetDecimal()
            : 0);

    private static bool OnHand(JsonElement layout) => layout.GetProperty("source").GetString() switch
    {
        "onHand" => true,
        "bought" => false,
        var other => throw new FormatException($"source \"{other}\""),
    };

    private Box ReadBox(JsonElement at, string along) =>
        new(Length(at, "x"), Length(at, "y"), Length(at, "width"), Length(at, along));

    private PieceFacts Piece(JsonElement piece) => new(
        piece.GetProperty("mark").GetString()!, ReadBox(piece, "height"), piece.GetProperty("turned").GetBoolean());

    private OffcutFacts Offcut(JsonElement offcut, string along) =>
        new(ReadBox(offcut, along), offcut.GetProperty("kept").GetBoolean());

    private CutFacts Cut(JsonElement cut)
    {
        bool supplier = cut.GetProperty("by").GetString() == "supplier";
        return new CutFacts(
            cut.GetProperty("number").GetInt32(),
            ReadBox(cut.GetProperty("workpiece"), "height"),
            cut.GetProperty("axis").GetString() switch
            {
                "x" => true,
                "y" => false,
                var other => throw new FormatException($"axis \"{other}\""),
            },
            Length(cut, "at"),
            supplier,
            supplier ? Length(cut, "kerf") : sawKerf);
    }

    private static SawProofFacts SawProof(JsonElement proof) => new(
        proof.GetProperty("settings").GetInt32(), proof.GetProperty("leastPossible").GetInt32(), proof.GetProperty("proven").GetBoolean())
    {
        Changes = (proof.GetProperty("changes").GetInt64(), proof.GetProperty("leastChanges").GetInt64(), proof.GetProperty("changesProven").GetBoolean()),
        Cuts = (proof.GetProperty("cuts").GetInt64(), proof.GetProperty("leastCuts").GetInt64(), proof.GetProperty("cutsProven").GetBoolean()),
    };

    private SawStepFacts Step(JsonElement step) => new(
        step.GetProperty("step").GetInt32(),
        step.GetProperty("tool").GetString()!,
        Length(step, "fence"),
        [.. step.GetProperty("passes").EnumerateArray().Select(pass =>
            (pass.GetProperty("sheet").GetInt32(), pass.GetProperty("cut").GetInt32()))]);

    private ClothLayoutFacts Cloth(JsonElement cloth) => new(
        cloth.GetProperty("number").GetInt32(),
        cloth.GetProperty("copies").GetInt64(),
        cloth.GetProperty("cloth").GetString()!,
        OnHand(cloth),
        cloth.Text("remnant"),
        new Box(0, 0, Length(cloth, "width"), Length(cloth, "length")),
        [.. cloth.GetProperty("pieces").EnumerateArray().Select(Piece)],
        [.. cloth.GetProperty("offcuts").EnumerateArray().Select(offcut => Offcut(offcut, "length"))]);

    private StripFacts Strip(JsonElement strip) => new(
        strip.GetProperty("number").GetInt32(),
        strip.GetProperty("copies").GetInt64(),
        strip.GetProperty("strip").GetString()!,
        OnHand(strip),
        Length(strip, "length"),
        [.. strip.GetProperty("pieces").EnumerateArray().Select(piece => (piece.GetProperty("mark").GetString()!, Length(piece, "at"), Length(piece, "length")))],
        Length(strip, "rest"),
        strip.GetProperty("kept").GetBoolean());

    // How many bars a line's cradle has: the strips that are not its rails.
    private static Dictionary<string, int> Bars(JsonElement plan) => plan.List("strength")
        .Where(one => one.Field("cradle")?.Flag("made", false) == true)
        .GroupBy(one => one.GetProperty("mark").GetString()!)
        .ToDictionary(lines => lines.Key, lines => lines.First().GetProperty("cradle").GetProperty("strips").EnumerateArray().Sum(strip => strip.GetProperty("count").GetInt32()) - 2);

    // Lines of which some panels sag more under the hand than allowed, and have no cradle.
    private static HashSet<string> Weak(JsonElement plan) =>
    [
        .. plan.List("strength")
            .Where(one => one.GetProperty("sagUnderHand").GetDecimal() > one.GetProperty("allowed").GetDecimal() && one.Field("cradle")?.Flag("made", false) != true)
            .Select(one => one.GetProperty("mark").GetString()!),
    ];

    private static BenchFacts Bench(JsonElement bench) => new(
        [.. bench.GetProperty("stacks").EnumerateArray().Select(Counts)],
        [.. (bench.Field("schedule")?.List("jobs") ?? []).Select(Job)],
        bench.Field("scheduleProof") is { } proof
            ? (proof.GetProperty("finish").GetInt64(), proof.GetProperty("leastPossible").GetInt64(), proof.GetProperty("proven").GetBoolean())
            : null)
    {
        MinutesEach = bench.GetProperty("steps").EnumerateArray().ToDictionary(
            line => line.GetProperty("mark").GetString()!, line => line.GetProperty("steps").EnumerateArray().Sum(step => step.GetProperty("minutes").GetDecimal())),
        HandsOn = bench.GetProperty("handsOn").EnumerateArray().ToDictionary(
            line => line.GetProperty("mark").GetString()!, line => line.GetProperty("minutes").GetDecimal()),
    };

    private static (string Mark, long Count)[] Counts(JsonElement parent) =>
        [.. parent.GetProperty("panels").EnumerateArray().Select(part => (part.GetProperty("mark").GetString()!, part.GetProperty("count").GetInt64()))];

    private static JobFacts Job(JsonElement job) => new(
        job.GetProperty("number").GetInt32(),
        job.GetProperty("task").GetString()!,
        job.GetProperty("start").GetInt64(),
        job.GetProperty("hands").GetInt64(),
        job.GetProperty("wait").GetInt64(),
        job.GetProperty("press").GetBoolean(),
        job.Field("stack")?.GetInt32(),
        [.. job.GetProperty("after").EnumerateArray().Select(one => one.GetInt32())],
        [.. job.GetProperty("afterHands").EnumerateArray().Select(one => one.GetInt32())],
        Counts(job))
    {
        Minutes = job.GetProperty("minutes").GetDecimal(),
    };

    private LiquidUseFacts Liquid(JsonElement liquid) => new(
        liquid.GetProperty("id").GetString()!,
        liquid.GetProperty("needed").GetDecimal(),
        liquid.GetProperty("fromHand").GetDecimal(),
        [.. liquid.GetProperty("bought").EnumerateArray().Select(one => (
            one.GetProperty("volume").GetDecimal(), one.GetProperty("count").GetInt64(), units.Money(one.GetProperty("price"))))],
        liquid.GetProperty("left").GetDecimal());

    private BuyFacts Buy(JsonElement buy) => new(
        buy.GetProperty("id").GetString()!,
        buy.GetProperty("quantity").GetInt64(),
        buy.GetProperty("saleUnit").GetString()!,
        units.Money(buy.GetProperty("unitPrice")),
        units.Money(buy.GetProperty("cost")));

    private ProofFacts Proof(JsonElement proof) => new(
        units.Money(proof.GetProperty("spent")),
        units.Money(proof.GetProperty("leastPossible")),
        proof.GetProperty("proven").GetBoolean());

    private CostFacts Cost(JsonElement cost) => new(
        units.Money(cost.GetProperty("cash")),
        units.Money(cost.GetProperty("used")),
        units.Money(cost.GetProperty("backOnRack")),
        [.. cost.GetProperty("panels").EnumerateArray().Select(LineCost)],
        cost.Field("savedTotal") is { } total ? units.RoughMoney(total) : null,
        cost.Field("savedShare")?.GetDecimal());

    private LineCostFacts LineCost(JsonElement line) => new(
        line.GetProperty("mark").GetString()!,
        line.GetProperty("quantity").GetInt64(),
        LineCostFacts.PartNames.ToDictionary(name => name, name => units.Money(line.GetProperty(name))),
        units.RoughMoney(line.GetProperty("each")),
        units.Money(line.GetProperty("total")),
        line.GetProperty("byArea").EnumerateObject().ToDictionary(part => part.Name, part => units.RoughMoney(part.Value)),
        line.Field("shopPrice") is { } price ? units.Money(price) : null,
        line.Field("savedEach") is { } saved ? units.RoughMoney(saved) : null,
        line.Field("savedShare")?.GetDecimal());
}
