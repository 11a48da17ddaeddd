namespace PanelService.Work;

/// <summary>
/// A bounded queue in which clients take turns: whoever has put in twenty waits no shorter, and keeps nobody else
/// waiting longer, than whoever has put in one. No client takes the last quarter of the room.
/// </summary>
/// <typeparam name="T">What waits.</typeparam>
/// <param name="room">How many may wait, 1 or more.</param>
internal sealed class FairQueue<T>(int room) : IDisposable
{
    private readonly Lock _gate = new();
    private readonly SemaphoreSlim _there = new(0);
    private readonly Dictionary<string, Queue<T>> _waiting = new(StringComparer.Ordinal);
    private readonly Queue<string> _turns = new();
    private readonly int _share = Math.Max(1, room - (room / 4));

    /// <summary>How many wait.</summary>
    internal int Count => _there.CurrentCount;

    /// <summary>Puts one in; false where there is no room, or none for this client.</summary>
    /// <param name="client">Whose it is.</param>
    /// <param name="item">What waits.</param>
    internal bool TryAdd(string client, T item)
    {
        lock (_gate)
        {
            bool first = !_waiting.TryGetValue(client, out Queue<T>? line);
            if (_waiting.Values.Sum(queue => queue.Count) >= room || line?.Count >= _share)
            {
                return false;
            }

            if (first)
            {
                _waiting.Add(client, line = new Queue<T>());
                _turns.Enqueue(client);
            }

            line!.Enqueue(item);
        }

        _ = _there.Release();
        return true;
    }

    /// <summary>Takes the oldest of the client whose turn it is, once there is one.</summary>
    /// <param name="cancellation">Gives up waiting.</param>
    internal async Task<T> TakeAsync(CancellationToken cancellation)
    {
        await _there.WaitAsync(cancellation);
        lock (_gate)
        {
            string client = _turns.Dequeue();
            Queue<T> line = _waiting[client];
            T item = line.Dequeue();
            if (line.Count > 0)
            {
                _turns.Enqueue(client);
            }
            else
            {
                _ = _waiting.Remove(client);
            }

            return item;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _there.Dispose();
}
