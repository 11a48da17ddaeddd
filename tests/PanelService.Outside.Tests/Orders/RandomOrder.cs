using System.Globalization;
using System.Text.Json.Nodes;

namespace PanelService.Outside.Tests.Orders;

/// <summary>
/// An order drawn at random from a seed, as a client would write it: every unit, numbers and texts, every kind of
/// goods and setting, much of it left out at random. It can always be made:
/// a large board of every kind and thickness asked for, and both cloths, are for sale without limit.
/// </summary>
internal sealed class RandomOrder
{
    private readonly Random random;
    private readonly DrawnUnit unit;
    private readonly int digits;
    private readonly bool isSmall;
    private readonly List<(string Kind, int Thickness)> sure = [];

    private RandomOrder(int seed, bool isSmall)
    {
        this.isSmall = isSmall;
        random = new Random(seed);
        unit = DrawnUnit.All[seed % DrawnUnit.All.Count];
        digits = seed % 11 == 0 ? 0 : 2;
        var root = new JsonObject
        {
            ["title"] = $"Order {seed} \"of many\" <&>",
            ["units"] = unit.Name,
            ["currency"] = digits == 0 ? "JPY" : Pick("EUR", "USD", "GBP"),
            ["boards"] = Boards(),
        };
        root["panels"] = List(Between(1, isSmall ? 4 : 7), Panel);
        if (Chance(35))
        {
            root["wishes"] = List(Between(1, 2), Wish);
        }

        AddCloths(root);
        AddLiquids(root);
        AddSettings(root);
        AddWear(root);
        AddPrices(root);
        AddHandling(root);
        AddBudget(root);
        root["effort"] = "quick";
        AddCradles(root);
        AddBench(root);
        Json = root.ToJsonString();
    }

    /// <summary>The order's document.</summary>
    public string Json { get; }

    /// <summary>The order of a seed: always the same.</summary>
    public static RandomOrder Of(int seed) => new(seed, isSmall: false);

    /// <summary>The same kinds of orders with fewer panels, and seldom what multiplies the plans one order takes: for many thousands of them.</summary>
    public static RandomOrder Small(int seed) => new(seed, isSmall: true);

    // The sure boards: large, unlimited, thin and thick, of one or two kinds. Lines ask only for these.
    private JsonArray Boards()
    {
        var boards = new JsonArray();
        string[] kinds = Chance(40) ? ["hardboard", "plywood"] : ["hardboard"];
        foreach (string kind in kinds)
        {
            foreach (int thickness in (int[])[0, 1])
            {
                boards.Add(Board($"{kind}-{thickness}", kind, thickness, unit.Sheets[^1], Money(1200, 3400)));
                sure.Add((kind, thickness));
            }
        }

        for (int i = Between(0, 2); i > 0; i--)
        {
            var board = Board($"more-{i}", Pick<string?>("hardboard", "plywood", null), Between(0, 1), Pick(unit.Sheets), Money(400, 1500));
            Maybe(board, 30, "forSale", () => Between(0, 4));
            boards.Add(board);
        }

        for (int i = Between(0, 3); i > 0; i--)
        {
            boards.Add(Offcut($"off-{i}"));
        }

        return boards;
    }

    private JsonObject Board(string id, string? kind, int thickness, (int Width, int Height) size, JsonNode price)
    {
        var board = new JsonObject
        {
            ["id"] = id,
            ["thickness"] = unit.Thicknesses[thickness],
            ["width"] = Length(size.Width),
            ["height"] = Length(size.Height),
            ["price"] = price,
        };
        Maybe(board, kind is null ? 0 : 100, "kind", () => kind);
        Maybe(board, 40, "name", () => $"Board {id}");
        Maybe(board, 20, "edgeTrim", () => unit.Fine(Between(0, 4)));
        Maybe(board, 20, "grain", () => Pick("none", "height"));
        Maybe(board, 25, "onHand", () => Between(0, 3));
        Maybe(board, 25, "value", () => Money(0, 900));
        return board;
    }

