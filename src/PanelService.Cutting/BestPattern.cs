// Problem: what is the most valuable pattern of one stock, without limits of the pieces' counts or within them?
// Idea:    without limits one programme over the normal points; within them penalties, labels and, where sizes have too many sums,
//          a coarse grid: a choice among the algorithms of Exact and Patterns.
// Source:  see ValueProgramme, BoundedPattern and Grid.
// Cost:    see there.
using System.Collections.Immutable;
using PanelService.Cutting.Exact;
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting;

/// <summary>The most valuable way of cutting one stock rectangle.</summary>
public static class BestPattern
{
    /// <summary>
    /// The most valuable guillotine pattern with any number of each piece up to its demand's room for points:
    /// give every piece a demand of <see cref="int.MaxValue"/> for the unconstrained problem. Exact.
    /// </summary>
    /// <param name="width">Usable width.</param>
    /// <param name="height">Usable height.</param>
    /// <param name="pieces">The pieces; the first entry of <see cref="Piece.On"/> says how each may lie.</param>
    /// <param name="values">The value of one of each, 0 or more; no pattern's total may reach 2³¹.</param>
    /// <param name="kerf">What one cut turns to dust.</param>
    /// <returns>The best value, and a block of that value (null where nothing of value fits).</returns>
    public static (long Value, Block? Block) Unlimited(
        long width, long height, ImmutableArray<Piece> pieces, ImmutableArray<int> values, long kerf)
    {
        var grid = Grid.Exact(new GridArea(pieces, [.. pieces.Select(p => p.On[0])], width, height, kerf));
        if (grid.Shapes.Length == 0)
        {
            return (0, null);
        }

        var programme = new ValueProgramme(grid);
        programme.Fill(values.AsSpan());
        return (programme.Value(width, height), programme.Pattern(width, height));
    }

    /// <summary>What no guillotine pattern is worth more than, in as much work as one likes.</summary>
    /// <param name="width">Usable width.</param>
    /// <param name="height">Usable height.</param>
    /// <param name="pieces">The pieces; the first entry of <see cref="Piece.On"/> says how each may lie.</param>
    /// <param name="values">The value of one of each, 0 or more; no pattern's total may reach 2³¹.</param>
    /// <param name="kerf">What one cut turns to dust.</param>
    /// <param name="mostWork">The most work: cuts tried, a hundred million in a good tenth of a second.</param>
    /// <returns>The value of <see cref="Unlimited"/> where that is so little work; else a bound that sizes rounded down give.</returns>
    public static long AtMost(
        long width, long height, ImmutableArray<Piece> pieces, ImmutableArray<int> values, long kerf, long mostWork)
    {
        var grid = Grid.Bounding(new GridArea(pieces, [.. pieces.Select(p => p.On[0])], width, height, kerf), mostWork);
        if (grid.Shapes.Length == 0 && grid.Tiny.Length == 0)
        {
            return 0;
        }

        var programme = new ValueProgramme(grid);
        programme.Fill(values.AsSpan());
        return programme.Value(width, height);
    }

    // A programme may be as much work as this for every unit of the effort.
    private const long VisitsOfUnit = 2_000;

    /// <summary>
    /// The most valuable guillotine pattern that holds no more of each piece than its demand.
    /// </summary>
    /// <param name="width">Usable width.</param>
    /// <param name="height">Usable height.</param>
    /// <param name="pieces">The pieces; <see cref="Piece.Demand"/> is the most that counts; the first entry of
    /// <see cref="Piece.On"/> says how each may lie.</param>
    /// <param name="values">The value of one of each, 0 or more; no pattern's total may reach 2³¹.</param>
    /// <param name="kerf">What one cut turns to dust.</param>
    /// <param name="effort">How much work may be done.</param>
    /// <param name="cancellation">Ends it early with what was found.</param>
    /// <returns>The best value found, a block of that value (null where nothing of value fits), and a bound that no
    /// pattern exceeds: equal to the value unless the work was done before the end, or sizes have so many sums that they were rounded.</returns>
    public static (long Value, Block? Block, long UpperBound) Bounded(
        long width,
        long height,
        ImmutableArray<Piece> pieces,
        ImmutableArray<int> values,
        long kerf,
        Effort effort = Effort.Steady,
        CancellationToken cancellation = default)
    {
        var area = new GridArea(pieces, [.. pieces.Select(p => p.On[0])], width, height, kerf);
        int[] demand = [.. pieces.Select(p => p.Demand)];
        var work = new WorkMeter(CuttingPlanner.WorkFor(effort), cancellation);
        long most = CuttingPlanner.WorkFor(effort) * VisitsOfUnit;

        // Sizes of tens of thousands of sums would take the machine's memory: what is found among coarser ones is cut as well, and bounded.
        var fitting = Grid.Fitting(area, most, CancellationToken.None);
        var answer = BoundedPattern.Solve(fitting, values.AsSpan(), demand, work);
        if (!fitting.IsExact)
        {
            var bounding = Grid.Bounding(area, most, CancellationToken.None);
            long tiny = bounding.Tiny.Sum(one => (long)values[one.Piece] * demand[one.Piece]);
            var own = new WorkMeter(CuttingPlanner.WorkFor(effort), cancellation);
            return (answer.Value, answer.Block, BoundedPattern.Solve(bounding, values.AsSpan(), demand, own).UpperBound + tiny);
        }

        return (answer.Value, answer.Block, answer.UpperBound);
    }
}
