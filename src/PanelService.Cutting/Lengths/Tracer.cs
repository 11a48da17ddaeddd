using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>Reads patterns off the programmes that were last filled. On coarse grids those that are sure to fit.</summary>
internal sealed class Tracer
{
    private readonly GoodsModel _goods;
    private readonly WorkMeter _work;
    private readonly bool[] _lowerFilled;
    private int[] _values = [];

    /// <summary>Makes it.</summary>
    /// <param name="goods">The goods.</param>
    /// <param name="work">Where work is counted.</param>
    public Tracer(GoodsModel goods, WorkMeter work) =>
        (_goods, _work, _lowerFilled) = (goods, work, new bool[goods.Model.Classes.Length]);

    /// <summary>The programmes were filled with other values.</summary>
    /// <param name="values">The values.</param>
    public void Refilled(int[] values)
    {
        _values = values;
        Array.Clear(_lowerFilled);
    }

    /// <summary>The best pattern of a rectangle of a good; null where it is worth nothing.</summary>
    /// <param name="good">The good.</param>
    /// <param name="length">The rectangle's length.</param>
    public Block? Pattern(int good, long length)
    {
        var level = _goods.LevelOf(good);
        long width = _goods.Goods[good].Width;
        var block = level.Upper.Pattern(width, length);
        if (block is null || level.IsExact)
        {
            return block;
        }

        var (w, l) = BlockMath.Size(block, _goods.Model.Sizes, kerf: 0);
        return w <= width && l <= length ? block : Lower(good).Pattern(width, length);
    }

    /// <summary>The programme whose patterns fit.</summary>
    /// <param name="good">The good.</param>
    public ValueProgramme Lower(int good)
    {
        var level = _goods.LevelOf(good);
        int index = _goods.Model.ClassOf[good];
        if (!level.IsExact && !_lowerFilled[index])
        {
            _work.Spend(20 + (level.Lower.Fill(_values, long.MaxValue / 2, long.MaxValue / 2, _work.Cancellation) / 5000));
            _lowerFilled[index] = true;
        }

        return level.Lower;
    }
}
