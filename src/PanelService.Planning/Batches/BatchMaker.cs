using System.Collections.Immutable;
using PanelService.Planning.Boards;
using PanelService.Planning.Cloth;
using PanelService.Planning.Liquids;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Strips;

namespace PanelService.Planning.Batches;

/// <summary>Plans a batch for a given decision what is bought; remembers what it has planned. Lives for one order.</summary>
internal sealed class BatchMaker(Order order, Search search)
{
    private readonly Dictionary<string, Batch> _known = [];

    /// <summary>Per line: how many are wanted in all.</summary>
    public ImmutableArray<int> Wanted { get; } = [.. order.Panels.Select(line => line.Wanted)];

    /// <summary>Plans what is not bought.</summary>
    /// <param name="bought">Per line: how many are bought, at most what is wanted.</param>
    public Batch Make(ImmutableArray<int> bought)
    {
        string key = string.Join(',', bought);
        if (!_known.TryGetValue(key, out var batch))
        {
            batch = Plan(bought);
            _known.Add(key, batch);
        }

        return batch;
    }

    private Batch Plan(ImmutableArray<int> bought)
    {
        ImmutableArray<int> made = [.. Wanted.Zip(bought, (wanted, count) => wanted - count)];
        var shop = order.Panels.Zip(bought).Aggregate(
            Money.Zero, (sum, pair) => sum + ((pair.First.ShopPrice ?? Money.Zero) * pair.Second));

        // These are soon planned, so whoever listens to the others hears what the whole batch costs.
        var liquids = LiquidPlanner.Plan(order, made);
        var strips = StripPlanner.Plan(order, made, search.Cancellation);
        var others = search.After(liquids.Spent + strips.Spent + shop, liquids.LeastPossible + strips.LeastPossible + shop);
        var boards = BoardPlanner.Plan(order, made, ready: [], ClothPlanner.IsWanted(order, made) ? others.OfPart() : others);
        var cloth = ClothPlanner.Plan(order, made, ready: [], others.After(boards.Outcome.Spent, boards.Outcome.LeastPossible));
        return new Batch(made, bought, boards, cloth, liquids, strips, shop);
    }
}
