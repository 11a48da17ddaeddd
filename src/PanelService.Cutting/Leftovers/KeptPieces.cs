using System.Collections.Immutable;

namespace PanelService.Cutting.Leftovers;

/// <summary>
/// What the largest leftover kept of every sheet is worth, the dearest first: its area's share of what its stock costs. What costs
/// nothing and is not cut into is kept whole.
/// </summary>
/// <param name="Worths">A worth a sheet; 0 where nothing is kept.</param>
/// <param name="Areas">Their areas, the largest first: what costs nothing is worth nothing, and is kept all the same.</param>
/// <param name="Sizes">How many different sizes are cut for it: about as many settings of the fence.</param>
internal sealed record KeptPieces(ImmutableArray<double> Worths, ImmutableArray<double> Areas, int Sizes)
{
    /// <summary>The leftovers of a plan as it is laid out.</summary>
    /// <param name="problem">What was planned.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="frameOf">The sheets that the stocks are; null: it is not cut.</param>
    /// <returns>The worths; null: some pattern cannot be cut.</returns>
    public static KeptPieces? Of(CuttingProblem problem, CuttingResult plan, Func<int, SheetFrame?> frameOf)
    {
        ImmutableArray<(long Width, long Height)> sizes = [.. problem.Pieces.Select(piece => (piece.Width, piece.Height))];
        var worths = new List<double>();
        var areas = new List<double>();
        var cut = new HashSet<long>();
        foreach (var use in plan.Patterns)
        {
            if (frameOf(use.Stock) is not { } frame)
            {
                continue;
            }

            if (SheetCutter.TryCut(use.Block, frame with { ForLeftover = use.ForLeftover }, sizes) is not { } cuts)
            {
                return null;
            }

            double area = cuts.Leftovers
                .Where(leftover => !leftover.FromTrim && frame.Keeps(leftover.At.Width, leftover.At.Height))
                .Select(leftover => frame.AreaOf(leftover.At))
                .DefaultIfEmpty()
                .Max();
            cut.UnionWith(SizesOf(cuts));
            worths.AddRange(Enumerable.Repeat(problem.Stocks[use.Stock].Price * area / frame.Area, use.Copies));
            areas.AddRange(Enumerable.Repeat(area, use.Copies));
        }

        areas.AddRange(Whole(problem, plan));
        return new KeptPieces([.. worths.OrderDescending()], [.. areas.OrderDescending()], cut.Count);
    }

    /// <summary>The areas of what costs nothing and is not cut into, as far as some plan may cut into it; where there is no end of it none is missed.</summary>
    private static IEnumerable<double> Whole(CuttingProblem problem, CuttingResult plan)
    {
        long pieces = problem.Pieces.Sum(piece => (long)piece.Demand);
        return problem.Stocks.SelectMany((stock, s) => Enumerable.Repeat(
            (double)stock.Width * stock.Height,
            SparedStocks.IsFree(stock) && stock.Limit is { } limit ? (int)Math.Min(limit, pieces) - plan.Patterns.Where(use => use.Stock == s).Sum(use => use.Copies) : 0));
    }

    /// <summary>The sizes at which a sheet is cut: what is cut again along the same axis can be cut from the larger part at once.</summary>
    private static IEnumerable<long> SizesOf(SheetCuts sheet)
    {
        var again = sheet.Cuts.Select(cut => (cut.Workpiece, cut.Axis)).ToHashSet();
        foreach (var cut in sheet.Cuts.Where(cut => !cut.IsTrim))
        {
            long size = cut.At - (cut.Axis == Axis.X ? cut.Workpiece.X : cut.Workpiece.Y);
            var near = cut.Axis == Axis.X ? cut.Workpiece with { Width = size } : cut.Workpiece with { Height = size };
            if (!again.Contains((near, cut.Axis)))
            {
                yield return size;
            }
        }
    }

    /// <summary>What an area of a stock is worth.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="area">The area.</param>
    public static double WorthOf(Stock stock, double area) => stock.Price * area / ((double)stock.Width * stock.Height);

    /// <summary>Whether the first leftover that differs in worth is worth more here; where none differs, the same of areas, then fewer sizes.</summary>
    /// <param name="other">The leftovers of another plan.</param>
    public bool IsBetterThan(KeptPieces other)
    {
        int more = Compare(Worths, other.Worths);
        more = more == 0 ? Compare(Areas, other.Areas) : more;
        return more > 0 || (more == 0 && Sizes < other.Sizes);
    }

    private static int Compare(ImmutableArray<double> one, ImmutableArray<double> other) =>
        one.Zip(other, (own, others) => own.CompareTo(others)).FirstOrDefault(more => more != 0);
}
