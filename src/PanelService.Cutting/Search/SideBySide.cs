// Problem: several strategies look for the same thing; which of them is lucky is not known before. All cores are to be
//          used, and the same order at the same effort gives the same plan on any number of them.
// Idea:    every strategy advances by a slice of work on a state and a meter of its own, then all are waited for, and
//          what they found is looked at in their fixed order. Nobody is told anything within a slice, so it does not
//          matter who came first, or whether they took turns on one core.
// Source:  bulk synchronous steps: Valiant, Communications of the ACM 33 (1990).
// Cost:    waiting for the slowest of each slice; slices grow from two to sixteen milliseconds.
// Not:     faster than one core where there is only one.
using System.Runtime.ExceptionServices;

namespace PanelService.Cutting.Search;

/// <summary>Advances strategies in slices of work.</summary>
internal static class SideBySide
{
    private const long FirstSlice = 2_000;
    private const long LongestSlice = 16_000;

    /// <summary>Advances all strategies until they are told to end or the work allowed is done.</summary>
    /// <param name="strategies">How many there are.</param>
    /// <param name="units">The work allowed to each; the first slice is advanced even where it is none.</param>
    /// <param name="work">Where their work is counted.</param>
    /// <param name="advance">Advances one until its meter is exhausted. Called on several threads at once, for different
    /// strategies: it changes nothing that two of them see.</param>
    /// <param name="joined">Gets what each found, in their order, after every slice; whether to go on.</param>
    /// <typeparam name="T">What a strategy finds in a slice.</typeparam>
    public static void Run<T>(int strategies, long units, WorkMeter work, Func<int, WorkMeter, T> advance, Func<T[], bool> joined)
    {
        long slice = Math.Min(FirstSlice, units);
        bool more = true;
        while (more)
        {
            var meters = Enumerable.Range(0, strategies).Select(_ => work.Part(slice)).ToArray();
            var found = new T[strategies];
            All(strategies, work.Cores, i => found[i] = advance(i, meters[i]));
            Array.ForEach(meters, work.Join);
            units -= slice;
            more = joined(found) && units > 0 && !work.Exhausted;
            slice = Math.Min(Math.Min(2 * slice, LongestSlice), units);
        }
    }

    /// <summary>
    /// Does all, as many at a time as there are cores. Threads of its own, not the pool's: on Linux a thread takes over the
    /// priority of the one that starts it, so that a search that gives way to others does so with all its strategies.
    /// </summary>
    private static void All(int count, int cores, Action<int> advance)
    {
        var failures = new ExceptionDispatchInfo?[count];
        for (int first = 0; first < count; first += cores)
        {
            Thread[] others = [.. Enumerable.Range(first + 1, Math.Min(cores, count - first) - 1).Select(i => new Thread(() => Guarded(i)))];
            Array.ForEach(others, thread => thread.Start());
            Guarded(first);
            Array.ForEach(others, thread => thread.Join());
        }

        failures.FirstOrDefault(failure => failure is not null)?.Throw();

        void Guarded(int i)
        {
            try
            {
                advance(i);
            }
            catch (Exception failure)
            {
                failures[i] = ExceptionDispatchInfo.Capture(failure);
            }
        }
    }
}
