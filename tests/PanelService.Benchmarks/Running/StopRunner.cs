using System.Diagnostics;
using System.Globalization;
using PanelService.Benchmarks.Suites;
using PanelService.Cutting;

namespace PanelService.Benchmarks.Running;

/// <summary>Stops searches at random moments and measures how long they take to come back.</summary>
public static class StopRunner
{
    /// <summary>Runs.</summary>
    /// <param name="options">The command line.</param>
    public static IEnumerable<Measurement> Run(Options options)
    {
        var random = new Xorshift(9_000);
        var delays = new List<double>();
        foreach (var one in CaseFilter.Run(Cases(options.Data), one => one.Name, one => Stopped(one, random, delays), options))
        {
            yield return one;
        }

        double[] sorted = [.. delays.Order()];
        if (sorted.Length > 0)
        {
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{sorted.Length} stopped; delay ms: median {sorted[sorted.Length / 2]:0.0}, 95 % {sorted[sorted.Length * 95 / 100]:0.0}, worst {sorted[^1]:0.0}; late by more than 50 ms: {sorted.Count(d => d > 50)}"));
        }
    }

    // Of every nature, and such as take long.
    private static CuttingCase[] Cases(string? data) =>
        [
            .. StudioOrders.MixedBoards().Take(60),
            .. StudioOrders.Large(),
            .. OddFormats.All(),
            .. StudioOrders.Small().Take(20),
            .. data is null ? [] : PublishedSheets.Furniture(data),
            .. data is null ? [] : PublishedSheets.Packing(data).Where((_, i) => i % 10 == 0),
        ];

    private static Measurement Stopped(CuttingCase one, Xorshift random, List<double> delays)
    {
        int after = random.Between(1, 700);
        using var source = new CancellationTokenSource();
        long asked = 0;
        var (result, cpu, clock) = Timing.Of(() =>
        {
            // A thread of its own, so that no pool's delay is measured; it does nothing but wait and ask.
            var asking = new Thread(() =>
            {
                Thread.Sleep(after);
                asked = Stopwatch.GetTimestamp();
                source.Cancel();
            });
            asking.Start();
            var plan = CuttingPlanner.Plan(one.Problem, Effort.Thorough, null, source.Token);
            long back = Stopwatch.GetTimestamp();
            asking.Join();
            if (plan.StoppedEarly && asked < back)
            {
                delays.Add(Stopwatch.GetElapsedTime(asked, back).TotalMilliseconds);
            }

            return plan;
        });
        string? late = result.StoppedEarly && delays.Count > 0 ? string.Create(CultureInfo.InvariantCulture, $"{delays[^1]:0.0} ms after") : "before the stop";
        return new Measurement(late is "before the stop" ? late : "stopped", $"{one.Name} at {after}: {late}", result.Spent, result.LeastPossible, cpu, clock);
    }
}
