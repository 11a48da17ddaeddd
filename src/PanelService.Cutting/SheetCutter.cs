using System.Collections.Immutable;

namespace PanelService.Cutting;

/// <summary>Turns an arrangement into places, numbered cuts and leftovers.</summary>
public static class SheetCutter
{
    /// <summary>Lays a block out on a sheet: trimming cuts first, then every cut after the one that makes its workpiece.</summary>
    /// <param name="block">What is to be cut.</param>
    /// <param name="frame">The sheet.</param>
    /// <param name="pieceSizes">Width and height as cut of every piece of the problem, by index.</param>
    /// <returns>Cuts, pieces and leftovers; leftovers as few and as large as the block allows.</returns>
    /// <exception cref="ArgumentException">The block does not fit the trimmed sheet.</exception>
    public static SheetCuts Cut(Block block, SheetFrame frame, ImmutableArray<(long Width, long Height)> pieceSizes) =>
        throw new NotImplementedException();
}
