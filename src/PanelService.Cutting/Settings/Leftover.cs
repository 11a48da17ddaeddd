using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Settings;

/// <summary>How much of a pattern's leftovers is worth keeping, as it is first laid out.</summary>
/// <param name="model">Whose patterns.</param>
/// <param name="smallest">What a leftover must hold, either way round.</param>
internal sealed class Leftover(Model model, (long Width, long Height) smallest)
{
    /// <summary>The area of the leftovers kept, in units of the smallest that is kept, a hundred to one: whole numbers that do not overflow.</summary>
    /// <param name="column">The pattern.</param>
    public long KeptOf(Column column)
    {
        var stock = model.Stock(column.Stock);
        double unit = Math.Max(1, (double)smallest.Width * smallest.Height) / 100;
        return (long)(KeptOf(column.Block, stock.Width, stock.Height) / unit);
    }

    // Of the two ways of cutting a block free, the one that keeps more.
    private double KeptOf(Block block, long width, long height)
    {
        var (ownWidth, ownHeight) = BlockMath.Size(block, model.Sizes, model.Kerf);
        var (right, over) = (width - ownWidth - model.Kerf, height - ownHeight - model.Kerf);
        double kept = Math.Max(Kept(right, height) + Kept(ownWidth, over), Kept(right, ownHeight) + Kept(width, over));
        return block is not StackBlock stack
            ? kept
            : kept + stack.Parts.Sum(part =>
            {
                var (partWidth, partHeight) = BlockMath.Size(part, model.Sizes, model.Kerf);
                return stack.Axis == Axis.X ? KeptOf(part, partWidth, ownHeight) : KeptOf(part, ownWidth, partHeight);
            });
    }

    private double Kept(long width, long height) =>
        Math.Min(width, height) >= Math.Min(smallest.Width, smallest.Height) && Math.Max(width, height) >= Math.Max(smallest.Width, smallest.Height)
            ? (double)width * height
            : 0;
}
