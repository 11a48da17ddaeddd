using System.Collections.Immutable;
using System.Text.Json.Nodes;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Store.Stock;
using PanelService.Validation;

namespace PanelService.Shelves;

/// <summary>
/// The goods a plan's order named, as they are after its cut: what it said was on hand has been booked, so of each good only
/// what is for sale stays, and the heaps in stock come to it under their pencil ids, by which <see cref="GoodsFiller"/> knows
/// them again. A list that the order left out stays left out: it is the shelf's.
/// </summary>
internal sealed class ReplacementGoods(JsonObject order, Plan plan, ImmutableArray<StockItem> stock)
{
    private const string Id = "id";
    private const string Value = "value";
    private const string OnHand = "onHand";
    private const string ForSale = "forSale";
    private const string Remnants = "remnants";
    private const int Decimals = 6;

    private readonly LengthUnit _units = plan.Order.Units;

    internal void Renew()
    {
        Renew("boards", WireLimits.Goods, IsForSale, AddBoard, StockSort.Board, StockSort.Offcut);
        Renew("cloths", WireLimits.Goods, cloth => cloth["sale"] is not null, AddCloth, StockSort.Cloth, StockSort.Remnant);
        Renew("strips", WireLimits.Goods, IsForSale, AddStrip, StockSort.Strip);
        RenewLiquids("adhesives", "adhesive", StockSort.Adhesive);
        RenewLiquids("primers", "primer", StockSort.Primer);
    }

    private void Renew(string list, int most, Func<JsonObject, bool> isForSale, Action<JsonArray, StockItem> add, params StockSort[] sorts)
    {
        if (order[list] is not JsonArray goods)
        {
            return;
        }

        foreach (JsonObject good in goods.OfType<JsonObject>().ToArray())
        {
            _ = good.Remove(OnHand);
            _ = good.Remove(Value);
            _ = good.Remove(Remnants);
            if (!isForSale(good))
            {
                _ = goods.Remove(good);
            }
        }

        foreach (StockItem heap in stock.Where(item => sorts.Contains(item.Sort) && IsCounted(item)))
        {
            if (goods.Count < most)
            {
                add(goods, heap);
            }
        }
    }

    // A line may name its liquid, and the liquid is now called by the pencil id of what is there.
    private void RenewLiquids(string list, string asked, StockSort sort)
    {
        var renamed = new Dictionary<string, string>(StringComparer.Ordinal);
        var poured = new Dictionary<StockGood, JsonObject>();
        Renew(list, WireLimits.Liquids, liquid => liquid["containers"] is JsonArray { Count: > 0 }, (liquids, heap) => AddLiquid(liquids, heap, poured, renamed), sort);
        if (order[list] is not JsonArray all)
        {
            return;
        }

        foreach (JsonObject line in order["panels"]!.AsArray().OfType<JsonObject>())
        {
            if (Text(line, asked) is { } id)
            {
                line[asked] = renamed.GetValueOrDefault(id, id);
                if (!all.OfType<JsonObject>().Any(liquid => Text(liquid, Id) == Text(line, asked)))
                {
                    _ = line.Remove(asked);
                }
            }
        }
    }

    private void AddBoard(JsonArray boards, StockItem heap) => boards.Add(new JsonObject
    {
        [Id] = heap.Id,
        ["name"] = HeapReader.NameOf(heap, "board"),
        ["kind"] = heap.Good.Kind,
        ["thickness"] = Rounded(heap.Good.Thickness),
        ["width"] = Rounded(heap.Good.Width),
        ["height"] = Rounded(heap.Good.Height),
        [ForSale] = 0,
        [OnHand] = heap.Quantity,
        [Value] = ValueOf(heap),
        ["edgeTrim"] = Rounded(heap.Good.EdgeTrim),
        ["grain"] = heap.Good.Grain == Grain.Height ? "height" : "none",
    });

