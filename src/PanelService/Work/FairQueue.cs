namespace PanelService.Work;

/// <summary>
/// A bounded queue in which clients take turns: whoever has put in twenty waits no shorter, and keeps nobody else
/// waiting longer, than whoever has put in one. No client takes the last quarter of the room, and what nobody wants any
/// more takes none of it.
/// </summary>
/// <typeparam name="T">What waits.</typeparam>
/// <param name="room">How many may wait, 1 or more.</param>
/// <param name="isGone">Whether nobody wants one any more; null: they are always wanted.</param>
internal sealed class FairQueue<T>(int room, Predicate<T>? isGone = null) : IDisposable
{
    private readonly Lock _gate = new();
    private readonly SemaphoreSlim _there = new(0);
    private readonly Dictionary<string, Queue<T>> _waiting = new(StringComparer.Ordinal);
    private readonly int _share = Math.Max(1, room - (room / 4));
    private Queue<string> _turns = new();

    /// <summary>How many wait.</summary>
    internal int Count
    {
        get
        {
            lock (_gate)
            {
                return Waiting;
            }
        }
    }

    /// <summary>Whether there is no room for another, of whichever client.</summary>
    internal bool IsFull
    {
        get
        {
            lock (_gate)
            {
                return Waiting >= room && !(DropGone() && Waiting < room);
            }
        }
    }

    /// <summary>Whether there is no room for another of a client: it would be refused.</summary>
    /// <param name="client">Whose it would be.</param>
    internal bool IsFullFor(string client)
    {
        lock (_gate)
        {
            return !HasRoomFor(client) && !(DropGone() && HasRoomFor(client));
        }
    }

    private int Waiting => _waiting.Values.Sum(queue => queue.Count);

    /// <summary>Puts one in; false where there is no room, or none for this client.</summary>
    /// <param name="client">Whose it is.</param>
    /// <param name="item">What waits.</param>
    internal bool TryAdd(string client, T item)
    {
        lock (_gate)
        {
            if (IsFullFor(client))
            {
                return false;
            }

            if (!_waiting.TryGetValue(client, out Queue<T>? line))
            {
                _waiting.Add(client, line = new Queue<T>());
                _turns.Enqueue(client);
            }

            line.Enqueue(item);
        }

        _ = _there.Release();
        return true;
    }

    /// <summary>Takes the oldest of the client whose turn it is, once there is one.</summary>
    /// <param name="cancellation">Gives up waiting.</param>
    internal async Task<T> TakeAsync(CancellationToken cancellation)
    {
        while (true)
        {
            await _there.WaitAsync(cancellation);
            lock (_gate)
            {
                // None: the one that was there has been dropped since.
                if (_turns.TryDequeue(out string? client))
                {
                    return TakeOf(client);
                }
            }
        }
    }

    private bool HasRoomFor(string client) =>
        Waiting < room && (!_waiting.TryGetValue(client, out Queue<T>? line) || line.Count < _share);

    private T TakeOf(string client)
    {
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

    // Looked for only where room is short. Whether there were any.
    private bool DropGone()
    {
        if (isGone is null)
        {
            return false;
        }

        int before = Waiting;
        foreach ((string client, Queue<T> line) in _waiting.ToArray())
        {
            var wanted = new Queue<T>(line.Where(item => !isGone(item)));
            if (wanted.Count > 0)
            {
                _waiting[client] = wanted;
            }
            else
            {
                _ = _waiting.Remove(client);
            }
        }

        _turns = new Queue<string>(_turns.Where(_waiting.ContainsKey));
        return Waiting < before;
    }

    /// <inheritdoc/>
    public void Dispose() => _there.Dispose();
}
