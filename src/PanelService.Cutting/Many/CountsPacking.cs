// Problem: a whole plan from given counts of a few stocks.
// Idea:    ruin and recreate from just these: no price is to be weighed, all that counts is what is still out, and where few
//          sheets are to be full to the last it finds what patterns do not: these are priced without regard to the demand, or
//          with it, which is dear. Failing that, the sheets of its best packings hold no more than is wanted, and are good
//          patterns for a relaxation and a cover of the same counts.
// Source:  see GoalSearch.
// Cost:    what it is allowed; half of it by the clock, on two cores.
// Not:     a proof that there is none.
using PanelService.Cutting.Exact;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Many;

/// <summary>Packs an order into given counts of stocks; goes on where it stands.</summary>
internal sealed class CountsPacking
{
    // Of more sheets parts are covered by patterns, and every brief look at them takes a fifth of a second.
    private const int MostStocks = CoverChoice.FewStocks;

    private readonly GoalSearch[] _searches;
    private readonly ColumnPool[] _sheets;
    private readonly ColumnPool _pool;
    private readonly long _price;

    private CountsPacking(Model model, ColumnPool pool, int[] counts, long price)
    {
        (_pool, _price) = (pool, price);
        var table = new PieceTable(model, model.Demand, counts);
        _sheets = [.. Enumerable.Range(0, ManyOrders.Looks).Select(_ => new ColumnPool())];
        _searches = [.. _sheets.Select((sheets, look) => new GoalSearch(table, (ulong)look + 1, sheets))];
    }

    /// <summary>Makes one, where it can be used.</summary>
    /// <param name="model">The order.</param>
    /// <param name="pool">Gets the sheets of the best packings.</param>
    /// <param name="counts">Counts per stock.</param>
    /// <param name="price">Their price.</param>
    /// <returns>The packing; null: sizes beyond its reach, or more sheets or pieces than it is good for.</returns>
    public static CountsPacking? Of(Model model, ColumnPool pool, int[] counts, long price) =>
        counts.Sum() <= MostStocks && ManyOrders.CanHold(model) ? new CountsPacking(model, pool, counts, price) : null;

    /// <summary>Goes on with the search.</summary>
    /// <param name="units">The work allowed to each of the searches.</param>
    /// <param name="work">Where work is counted.</param>
    /// <returns>A plan within the counts; null: none found yet.</returns>
    public IReadOnlyList<ColumnUse>? Advance(long units, WorkMeter work)
    {
        List<ColumnUse>? plan = null;
        SideBySide.Run(
            ManyOrders.Looks,
            units,
            work,
            (look, meter) => _searches[look].Advance(_price + 1, _price, meter),
            found => (plan = found.FirstOrDefault(plans => plans.Count > 0)?[^1]) is null);
        foreach (var column in _sheets.SelectMany(sheets => sheets.Columns))
        {
            _pool.Add(column);
        }

        return plan;
    }
}
