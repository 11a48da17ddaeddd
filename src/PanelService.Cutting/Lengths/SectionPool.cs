using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Lengths;

/// <summary>All ways of cutting found so far; of those that hold the same the shortest for each width.</summary>
internal sealed class SectionPool
{
    private readonly GoodsModel _goods;
    private readonly Dictionary<string, int> _known = [];
    private readonly List<Section> _sections = [];

    /// <summary>Starts empty.</summary>
    /// <param name="goods">The goods.</param>
    public SectionPool(GoodsModel goods) => _goods = goods;

    /// <summary>The sections in the order they were found.</summary>
    public IReadOnlyList<Section> All => _sections;

    /// <summary>Adds a way of cutting.</summary>
    /// <param name="grid">The class of goods.</param>
    /// <param name="block">How it lies.</param>
    /// <returns>The section, or a shorter one known that holds the same in no more width.</returns>
    public Section Add(int grid, Block block)
    {
        var (width, length) = BlockMath.Size(block, _goods.Model.Sizes, kerf: 0);
        int[] counts = BlockMath.Counts(block, _goods.Model.Types.Length);
        string key = $"{grid}:{width}:{string.Join(',', counts)}";
        var section = new Section(grid, width, length, counts, block);
        if (_known.TryGetValue(key, out int at))
        {
            _sections[at] = _sections[at].Length <= length ? _sections[at] : section;
            return _sections[at];
        }

        _known.Add(key, _sections.Count);
        _sections.Add(section);
        return section;
    }

    /// <summary>Adds a way of cutting and its parts from selvedge to selvedge.</summary>
    /// <param name="grid">The class of goods.</param>
    /// <param name="block">How it lies.</param>
    public Section AddWithParts(int grid, Block block)
    {
        if (block is StackBlock { Axis: Axis.Y } stack)
        {
            foreach (var part in stack.Parts)
            {
                Add(grid, part);
            }
        }

        return Add(grid, block);
    }
}
