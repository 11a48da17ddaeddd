using System.Text.Json;

namespace PanelService.Checking.Reading;

/// <summary>Reads an order as the contract describes it.</summary>
internal static class OrderReader
{
    /// <summary>Reads.</summary>
    /// <param name="order">The order.</param>
    /// <param name="plan">The plan, for what the order may leave open: units, currency, marks.</param>
    public static OrderFacts Read(JsonElement order, JsonElement plan)
    {
        var units = new Units(plan.GetProperty("units").GetString()!, plan.GetProperty("currency").GetString()!)
        {
            TaxPercent = order.Field("tax")?.GetProperty("percent").GetDecimal() ?? 0,
        };
        var saw = order.Field("saw") ?? default;
        var bench = order.Field("bench") ?? default;
        var schedule = order.Field("schedule") ?? default;
        var strength = order.Field("strength") ?? default;
        long edgeTrim = Length(saw, "edgeTrim") ?? 0;
        string[] marks = [.. plan.GetProperty("panels").EnumerateArray().Select(panel => panel.GetProperty("mark").GetString()!)];

        var facts = new OrderFacts
        {
            Units = units,
            Lines =
            [
                .. order.List("panels").Select((line, i) => Line(line, units, line.Text("mark") ?? marks.ElementAtOrDefault(i) ?? "")),
                .. order.List("wishes").Select(wish => Wish(wish, units)),
            ],
            Boards = order.List("boards").Select(board => Board(board, units, edgeTrim)).ToDictionary(board => board.Id),
            Cloths = order.List("cloths").Select(cloth => Cloth(cloth, units)).ToDictionary(cloth => cloth.Id),
            Adhesives = order.List("adhesives").Select(liquid => Liquid(liquid, units)).ToDictionary(liquid => liquid.Id),
            Primers = order.List("primers").Select(liquid => Liquid(liquid, units)).ToDictionary(liquid => liquid.Id),
            Strips = order.List("strips").Select(strip => Strip(strip, units)).ToDictionary(strip => strip.Id),
            Cradles = new CradleFacts(
                Length(strength, "stripWidth") ?? Units.Inches(0.75m),
                Length(strength, "cradleInset") ?? Units.Inches(0.25m),
                Length(strength, "smallestStrip") ?? Units.Inches(12),
                strength.Flag("brace", false)),
            Kerf = Length(saw, "kerf") ?? Units.Inches(0.125m),
            Undersize = Length(saw, "undersize") ?? 0,
            Handling = new HandlingFacts(
                Length(saw, "fenceReach"),
                saw.Field("heaviest") is { } weight ? Grams(weight, plan.GetProperty("units").GetString() == "inch") : null,
                Pair(saw, "largest", units),
                Pair(saw, "carry", units),
                Length(saw, "supplierKerf") ?? Units.Inches(0.125m)),
            SmallestKept = Pair(saw, "smallestKept", units) ?? (Units.Inches(4), Units.Inches(6)),
            SmallestCloth = Pair(bench, "smallestCloth", units) ?? (Units.Inches(6), Units.Inches(8)),
            Margins = Margins(bench, units),
            Shrinkage = Shrinkage(bench, order),
            PressSpaces = bench.Count("pressSpaces", 4),
            Hands = schedule.Count("hands", 1),
            Day = schedule.Field("zone") is null ? Day(schedule) : null,
            Overheads = order.List("overheads").Sum(one => units.Money(one.GetProperty("cost"))),
            Shops = [.. order.List("shops").Select(shop => new ShopFacts(
                shop.Text("id")!,
                shop.Field("charge") is { } charge ? units.TaxedMoney(charge) : 0,
                shop.Field("freeFrom") is { } from ? units.Money(from) : null))],
            Consumables = [.. order.List("consumables").Select(one => new ConsumableFacts(
                one.Text("per")!, units.TaxedMoney(one.GetProperty("price")), one.GetProperty("lasts").GetDecimal()))],
            Tools = [.. order.List("tools").Select(one => new ToolFacts(
                units.TaxedMoney(one.GetProperty("price")), one.GetProperty("spreadOver").GetInt64()))],
            LabourPerHour = order.Field("labour")?.Field("perHour") is { } pay ? units.Money(pay) : 0,
        };

        return order.Field("budget") is { } budget ? WithBudget(facts, order, plan, units.Money(budget)) : facts;

        long? Length(JsonElement parent, string name) =>
            parent.Field(name) is { } value ? units.OrderLength(value) : null;
    }

