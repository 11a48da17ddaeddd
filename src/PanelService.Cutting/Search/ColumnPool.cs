namespace PanelService.Cutting.Search;

/// <summary>All columns found so far, each once.</summary>
internal sealed class ColumnPool
{
    private readonly List<Column> _columns = [];
    private readonly HashSet<Key> _known = [];

    /// <summary>The columns in the order they were found.</summary>
    public IReadOnlyList<Column> Columns => _columns;

    /// <summary>Adds a column unless one with the same stock and counts is there.</summary>
    /// <param name="column">The column.</param>
    /// <returns>Whether it was new.</returns>
    public bool Add(Column column)
    {
        if (!_known.Add(new Key(column.Stock, column.Counts)))
        {
            return false;
        }

        _columns.Add(column);
        return true;
    }

    private readonly struct Key(int stock, int[] counts) : IEquatable<Key>
    {
        private readonly int _stock = stock;
        private readonly int[] _counts = counts;

        public bool Equals(Key other) => _stock == other._stock && _counts.AsSpan().SequenceEqual(other._counts);

        public override bool Equals(object? obj) => obj is Key other && Equals(other);

        public override int GetHashCode()
        {
            var hash = new HashCode();
            hash.Add(_stock);
            foreach (int count in _counts)
            {
                hash.Add(count);
            }

            return hash.ToHashCode();
        }
    }
}
