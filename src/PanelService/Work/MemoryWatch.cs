using Microsoft.Extensions.Options;

namespace PanelService.Work;

/// <summary>
/// Ends searches while the process holds more memory than it may: the longest first, one at each look, with the best plan it
/// has. What is only garbage, or held for speed alone, goes before anything is ended. A plan that takes far more still while it is
/// written out is given up.
/// </summary>
internal sealed class MemoryWatch(IOptions<PlanningOptions> options, TimeProvider clock, PlanStore plans) : IDisposable
{
    private const long Mebibyte = 1024 * 1024;

    // So much more than the limit is let be no longer than it takes to write an ordinary plan out.
    private const double FarOver = 1.1;
    private const int LooksToWrite = 6;

    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(250);

    private readonly Lock _gate = new();
    private readonly List<Search> _searches = [];
    private ITimer? _timer;
    private bool _wasOver;
    private int _looking;

    /// <summary>Watches over a search until the answer is disposed of.</summary>
    /// <param name="end">Ends it; called at most once, on no thread of its own.</param>
    /// <param name="giveUp">Gives it up, plan and all; called so as well, and only after <paramref name="end"/>.</param>
    internal IDisposable Begin(Action end, Action giveUp)
    {
        var search = new Search(this, end, giveUp);
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

        long most = options.Value.MostMegabytes * Mebibyte;
        long used = Environment.WorkingSet;
        bool isOver = used > most;
        if (isOver && !_wasOver)
        {
            plans.Shed();
            GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
        }
        else if (isOver && !EndLongest() && used > most * FarOver)
        {
            GiveUpLongest();
        }

        _wasOver = isOver;
        Volatile.Write(ref _looking, 0);
    }

    private bool EndLongest()
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
        return longest is not null;
    }

    // One at each look: those behind the one that is found are not counted this time.
    private void GiveUpLongest()
    {
        Search? longest;
        lock (_gate)
        {
            longest = _searches.Find(search => ++search.Looks == LooksToWrite);
        }

        longest?.GiveUp();
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

    private sealed class Search(MemoryWatch watch, Action end, Action giveUp) : IDisposable
    {
        internal bool IsEnded { get; set; }

        /// <summary>How often it was seen to take far too much after it was ended.</summary>
        internal int Looks { get; set; }

        internal void End() => end();

        internal void GiveUp() => giveUp();

        public void Dispose() => watch.Leave(this);
    }
}