    private JsonObject Offcut(string id)
    {
        var (width, height) = unit.Sheets[0];
        var offcut = new JsonObject
        {
            ["id"] = id,
            ["kind"] = Pick("hardboard", "plywood"),
            ["thickness"] = unit.Thicknesses[Between(0, 1)],
            ["width"] = unit.Coarse(Between(width / 3, width)),
            ["height"] = unit.Coarse(Between(height / 3, height)),
            ["forSale"] = 0,
            ["onHand"] = Between(1, 2),
        };
        Maybe(offcut, 50, "value", () => Money(0, 400));
        Maybe(offcut, 50, "edgeTrim", () => 0);
        return offcut;
    }

    private JsonObject Panel(int number)
    {
        var (width, height) = Size();
        var panel = new JsonObject { ["width"] = width, ["height"] = height, ["quantity"] = Between(1, isSmall ? 6 : Chance(10) ? 60 : 12) };
        var (kind, thickness) = Pick([.. sure]);
        Maybe(panel, 50, "mark", () => $"M{number}");
        Maybe(panel, 20, "spares", () => Between(0, 2));
        Maybe(panel, 80, "surface", () => Pick("cloth", "cloth", "primed", "bare", "loose"));
        Maybe(panel, 25, "board", () => kind);
        Maybe(panel, 20, "thickness", () => unit.Thicknesses[thickness]);
        Maybe(panel, 25, "cloth", () => Pick("linen", "cotton"));
        Maybe(panel, 25, "mayTurn", () => Chance(40));
        if (Chance(65))
        {
            panel["shopPrice"] = Money(200, 3000);

            // About one order in fourteen: what to buy is planned some dozen times over, and takes most of the time of all orders.
            Maybe(panel, isSmall ? 1 : 2, "mayBuy", () => true);
        }

        return panel;
    }

    private JsonObject Wish(int number)
    {
        var (width, height) = Size();
        var wish = new JsonObject { ["mark"] = $"W{number}", ["width"] = width, ["height"] = height, ["atMost"] = Between(1, 8) };
        Maybe(wish, 60, "worth", () => Money(0, 500));
        Maybe(wish, 20, "mayTurn", () => false);
        Maybe(wish, 20, "surface", () => Pick("bare", "primed"));
        return wish;
    }

    private (JsonNode Width, JsonNode Height) Size()
    {
        var (width, height) = Pick(unit.Formats);
        return Chance(85)
            ? (Length(width), Length(height))
            : (unit.Coarse(Between(unit.Formats[0].Width, width)), unit.Coarse(Between(unit.Formats[0].Height, height)));
    }

    // Both kinds of cloth are always there without limit; one more may be limited.
    private void AddCloths(JsonObject root)
    {
        if (!root["panels"]!.AsArray().Any(panel => panel!["surface"]?.GetValue<string>() is "cloth" or "loose"))
        {
            return;
        }

        var cloths = new JsonArray { Cloth("linen"), Cloth("cotton") };
        if (Chance(30))
        {
            var more = Cloth(Pick("linen", "cotton"));
            more["id"] = "more";
            more["sale"]![more["sale"]!["by"]!.GetValue<string>() == "roll" ? "forSale" : "atMost"] = Between(0, 5);
            cloths.Add(more);
        }

        root["cloths"] = cloths;
    }

    private JsonObject Cloth(string kind)
    {
        var cloth = new JsonObject
        {
            ["id"] = kind,
            ["kind"] = kind,
            ["width"] = Length(Pick(unit.RollWidths)),
            ["sale"] = Chance(65)
                ? new JsonObject { ["by"] = "length", ["step"] = Length(Pick(unit.Steps)), ["price"] = Money(150, 3000) }
                : new JsonObject { ["by"] = "roll", ["length"] = Length(unit.RollLength), ["price"] = Money(5000, 20000) },
        };
        Maybe(cloth, 50, "selvedge", () => unit.Fine(Between(0, 4)));
        Maybe(cloth, 30, "warp", () => Pick("any", "height"));
        Maybe(cloth, 40, "remnants", () => List(Between(1, 3), Remnant));
        return cloth;
    }