    // What is on hand counts nothing then, and the plan is of what is made: no more of a line than was asked for.
    private static OrderFacts WithBudget(OrderFacts facts, JsonElement order, JsonElement plan, long budget)
    {
        var made = plan.GetProperty("panels").EnumerateArray().ToDictionary(panel => panel.GetProperty("mark").GetString()!, panel => panel.GetProperty("made").GetInt64());
        string[] told = [.. plan.Field("budget")?.GetProperty("lines").EnumerateArray().Select(line => line.GetProperty("mark").GetString()!) ?? []];
        var lines = order.List("panels").Select((line, i) => (Json: line, Facts: facts.Lines[i] with { Mark = line.Text("mark") ?? told.ElementAtOrDefault(i) ?? "" })).ToArray();
        return facts with
        {
            Budget = budget,
            Asked = [.. lines.Select(line => new AskedFacts(
                line.Facts.Mark,
                line.Facts.Quantity,
                line.Json.Field("worth") is { } worth ? facts.Units.Money(worth) : line.Json.Field("shopPrice") is { } price ? facts.Units.Money(price) : null,
                (decimal)line.Facts.Area / facts.Units.SquareStepsPerArea))],
            Lines =
            [
                .. lines.Select(line => line.Facts).Where(line => made.GetValueOrDefault(line.Mark) > 0)
                    .Select(line => line with { Quantity = Math.Min(line.Quantity, made[line.Mark]), Wanted = Math.Min(line.Quantity, made[line.Mark]) }),
                .. facts.Lines.Where(line => line.IsWish),
            ],
            Boards = facts.Boards.Values.ToDictionary(board => board.Id, board => board with { Value = 0 }),
            Cloths = facts.Cloths.Values.ToDictionary(cloth => cloth.Id, cloth => cloth with { Remnants = cloth.Remnants.Values.ToDictionary(remnant => remnant.Id, remnant => remnant with { Value = 0 }) }),
            Adhesives = facts.Adhesives.Values.ToDictionary(liquid => liquid.Id, liquid => liquid with { Value = 0 }),
            Primers = facts.Primers.Values.ToDictionary(liquid => liquid.Id, liquid => liquid with { Value = 0 }),
            Strips = facts.Strips.Values.ToDictionary(strip => strip.Id, strip => strip with { Value = 0 }),
        };
    }

    private static (long A, long B)? Pair(JsonElement parent, string name, Units units) => parent.Field(name) switch
    {
        null => null,
        { ValueKind: JsonValueKind.Array } pair => (units.OrderLength(pair[0]), units.OrderLength(pair[1])),
        { } one => (units.OrderLength(one), units.OrderLength(one)),
    };

    private static decimal Grams(JsonElement weight, bool inPounds)
    {
        if (weight.ValueKind == JsonValueKind.Number)
        {
            return weight.GetDecimal() * (inPounds ? 453.59237m : 1);
        }

        string[] parts = weight.GetString()!.Trim().Split(' ');
        return decimal.Parse(parts[0], System.Globalization.CultureInfo.InvariantCulture)
            * (parts[1] switch { "lb" => 453.59237m, "kg" => 1000, _ => 1 });
    }

    // One length for all sides; two: left and right, top and bottom; four: top, right, bottom, left.
    private static (long Across, long Along) Margins(JsonElement bench, Units units)
    {
        if (bench.Field("margin") is { ValueKind: JsonValueKind.Array } four && four.GetArrayLength() == 4)
        {
            long[] sides = [.. four.EnumerateArray().Select(units.OrderLength)];
            return (sides[1] + sides[3], sides[0] + sides[2]);
        }

        var (a, b) = Pair(bench, "margin", units) ?? (Units.Inches(0.5m), Units.Inches(0.5m));
        return (2 * a, 2 * b);
    }

    // Where a cloth may lie either way, the larger counts both ways.
    private static (decimal Across, decimal Along) Shrinkage(JsonElement bench, JsonElement order)
    {
        var (across, along) = bench.Field("shrinkage") switch
        {
            null => (0m, 0m),
            { ValueKind: JsonValueKind.Array } pair => (pair[0].GetDecimal(), pair[1].GetDecimal()),
            { } both => (both.GetDecimal(), both.GetDecimal()),
        };
        bool eitherWay = order.List("cloths").Any(cloth => cloth.Text("warp") != "height");
        return eitherWay ? (Math.Max(across, along), Math.Max(across, along)) : (across, along);
    }

    private static (long From, long Minutes) Day(JsonElement schedule)
    {
        long from = Minute(schedule.Text("from")) ?? 540;
        return (from, Minute(schedule.Text("to")) is { } to ? to - from : Math.Min(480, 1440 - from));
    }

    private static long? Minute(string? time) =>
        time?.Split(':') is [var hours, var minutes] ? (60 * long.Parse(hours, System.Globalization.CultureInfo.InvariantCulture)) + long.Parse(minutes, System.Globalization.CultureInfo.InvariantCulture) : null;

    private static LineFacts Line(JsonElement line, Units units, string mark) => new()
    {
        Mark = mark,
        IsWish = false,
        Width = units.OrderLength(line.GetProperty("width")),
        Height = units.OrderLength(line.GetProperty("height")),
        Quantity = line.GetProperty("quantity").GetInt64(),
        Wanted = line.GetProperty("quantity").GetInt64() + line.Count("spares", 0),
        Surface = line.Text("surface") ?? "bare",
        Board = line.Text("board"),
        Cloth = line.Text("cloth"),
        Thickness = line.Field("thickness") is { } thickness ? units.OrderLength(thickness) : null,
        MayTurn = line.Flag("mayTurn", true),
        ShopPrice = line.Field("shopPrice") is { } price ? units.TaxedMoney(price) : null,
        MayBuy = line.Flag("mayBuy", false),
        Adhesive = line.Text("adhesive"),
        Primer = line.Text("primer"),
        Cradle = line.Flag("cradle", false),
        MayBrace = line.Field("cradle") is null && (line.Text("surface") ?? "bare") != "loose",
        MountLater = line.Text("mount") == "later",
        First = line.Flag("first", false),
    };