    // A remnant of a cloth of the order lies with it; ids alone do not tell, since every ticket may have a "cloth-1" of its own.
    private void AddCloth(JsonArray cloths, StockItem heap)
    {
        Length usable = HeapReader.Usable(heap.Good);
        var remnant = new JsonObject
        {
            [Id] = heap.Id,
            ["width"] = Rounded(usable),
            ["length"] = Rounded(heap.Good.Length),
            ["quantity"] = heap.Quantity,
            [Value] = ValueOf(heap),
        };
        if (cloths.OfType<JsonObject>().FirstOrDefault(cloth => IsOf(cloth, heap) && Text(cloth, "kind") == heap.Good.Kind) is { } known)
        {
            JsonArray remnants = known[Remnants] as JsonArray ?? [];
            known[Remnants] = remnants;
            remnants.Add(remnant);
            return;
        }

        cloths.Add(new JsonObject
        {
            [Id] = heap.Id,
            ["name"] = HeapReader.NameOf(heap, "cloth"),
            ["kind"] = heap.Good.Kind,
            ["width"] = Rounded(usable),
            [Remnants] = new JsonArray(remnant),
            ["warp"] = heap.Good.Grain == Grain.Height ? "height" : "any",
        });
    }

    private void AddStrip(JsonArray strips, StockItem heap) => strips.Add(new JsonObject
    {
        [Id] = heap.Id,
        ["name"] = HeapReader.NameOf(heap, "strip"),
        ["length"] = Rounded(heap.Good.Length),
        [ForSale] = 0,
        [OnHand] = heap.Quantity,
        [Value] = ValueOf(heap),
    });

    // What is there and what can be bought of one liquid must be one good: two would be alternatives, and neither fill up the other.
    private void AddLiquid(JsonArray liquids, StockItem heap, Dictionary<StockGood, JsonObject> poured, Dictionary<string, string> renamed)
    {
        if (heap.Good is not { CoverageArea: { } area, CoverageVolume: { } covering })
        {
            return;
        }

        StockGood alike = heap.Good with { Note = null };
        JsonObject? known = poured.GetValueOrDefault(alike) ?? liquids.OfType<JsonObject>().FirstOrDefault(liquid => IsOf(liquid, heap));
        if (known is null)
        {
            known = new JsonObject
            {
                [Id] = heap.Id,
                ["name"] = HeapReader.NameOf(heap, "liquid"),
                ["coats"] = heap.Good.Coats,
                ["coverage"] = new JsonObject { ["area"] = Rounded(area.In(_units)), ["volume"] = Rounded(covering.In(_units)) },
                ["containers"] = new JsonArray(),
            };
            liquids.Add(known);
        }
        else if (Text(known, Id) == heap.Good.Supply)
        {
            renamed[heap.Good.Supply!] = heap.Id;
            known[Id] = heap.Id;
        }

        poured[alike] = known;
        known[OnHand] = VolumeOf(heap) + (known[OnHand]?.GetValue<decimal>() ?? 0);
        known[Value] = ValueOf(heap) + (known[Value]?.GetValue<decimal>() ?? 0);
    }

    private bool IsCounted(StockItem heap) => heap.Currency == plan.Order.Currency.Code || heap.Value.Minor == 0;

    private static bool IsForSale(JsonObject good) => good[ForSale] is not JsonValue most || !most.TryGetValue(out int number) || number != 0;

    private static bool IsOf(JsonObject good, StockItem heap) => Text(good, Id) == heap.Good.Supply && Text(good, "name") == heap.Good.Name;

    private static string? Text(JsonObject good, string field) => good[field] is JsonValue value && value.TryGetValue(out string? text) ? text : null;

    private decimal ValueOf(StockItem heap) => heap.Value.In(plan.Order.Currency.MinorDigits);

    // Never more than there is, or the plan could not be booked for a few nanolitres.
    private decimal VolumeOf(StockItem heap)
    {
        decimal near = Rounded(StockQuantity.VolumeOf(heap.Quantity).In(_units));
        return StockQuantity.Of(Volume.From(near, _units)) <= heap.Quantity ? near : near - 0.000001m;
    }

    private decimal? Rounded(Length? length) => length is { } known ? Rounded(known.In(_units)) : null;

    // Divided by a one with as many zeros as a decimal can carry: drops trailing zeros.
    private static decimal Rounded(decimal value) => Math.Round(value, Decimals, MidpointRounding.AwayFromZero) / 1.0000000000000000000000000000m;
}