    private JsonObject Remnant(int number)
    {
        var remnant = new JsonObject
        {
            ["id"] = $"r{number}",
            ["width"] = unit.Coarse(Between(unit.RollWidths[0] / 4, unit.RollWidths[0])),
            ["length"] = unit.Coarse(Between(unit.RollWidths[0] / 4, unit.RollWidths[0])),
        };
        Maybe(remnant, 30, "quantity", () => Between(1, 3));
        Maybe(remnant, 50, "value", () => Money(0, 600));
        return remnant;
    }

    private void AddLiquids(JsonObject root)
    {
        if (Chance(75))
        {
            root["adhesives"] = List(Between(1, 2), number => Liquid($"glue-{number}", coats: false));
        }

        if (Chance(75))
        {
            root["primers"] = List(Between(1, 2), number => Liquid($"ground-{number}", coats: true));
        }
    }

    private JsonObject Liquid(string id, bool coats)
    {
        var liquid = new JsonObject
        {
            ["id"] = id,
            ["coverage"] = new JsonObject { ["area"] = unit.CoveredArea, ["volume"] = Between(2, 9) * unit.CoverVolume },
            ["containers"] = new JsonArray
            {
                new JsonObject { ["volume"] = unit.Bottle, ["price"] = Money(300, 1200) },
                new JsonObject { ["volume"] = unit.Bottle * 4, ["price"] = Money(1200, 4000) },
            },
        };
        Maybe(liquid, coats ? 60 : 0, "coats", () => Between(1, 4));
        Maybe(liquid, 40, "onHand", () => unit.Bottle * Between(1, 9) / 8);
        Maybe(liquid, 40, "value", () => Money(0, 900));
        return liquid;
    }

    private void AddSettings(JsonObject root)
    {
        if (Chance(70))
        {
            var saw = new JsonObject();
            Maybe(saw, 60, "kerf", () => Pick<JsonNode>("1/8 in", "3/32 in", "3.2 mm", unit.Fine(1)));
            Maybe(saw, 40, "edgeTrim", () => unit.Fine(Between(0, 4)));
            Maybe(saw, 40, "undersize", () => Pick<JsonNode>("1/8 in", "1/16 in", "2 mm", unit.Fine(1)));
            Maybe(saw, 40, "smallestKept", () => new JsonArray { Length(unit.Formats[0].Width), Length(unit.Formats[1].Height) });
            root["saw"] = saw;
        }

        if (Chance(60))
        {
            var bench = new JsonObject();
            Maybe(bench, 60, "margin", () => Chance(50) ? unit.Fine(Between(1, 8)) : new JsonArray { unit.Fine(Between(1, 8)), unit.Fine(Between(1, 8)) });
            Maybe(bench, 40, "smallestCloth", () => new JsonArray { Length(unit.Formats[0].Width), Length(unit.Formats[1].Height) });
            Maybe(bench, 20, "pressHours", () => Between(1, 48));
            root["bench"] = bench;
        }

        Maybe(root, 20, "labour", () => new JsonObject { ["perHour"] = 7 * root["panels"]!.AsArray().Count });
        Maybe(root, 30, "overheads", () => List(Between(1, 3), number => new JsonObject { ["name"] = $"cost {number}", ["cost"] = Money(0, 5000) }));
    }

    private void AddWear(JsonObject root)
    {
        Maybe(root, 30, "consumables", () => List(Between(1, 3), number => new JsonObject
        {
            ["name"] = $"worn {number}",
            ["per"] = Pick("sawMetre", "sawFoot", "clothMetre", "clothFoot", "panel"),
            ["price"] = Money(50, 6000),
            ["lasts"] = Between(1, 400) / 4m,
        }));
        Maybe(root, 30, "tools", () => List(Between(1, 2), number => new JsonObject
        {
            ["name"] = $"tool {number}",
            ["price"] = Money(500, 30000),
            ["spreadOver"] = Between(1, 300),
        }));
    }

