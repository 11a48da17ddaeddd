// Problem: lengths of one cloth are bought in whole steps, and each length's last step is rarely used up.
// Idea:    lengths of one cloth laid end to end are one length, cut apart from selvedge to selvedge. Bought in one,
//          only the sum has to be whole steps. They are joined where that saves a step; else they stay apart, which
//          keeps equal lengths equal.
// Cost:    linear.
using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Orders;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Cloth;

/// <summary>Joins lengths of one cloth where that saves steps.</summary>
internal static class StripJoiner
{
    /// <summary>Joins.</summary>
    /// <param name="patterns">The patterns.</param>
    /// <param name="pieceSizes">Per piece of the patterns: its size in steps of length.</param>
    public static ImmutableArray<ClothPattern> Join(
        ImmutableArray<ClothPattern> patterns, ImmutableArray<(long Width, long Height)> pieceSizes) =>
        [.. patterns.GroupBy(KeyOf).SelectMany(group => JoinGroup([.. group], pieceSizes))];

    // Remnants and rolls stand for themselves; all lengths of a cloth belong together.
    private static (string Cloth, string? Remnant, bool ByLength) KeyOf(ClothPattern pattern) =>
        (pattern.Stock.Cloth.Id, pattern.Stock.Remnant?.Id, pattern.Stock.Steps is not null);

    private static ImmutableArray<ClothPattern> JoinGroup(
        ImmutableArray<ClothPattern> group, ImmutableArray<(long Width, long Height)> pieceSizes)
    {
        var first = group[0].Stock;
        if (first.Steps is null || first.Cloth.Sale is not SaleByLength sale)
        {
            return group;
        }

        long length = group.Sum(pattern => pattern.Copies * SheetCutter.SizeOf(pattern.Block, pieceSizes, kerf: 0).Height);
        long steps = (length + sale.Step.Steps - 1) / sale.Step.Steps;
        return steps <= int.MaxValue && steps < group.Sum(pattern => (long)pattern.Copies * pattern.Stock.Steps!.Value)
            ? [new ClothPattern(ClothStock.Of(first.Cloth, sale, (int)steps), EndToEnd(group), Copies: 1)]
            : group;
    }

    private static Block EndToEnd(ImmutableArray<ClothPattern> group)
    {
        ImmutableArray<Block> blocks = [.. group.SelectMany(pattern => Enumerable.Repeat(pattern.Block, pattern.Copies))];
        return blocks.Length == 1 ? blocks[0] : new StackBlock(Axis.Y, [.. blocks.SelectMany(Rows)]);
    }

    private static IEnumerable<Block> Rows(Block block) =>
        block is StackBlock { Axis: Axis.Y } stack ? stack.Parts : [block];
}
