using PanelService.Cutting.Search;

namespace PanelService.Cutting.Many;

/// <summary>Orders of many different pieces, one or two of each: patterns for several copies are of little use there.</summary>
internal static class ManyOrders
{
    private const int FewestTypes = 13;
    private const int MostPieces = 5_000;

    // Beyond this a type is asked for so often that patterns repeat, and column generation does better.
    private const double MostOfEach = 3;

    /// <summary>
    /// Searches by ruin and recreate that go on side by side, from different seeds. Not as many as there are cores: the plan must
    /// not depend on that.
    /// </summary>
    public const int Looks = 2;

    /// <summary>One search takes this part of the work that is left.</summary>
    public const int Share = 5;

    /// <summary>Whether an order is of this nature.</summary>
    /// <param name="model">The order.</param>
    public static bool Suits(Model model) =>
        model.Types.Length >= FewestTypes && Pieces(model) <= MostOfEach * model.Types.Length && CanHold(model);

    /// <summary>Whether the search can be used at all: not too many pieces, sizes within its reach.</summary>
    /// <param name="model">The order.</param>
    public static bool CanHold(Model model) => Pieces(model) <= MostPieces && PieceTable.Holds(model);

    private static long Pieces(Model model) => model.Demand.Sum(d => (long)d);

    /// <summary>A quick lower bound of the price.</summary>
    /// <param name="model">The order; <see cref="PieceTable.Holds"/> it.</param>
    /// <param name="work">Where work is counted.</param>
    /// <param name="proof">Told what the bound rests on.</param>
    /// <returns>The bound; 0 where nothing quick is known.</returns>
    public static long Bound(Model model, WorkMeter work, ProofRecord proof)
    {
        if (model.Stocks.Length != 1)
        {
            return 0;
        }

        var count = DualFeasibleBound.Count(new PieceTable(model), out long looked, work.Cancellation);
        work.Spend(looked / 400);
        proof.Add(count);
        return count.Sheets * model.Stock(0).Price;
    }

    /// <summary>Looks for a cheaper plan that keeps to a part of a plan.</summary>
    /// <param name="model">The order; <see cref="PieceTable.Holds"/> it.</param>
    /// <param name="kept">The part kept; it holds nothing too often.</param>
    /// <param name="request">What is known of the whole order, and how much to do.</param>
    /// <param name="work">Where work is counted.</param>
    /// <param name="found">Told of every plan found, each cheaper than the one before.</param>
    public static void ImproveRest(
        Model model, List<ColumnUse> kept, ManyRequest request, WorkMeter work, Action<List<ColumnUse>> found)
    {
        int[] open = [.. model.Demand];
        int[] left = [.. StockBox.Of(model).Most];
        long price = 0;
        foreach (var (column, copies) in kept)
        {
            StockBox.TakeOff(left, column.Stock, copies);
            price += model.Stock(column.Stock).Price * copies;
            column.TakeOff(open, copies);
        }

        if (open.Sum() is > 0 and <= MostPieces)
        {
            var meter = work.Part(request.Units);
            var search = new GoalSearch(new PieceTable(model, open, left), request.Seed);
            search.Advance(request.Below - price, request.Bound - price, meter).ForEach(uses => found([.. kept, .. uses]));
            work.Join(meter);
        }
    }

    /// <summary>Looks for cheaper plans.</summary>
    /// <param name="model">The order; <see cref="PieceTable.Holds"/> it.</param>
    /// <param name="request">What is known, and how much to do.</param>
    /// <param name="work">Where work is counted.</param>
    /// <param name="found">Told of every plan found, each cheaper than the one before.</param>
    public static void Improve(Model model, ManyRequest request, WorkMeter work, Action<List<ColumnUse>> found)
    {
        var meter = work.Part(request.Units);
        new GoalSearch(new PieceTable(model), request.Seed).Advance(request.Below, request.Bound, meter).ForEach(found);
        work.Join(meter);
    }

    /// <summary>Searches for one order that differ in their seeds alone.</summary>
    /// <param name="model">The order; <see cref="PieceTable.Holds"/> it.</param>
    /// <param name="count">How many; the seeds are 1, 2 and so on.</param>
    public static GoalSearch[] Searches(Model model, int count)
    {
        var table = new PieceTable(model);
        return [.. Enumerable.Range(1, count).Select(seed => new GoalSearch(table, (ulong)seed))];
    }
}

/// <summary>What a search for many different pieces is asked.</summary>
/// <param name="Below">Only plans cheaper than this are wanted; <see cref="long.MaxValue"/>: any plan.</param>
/// <param name="Bound">No plan is cheaper: the search ends there.</param>
/// <param name="Units">The work allowed, as <see cref="WorkMeter"/> counts.</param>
/// <param name="Seed">Another seed gives another search.</param>
internal sealed record ManyRequest(long Below, long Bound, long Units, ulong Seed);