    private void AddBench(JsonObject root)
    {
        if (!Chance(30))
        {
            return;
        }

        foreach (var panel in root["panels"]!.AsArray().Select(panel => panel!.AsObject()))
        {
            Maybe(panel, 25, "first", () => true);
            Maybe(panel, panel["surface"]?.GetValue<string>() == "cloth" ? 25 : 0, "mount", () => Pick("now", "later"));
        }

        foreach (var liquid in (JsonObject[])[.. Goods(root, "adhesives"), .. Goods(root, "primers")])
        {
            Maybe(liquid, 30, "faces", () => Between(1, 2));
            Maybe(liquid, 30, "thinning", () => Between(0, 30));
            Maybe(liquid, 30, "loss", () => Between(0, 20));
            Maybe(liquid, 20, "openMinutes", () => Between(1, 30));
            Maybe(liquid, 20, "dryHours", () => Between(0, 24));
            Maybe(liquid, 20, "base", () => Pick("water", "oil", "solvent"));
        }

        var bench = root["bench"]?.AsObject() ?? [];
        root["bench"] = bench;
        Maybe(bench, 30, "margin", () => new JsonArray { unit.Fine(Between(1, 8)), unit.Fine(Between(1, 8)), unit.Fine(Between(1, 8)), unit.Fine(Between(1, 8)) });
        Maybe(bench, 30, "shrinkage", () => Chance(50) ? Between(0, 5) : new JsonArray { Between(0, 5), Between(0, 5) });
        Maybe(bench, 30, "pressSpaces", () => Between(1, 5));
        Maybe(bench, 30, "stackHeight", () => Between(1, 12));
        var schedule = new JsonObject();
        Maybe(schedule, 50, "start", () => Pick("2026-12-01", "2027-03-26"));
        Maybe(schedule, 50, "days", () => new JsonArray { "monday", "wednesday", "saturday" });
        Maybe(schedule, 40, "from", () => Pick("07:30", "13:00"));
        Maybe(schedule, 40, "to", () => Pick("16:00", "24:00"));
        Maybe(schedule, 40, "hands", () => Between(1, 3));
        Maybe(schedule, 20, "zone", () => "Europe/Paris");
        root["schedule"] = schedule;
    }

    private static IEnumerable<JsonObject> Goods(JsonObject root, string list) =>
        root[list]?.AsArray().Select(one => one!.AsObject()) ?? [];

    // One strip is always long enough for any rail, without limit.
    private void AddCradles(JsonObject root)
    {
        if (!Chance(15))
        {
            return;
        }

        foreach (var panel in root["panels"]!.AsArray().Select(panel => panel!.AsObject()))
        {
            Maybe(panel, panel["surface"]?.GetValue<string>() == "loose" ? 0 : 60, "cradle", () => true);
            Maybe(panel, 30, "pack", () => 1);
        }

        int longest = Math.Max(unit.Sheets[^1].Width, unit.Sheets[^1].Height);
        root["strips"] = new JsonArray
        {
            new JsonObject { ["id"] = "long", ["length"] = Length(longest), ["price"] = Money(200, 900) },
            new JsonObject { ["id"] = "rests", ["length"] = unit.Coarse(Between(longest / 4, longest / 2)), ["forSale"] = 0, ["onHand"] = Between(1, 9), ["value"] = Money(0, 100) },
        };
        if (Chance(50))
        {
            var strength = new JsonObject();
            Maybe(strength, 40, "stripWidth", () => unit.Fine(Between(2, 8)));
            Maybe(strength, 40, "cradleInset", () => unit.Fine(Between(0, 4)));
            Maybe(strength, 40, "smallestStrip", () => Length(Between(longest / 20, longest / 8)));
            Maybe(strength, 40, "brace", () => true);
            root["strength"] = strength;
        }
    }

    // Lower prices for larger numbers, shops that charge, and tax.
    private void AddPrices(JsonObject root)
    {
        Maybe(root, 20, "tax", () => new JsonObject { ["percent"] = Between(1, 2500) / 100m });
        var priced = root["boards"]!.AsArray().Where(board => board!["forSale"]?.GetValue<int>() is not 0)
            .Concat((root["strips"]?.AsArray() ?? []).Where(strip => strip!["price"] is not null))
            .Concat((root["cloths"]?.AsArray() ?? []).Select(cloth => cloth!["sale"]))
            .Concat((root["adhesives"]?.AsArray() ?? []).Concat(root["primers"]?.AsArray() ?? []).SelectMany(liquid => liquid!["containers"]!.AsArray()));
        foreach (var good in Chance(Rarely(root, 25)) ? priced : [])
        {
            Maybe(good!.AsObject(), 25, "priceFrom", () => PriceFrom(decimal.Parse(good!["price"]!.ToJsonString(), CultureInfo.InvariantCulture)));
        }

        if (Chance(Rarely(root, 15)))
        {
            AddShops(root);
        }
    }

