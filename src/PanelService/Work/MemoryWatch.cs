using Microsoft.Extensions.Options;

namespace PanelService.Work;

/// <summary>
/// Ends searches while the process holds more memory than it may: the longest first, one at each look, with the best plan it
/// has. What is only garbage, or held for speed alone, goes before anything is ended.
/// </summary>
internal sealed class MemoryWatch(IOptions<PlanningOptions> options, TimeProvider clock, PlanStore plans) : IDisposable
{
    private const long Mebibyte = 1024 * 1024;

    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(250);

    private readonly Lock _gate = new();
    private readonly List<Search> _searches = [];
    private ITimer? _timer;
    private bool _wasOver;
    private int _looking;

    /// <summary>Watches over a search until the answer is disposed of.</summary>
    /// <param name="end">Ends it; called at most once, on no thread of its own.</param>
    internal IDisposable Begin(Action end)
    {
        var search = new Search(this, end);
        lock (_gate)
        {
            _searches.Add(search);
            _timer ??= clock.CreateTimer(_ => LookOver(), null, Look, Look);
        }

        return search;
    }

    /// <inheritdoc/>
    public void Dispose() => _timer?.Dispose();

    private void LookOver()
    {
        // Collecting may take longer than the time between two looks.
        if (Interlocked.Exchange(ref _looking, 1) == 1)
        {
            return;
        }

        bool isOver = Environment.WorkingSet > options.Value.MostMegabytes * Mebibyte;
        if (isOver && !_wasOver)
        {
            plans.Shed();
            GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
        }
        else if (isOver)
        {
            EndLongest();
        }

        _wasOver = isOver;
        Volatile.Write(ref _looking, 0);
    }

    private void EndLongest()
    {
        Search? longest;
        lock (_gate)
        {
            longest = _searches.Find(search => !search.IsEnded);
            if (longest is not null)
            {
                longest.IsEnded = true;
            }
        }

        longest?.End();
    }

    // Nothing is looked at while nothing is searched.
    private void Leave(Search search)
    {
        lock (_gate)
        {
            _ = _searches.Remove(search);
            if (_searches.Count == 0)
            {
                _timer?.Dispose();
                _timer = null;
            }
        }
    }

    private sealed class Search(MemoryWatch watch, Action end) : IDisposable
    {
        internal bool IsEnded { get; set; }

        internal void End() => end();

        public void Dispose() => watch.Leave(this);
    }
}
