using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Lengths;

/// <summary>A rectangle of a good and what is cut from it.</summary>
/// <param name="Good">The good.</param>
/// <param name="Block">What is cut from it, in types of the model.</param>
internal sealed record FilledGood(int Good, Block Block)
{
    /// <summary>How many whole steps it takes; 1 for a sheet.</summary>
    /// <param name="goods">The goods.</param>
    public int Count(GoodsModel goods)
    {
        var good = goods.Goods[Good];
        long length = BlockMath.Size(Block, goods.Model.Sizes, kerf: 0).Height;
        return good.ByLength ? (int)((length + good.Extent - 1) / good.Extent) : 1;
    }

    /// <summary>What it costs.</summary>
    /// <param name="goods">The goods.</param>
    public long Price(GoodsModel goods) => goods.Goods[Good].PriceOf(Count(goods));
}
