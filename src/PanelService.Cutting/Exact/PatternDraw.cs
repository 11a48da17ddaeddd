// Problem: many different patterns, none holding more of a piece than is wanted, that waste no more than a plan may in all.
// Idea:    those known, cut back to what is wanted, and others drawn from the exact programme's table (PatternSampler) until
//          draws bring nothing new.
// Source:  see PatternSampler.
// Cost:    some ten microseconds a draw.
// Not:     all of them (CompletePatterns).
using PanelService.Cutting.Many;
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Exact;

/// <summary>Draws patterns close to the best of their stock.</summary>
internal sealed class PatternDraw
{
    // So many draws of a stock in a row may bring nothing new.
    private const int MostIdleDraws = 100;

    // Looks so many cuts over in a unit of work.
    private const int CutsOfUnit = 200;

    private readonly Model _model;
    private readonly ColumnPool _pool;
    private readonly Pricing _pricing;
    private readonly WorkMeter _work;
    private readonly PatternSampler _sampler = new(new SeededRandom(5));

    /// <summary>Makes it.</summary>
    /// <param name="model">The order.</param>
    /// <param name="pool">Columns known.</param>
    /// <param name="pricing">Whose programmes are drawn from.</param>
    /// <param name="work">Where work is counted.</param>
    public PatternDraw(Model model, ColumnPool pool, Pricing pricing, WorkMeter work) =>
        (_model, _pool, _pricing, _work) = (model, pool, pricing, work);

    /// <summary>Draws one pattern from the programme as it was last filled.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="values">The values it was filled with.</param>
    /// <param name="loss">About how much less than the best the pattern may be worth.</param>
    /// <returns>The pattern; null where there is none, or the programme is not exact.</returns>
    public Column? One(int stock, int[] values, long loss) => One(stock, values, loss, _model.Demand);

    private Column? One(int stock, int[] values, long loss, int[] open)
    {
        _work.Cancellation.ThrowIfCancellationRequested();
        var (width, height, _, _) = _model.Stock(stock);
        long before = _sampler.Looked;
        int[] rest = [.. open];
        var block = _pricing.Programme(stock) is { } programme
            ? _sampler.Draw(programme, values, (width, height), rest, (int)Math.Min(int.MaxValue, loss))
            : null;
        _work.Spend((_sampler.Looked - before) / CutsOfUnit);
        return block is null ? null : new Column(stock, [.. open.Select((d, t) => d - rest[t])], block);
    }

    /// <summary>Patterns that waste no more than there is to waste.</summary>
    /// <param name="vector">The worth of one of each type, and the most that a pattern of each stock is worth.</param>
    /// <param name="demand">None holds more than this.</param>
    /// <param name="counts">Only stocks there are some of.</param>
    /// <param name="spare">The most that a pattern may waste.</param>
    /// <param name="draws">At most so many of each stock, on top of those known.</param>
    public ColumnPool Many(DualVector vector, int[] demand, int[] counts, long spare, int draws)
    {
        var drawn = Known(vector, demand, counts, spare);
        long[] most = draws > 0 ? _pricing.Evaluate(vector.Values) : [];
        for (int s = 0; s < counts.Length; s++)
        {
            int idle = 0;
            for (int d = 0; d < draws && idle < MostIdleDraws && counts[s] > 0; d++)
            {
                long loss = most[s] - vector.Best[s] + (spare * (d % 100) / 100);
                bool added = One(s, vector.Values, loss, demand) is { } column && vector.Loss(column) <= spare && drawn.Add(column);
                idle = added ? 0 : idle + 1;
            }
        }

        return drawn;
    }

    /// <summary>The columns known, without what they hold too much.</summary>
    private ColumnPool Known(DualVector vector, int[] demand, int[] counts, long spare)
    {
        var pool = new ColumnPool();
        foreach (var known in _pool.Columns.Where(c => counts[c.Stock] > 0 && vector.Loss(c) <= spare))
        {
            _work.Cancellation.ThrowIfCancellationRequested();
            if (Within(known, demand) is { } column && vector.Loss(column) <= spare)
            {
                pool.Add(column);
            }
        }

        return pool;
    }

    /// <summary>The column without what it holds beyond the demand.</summary>
    private static Column? Within(Column column, int[] demand)
    {
        int[] room = [.. demand];
        return BlockMath.Prune(column.Block, room) is { } block
            ? new Column(column.Stock, [.. demand.Select((d, t) => d - room[t])], block)
            : null;
    }
}
