using System.Diagnostics;

namespace PanelService.Benchmarks.Running;

/// <summary>Measures one piece of work.</summary>
public static class Timing
{
    /// <summary>Does the work.</summary>
    /// <param name="work">What is measured.</param>
    /// <returns>Its result, the processor time of the whole process, and the time on the clock.</returns>
    public static (T Result, TimeSpan Cpu, TimeSpan Clock) Of<T>(Func<T> work)
    {
        using var process = Process.GetCurrentProcess();
        var before = process.TotalProcessorTime;
        var clock = Stopwatch.StartNew();
        var result = work();
        clock.Stop();
        process.Refresh();
        return (result, process.TotalProcessorTime - before, clock.Elapsed);
    }
}
