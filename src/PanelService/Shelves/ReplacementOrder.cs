using System.Collections.Immutable;
using System.Text.Json.Nodes;
using PanelService.Planning.Plans;
using PanelService.Store.Cuts;
using PanelService.Store.Plans;
using PanelService.Store.Stock;
using PanelService.Wire.Orders;

namespace PanelService.Shelves;

/// <summary>
/// An order for the panels that are missing once some were spoiled: the plan's own order with just these, spares counted
/// first. Goods that it left out stay left out; of those that it named, what is for sale stays, and what is in stock comes to them.
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
        new ReplacementGoods(order, plan.Plan, stock).Renew();
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
}