    private static LineFacts Wish(JsonElement wish, Units units) => new()
    {
        Mark = wish.GetProperty("mark").GetString()!,
        IsWish = true,
        Width = units.OrderLength(wish.GetProperty("width")),
        Height = units.OrderLength(wish.GetProperty("height")),
        Quantity = 0,
        Wanted = wish.GetProperty("atMost").GetInt64(),
        Surface = wish.Text("surface") ?? "bare",
        Board = wish.Text("board"),
        Thickness = wish.Field("thickness") is { } thickness ? units.OrderLength(thickness) : null,
        MayTurn = wish.Flag("mayTurn", true),
        MayBuy = false,
    };

    private static BoardFacts Board(JsonElement board, Units units, long edgeTrim) => new(
        board.GetProperty("id").GetString()!,
        board.Text("kind"),
        units.OrderLength(board.GetProperty("thickness")),
        units.OrderLength(board.GetProperty("width")),
        units.OrderLength(board.GetProperty("height")),
        board.Field("price") is { } price ? units.TaxedMoney(price) : null,
        board.Field("forSale")?.GetInt64(),
        board.Count("onHand", 0),
        board.Field("value") is { } value ? units.Money(value) : 0,
        board.Field("edgeTrim") is { } trim ? units.OrderLength(trim) : edgeTrim,
        board.Text("grain") == "height")
    {
        Prices = board.Field("price") is null ? PriceListFacts.None : Prices(board, units),
        Shop = board.Text("shop"),
    };

    private static PriceListFacts Prices(JsonElement good, Units units) => new(
    [
        (0, units.TaxedMoney(good.GetProperty("price"))),
        .. good.List("priceFrom").Select(step => (step.GetProperty("count").GetInt64(), units.TaxedMoney(step.GetProperty("price")))),
    ]);

    private static StripGoodFacts Strip(JsonElement strip, Units units) => new(
        strip.GetProperty("id").GetString()!,
        units.OrderLength(strip.GetProperty("length")),
        strip.Field("price") is { } price ? units.TaxedMoney(price) : null,
        strip.Field("forSale")?.GetInt64(),
        strip.Count("onHand", 0),
        strip.Field("value") is { } value ? units.Money(value) : 0)
    {
        Prices = strip.Field("price") is null ? PriceListFacts.None : Prices(strip, units),
        Shop = strip.Text("shop"),
    };

    private static ClothFacts Cloth(JsonElement cloth, Units units) => new(
        cloth.GetProperty("id").GetString()!,
        cloth.Text("kind"),
        units.OrderLength(cloth.GetProperty("width")),
        cloth.Field("selvedge") is { } selvedge ? units.OrderLength(selvedge) : 0,
        cloth.Text("warp") == "height",
        cloth.Field("sale") is { } sale ? Sale(sale, units) : null,
        cloth.List("remnants").Select(remnant => Remnant(remnant, units)).ToDictionary(remnant => remnant.Id))
    {
        Shop = cloth.Text("shop"),
    };

    private static SaleFacts Sale(JsonElement sale, Units units)
    {
        bool byRoll = sale.GetProperty("by").GetString() == "roll";
        return new SaleFacts(
            byRoll,
            units.OrderLength(sale.GetProperty(byRoll ? "length" : "step")),
            Prices(sale, units),
            sale.Field(byRoll ? "forSale" : "atMost")?.GetInt64());
    }

    private static RemnantFacts Remnant(JsonElement remnant, Units units) => new(
        remnant.GetProperty("id").GetString()!,
        units.OrderLength(remnant.GetProperty("width")),
        units.OrderLength(remnant.GetProperty("length")),
        remnant.Count("quantity", 1),
        remnant.Field("value") is { } value ? units.Money(value) : 0);

    private static LiquidFacts Liquid(JsonElement liquid, Units units)
    {
        var coverage = liquid.GetProperty("coverage");
        decimal perArea = coverage.GetProperty("volume").GetDecimal() / coverage.GetProperty("area").GetDecimal();
        return new LiquidFacts(
            liquid.GetProperty("id").GetString()!,
            perArea * liquid.Count("coats", 1) * liquid.Count("faces", 1)
                * (1 - ((liquid.Field("thinning")?.GetDecimal() ?? 0) / 100)) * (1 + ((liquid.Field("loss")?.GetDecimal() ?? 0) / 100)),
            [.. liquid.List("containers").Select(one => (one.GetProperty("volume").GetDecimal(), Prices(one, units)))],
            liquid.Field("onHand")?.GetDecimal() ?? 0,
            liquid.Field("value") is { } value ? units.Money(value) : 0)
        {
            Shop = liquid.Text("shop"),
        };
    }
}
