using System.Collections.Immutable;
using System.Text.Json.Nodes;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;
using PanelService.Store.Cuts;
using PanelService.Store.Plans;
using PanelService.Store.Stock;
using PanelService.Wire.Orders;

namespace PanelService.Shelves;

/// <summary>
/// An order for the panels that are missing once some were spoiled: the plan's own order with just these, spares counted
/// first. Goods that it left out stay left out; of boards that it named, those for sale stay, and heaps in stock come to them.
/// </summary>
internal static class ReplacementOrder
{
    private const string Title = "title";

    /// <summary>The order; null where enough are good.</summary>
    internal static JsonObject? Of(FinishedPlan plan, ImmutableArray<Spoiling> spoiled, ImmutableArray<StockItem> stock)
    {
        JsonObject order = JsonNode.Parse(plan.OrderDocument)!.AsObject();
        JsonArray missing = Missing(plan.Plan, order["panels"]!.AsArray(), spoiled);
        if (missing.Count == 0)
        {
            return null;
        }

        order[Title] = $"{order[Title]?.GetValue<string>() ?? "Batch"}: replacements";
        order["panels"] = missing;
        order.Remove("wishes");
        ForSaleOnly(order, "boards", "forSale", "onHand", "value");
        ForSaleOnly(order, "cloths", null, "remnants");
        ForSaleOnly(order, "adhesives", null, "onHand", "value");
        ForSaleOnly(order, "primers", null, "onHand", "value");
        ForSaleOnly(order, "strips", "forSale", "onHand", "value");
        AddHeaps(order, plan.Plan, stock);
        return order;
    }

    private static JsonArray Missing(Plan plan, JsonArray lines, ImmutableArray<Spoiling> spoiled)
    {
        string[] marks = Marks.GiveOut([.. lines.Select(line => line?["mark"]?.GetValue<string>())]);
        var missing = new JsonArray();
        for (int index = 0; index < marks.Length; index++)
        {
            PanelResult panel = plan.Panels.First(one => one.Line.Mark == marks[index]);
            int good = panel.Made + panel.Bought - spoiled.Where(one => one.Mark == marks[index]).Sum(one => one.Count);
            if (good < panel.Line.Quantity)
            {
                JsonObject line = lines[index]!.DeepClone().AsObject();
                line["mark"] = marks[index];
                line["quantity"] = panel.Line.Quantity - good;
                line.Remove("spares");
                missing.Add(line);
            }
        }

        return missing;
    }

    // What the order said was on hand has been booked in by the cut, and is in stock now.
    private static void ForSaleOnly(JsonObject order, string list, string? limit, params string[] onHand)
    {
        if (order[list] is not JsonArray goods)
        {
            return;
        }

        foreach (JsonObject good in goods.OfType<JsonObject>().ToArray())
        {
            foreach (string field in onHand)
            {
                good.Remove(field);
            }

            bool isNotSold = (limit is not null && good[limit] is JsonValue most && most.TryGetValue(out int number) && number == 0)
                || (list == "cloths" && good["sale"] is null)
                || (list is "adhesives" or "primers" && good["containers"] is JsonArray { Count: 0 });
            if (isNotSold)
            {
                goods.Remove(good);
            }
        }
    }

    private static void AddHeaps(JsonObject order, Plan plan, ImmutableArray<StockItem> stock)
    {
        if (order["boards"] is not JsonArray boards)
        {
            return;
        }

        LengthUnit units = plan.Order.Units;
        int digits = plan.Order.Currency.MinorDigits;
        foreach (StockItem heap in stock.Where(item => item.Sort is StockSort.Board or StockSort.Offcut && item.Currency == plan.Order.Currency.Code))
        {
            boards.Add(new JsonObject
            {
                ["id"] = heap.Id,
                ["name"] = $"{heap.Id}, {heap.Good.Name ?? heap.Good.Kind ?? "board"}",
                ["kind"] = heap.Good.Kind,
                ["thickness"] = Rounded(heap.Good.Thickness, units),
                ["width"] = Rounded(heap.Good.Width, units),
                ["height"] = Rounded(heap.Good.Height, units),
                ["forSale"] = 0,
                ["onHand"] = heap.Quantity,
                ["value"] = heap.Value.In(digits),
                ["edgeTrim"] = Rounded(heap.Good.EdgeTrim, units),
                ["grain"] = heap.Good.Grain == Planning.Orders.Grain.Height ? "height" : "none",
            });
        }
    }

    private static decimal? Rounded(Length? length, LengthUnit units) =>
        length is { } known ? Math.Round(known.In(units), 6, MidpointRounding.AwayFromZero) : null;
}
