using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>The parts known, each once.</summary>
/// <param name="model">Rectangles as stocks, and the pieces.</param>
/// <param name="isLong">Whether a stock's rectangles take sections by their length, or one pattern each.</param>
internal sealed class PartPool(Model model, Func<int, bool> isLong)
{
    private readonly HashSet<string> _known = [];
    private readonly List<Part> _parts = [];

    /// <summary>The parts in the order they were found.</summary>
    public IReadOnlyList<Part> All => _parts;

    /// <summary>Adds what a block is for a stock: of a long one its sections one by one.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="block">How it lies.</param>
    /// <returns>Whether there was anything new.</returns>
    public bool Add(int stock, Block block)
    {
        if (!isLong(stock) || block is not StackBlock { Axis: Axis.Y } stack)
        {
            return AddOne(stock, block);
        }

        bool any = false;
        foreach (var part in stack.Parts)
        {
            any |= AddOne(stock, part);
        }

        return any;
    }

    private bool AddOne(int stock, Block block)
    {
        int[] counts = BlockMath.Counts(block, model.Types.Length);
        long length = BlockMath.Size(block, model.Sizes, kerf: 0).Height;
        if (!_known.Add($"{stock}:{(isLong(stock) ? length : 0)}:{string.Join(',', counts)}"))
        {
            return false;
        }

        _parts.Add(new Part(stock, length, counts, block));
        return true;
    }
}
