namespace PanelService.Wire.Reading;

/// <summary>
/// What is wrong with a request: the JSON path of each field, in the client's casing, to what is wrong there and what
/// would be right. Paths stand in the order they were found.
/// </summary>
internal sealed class Faults
{
    // A body of nothing but unknown fields is answered, not mirrored.
    private const int Most = 200;

    private readonly OrderedDictionary<string, List<string>> _byPath = new(StringComparer.Ordinal);

    internal bool Any => _byPath.Count > 0;

    internal void Add(string path, string message)
    {
        if (!_byPath.TryGetValue(path, out List<string>? messages))
        {
            if (_byPath.Count >= Most)
            {
                return;
            }

            _byPath.Add(path, messages = []);
        }

        if (messages.Count < Most && !messages.Contains(message))
        {
            messages.Add(message);
        }
    }

    internal bool At(string path) => _byPath.ContainsKey(path);

    internal Dictionary<string, string[]> ToDictionary() =>
        _byPath.ToDictionary(f => f.Key, f => f.Value.ToArray(), StringComparer.Ordinal);
}
