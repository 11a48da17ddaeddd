using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Boards;
using PanelService.Planning.Cloth;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Sizes;

/// <summary>Turns patterns into places and cuts at the chosen sizes, pieces numbered by line.</summary>
internal static class Layouts
{
    /// <summary>Lays out the boards.</summary>
    /// <param name="plan">The patterns.</param>
    /// <param name="sizes">Per line: the size it is cut to.</param>
    /// <param name="kerf">What one cut turns to dust.</param>
    public static ImmutableArray<LaidOut<BoardStock>> Of(BoardPlan plan, ImmutableArray<CutSize> sizes, Length kerf)
    {
        ImmutableArray<(long Width, long Height)> pieces = [.. plan.LineOf.Select(line => Steps(sizes[line]))];
        return
        [
            .. plan.Patterns.Select(pattern => new LaidOut<BoardStock>(
                pattern.Stock,
                ByLine(SheetCutter.Cut(pattern.Block, pattern.Stock.ToFrame(kerf) with { ForLeftover = pattern.ForLeftover }, pieces), plan.LineOf),
                pattern.Copies)),
        ];
    }

    /// <summary>Lays out the cloth; places are counted from the selvedge's inner edge.</summary>
    /// <param name="plan">The patterns.</param>
    /// <param name="sizes">Per line: the size its panel is cut to.</param>
    /// <param name="bench">The margins.</param>
    public static ImmutableArray<LaidOut<ClothStock>> Of(ClothPlan plan, ImmutableArray<CutSize> sizes, BenchSettings bench)
    {
        ImmutableArray<(long Width, long Height)> pieces =
            [.. plan.LineOf.Select(line => Steps(ClothFit.WithMargins(sizes[line], bench)))];
        return
        [
            .. plan.Patterns.Select(pattern => new LaidOut<ClothStock>(
                pattern.Stock,
                ByLine(SheetCutter.Cut(pattern.Block, pattern.Stock.ToFrame(bench) with { ForLeftover = pattern.ForLeftover }, pieces), plan.LineOf),
                pattern.Copies)),
        ];
    }

    private static (long Width, long Height) Steps(CutSize size) => (size.Width.Steps, size.Height.Steps);

    private static SheetCuts ByLine(SheetCuts cuts, ImmutableArray<int> lineOf) =>
        cuts with { Pieces = [.. cuts.Pieces.Select(piece => piece with { Piece = lineOf[piece.Piece] })] };
}
