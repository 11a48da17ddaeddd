namespace PanelService.Cutting.Lengths;

/// <summary>
/// A list that grows by a part at a time. One in a single array doubles: to clear and copy some hundred megabytes takes longer than
/// a stop may take to be heard.
/// </summary>
/// <typeparam name="T">What it holds.</typeparam>
internal sealed class ChunkedList<T>
{
    private const int Bits = 13;
    private const int Mask = (1 << Bits) - 1;

    private readonly List<T[]> _chunks = [];

    /// <summary>How many there are.</summary>
    public int Count { get; private set; }

    /// <summary>One of them.</summary>
    /// <param name="index">From 0 on.</param>
    public ref readonly T this[int index] => ref _chunks[index >> Bits][index & Mask];

    /// <summary>Puts one at the end.</summary>
    /// <param name="item">It.</param>
    public void Add(in T item)
    {
        if (Count >> Bits == _chunks.Count)
        {
            _chunks.Add(new T[1 << Bits]);
        }

        _chunks[Count >> Bits][Count & Mask] = item;
        Count++;
    }
}