    // Panels that may be bought, prices that vary and limits of the saw each multiply the plans one order takes: seldom together.
    private static int Rarely(JsonObject root, int percent) =>
        root["panels"]!.AsArray().Any(panel => panel!["mayBuy"] is not null) ? percent / 5 : percent;

    // Enough for one panel of any order drawn here; rarely, since every choice of panels takes plans of its own.
    private void AddBudget(JsonObject root)
    {
        if (!Chance(2))
        {
            return;
        }

        root["budget"] = Money(40000, 90000);
        foreach (var panel in root["panels"]!.AsArray().Select(panel => panel!.AsObject()))
        {
            panel.Remove("spares");
            panel.Remove("mayBuy");
            Maybe(panel, 60, "worth", () => Money(100, 3000));
        }
    }

    private JsonArray PriceFrom(decimal price)
    {
        decimal unit = digits == 0 ? 1 : 100;
        var steps = new JsonArray();
        int count = 1;
        for (int i = Between(1, 2); i > 0; i--)
        {
            count += Between(1, 4);
            price = Math.Floor(price * unit * Between(60, 95) / 100) / unit;
            steps.Add(new JsonObject { ["count"] = count, ["price"] = digits == 0 ? JsonValue.Create((int)price) : JsonValue.Create(price) });
        }

        return steps;
    }

    private void AddShops(JsonObject root)
    {
        root["shops"] = List(Between(1, 2), number =>
        {
            var shop = new JsonObject { ["id"] = $"shop-{number}" };
            Maybe(shop, 80, "charge", () => Money(100, 2500));
            Maybe(shop, 50, "freeFrom", () => Money(500, 12000));
            return shop;
        });
        int shops = root["shops"]!.AsArray().Count;
        foreach (string list in (string[])["boards", "cloths", "adhesives", "primers", "strips"])
        {
            foreach (var good in root[list]?.AsArray() ?? [])
            {
                Maybe(good!.AsObject(), 60, "shop", () => $"shop-{Between(1, shops)}");
            }
        }
    }

    // What saw, person and car can handle: every panel can be made within it, if not always from every sheet.
    private void AddHandling(JsonObject root)
    {
        if (!Chance(Rarely(root, 30)))
        {
            return;
        }

        int side = unit.Sheets[0].Height;
        var saw = root["saw"]?.AsObject() ?? [];
        root["saw"] = saw;
        Maybe(saw, 50, "carry", () => Handled(side));
        Maybe(saw, 25, "largest", () => Handled(side));
        Maybe(saw, 25, "heaviest", () => Chance(30) ? $"{Between(4, 11)} kg" : Between(8, 24) * (unit.Name == "inch" ? 1 : 454));
        Maybe(saw, 30, "fenceReach", () => Pick<JsonNode>(side, side * 5 / 6));
        Maybe(saw, 40, "supplierKerf", () => Pick<JsonNode>("1/8 in", "4 mm", "2.4 mm"));
    }

    private JsonArray Handled(int side) => Pick<JsonArray>([side, side], [side * 5 / 8, side * 5 / 4], [side * 5 / 6, 2 * side]);

    private JsonNode Length(int length) => random.Next(8) switch
    {
        0 => unit.Text(length),
        1 => length.ToString(CultureInfo.InvariantCulture),
        _ => length,
    };

    private JsonNode Money(int least, int most) => digits == 0
        ? Between(least, most)
        : JsonValue.Create(Between(least, most) / 100m);

    private static JsonArray List(int count, Func<int, JsonObject> make) => [.. Enumerable.Range(1, count).Select(make)];

    private void Maybe(JsonObject parent, int percent, string name, Func<JsonNode?> make)
    {
        if (Chance(percent))
        {
            parent[name] = make();
        }
    }

    private int Between(int low, int high) => random.Next(low, high + 1);

    private bool Chance(int percent) => random.Next(100) < percent;

    private T Pick<T>(params IReadOnlyList<T> list) => list[random.Next(list.Count)];
}
