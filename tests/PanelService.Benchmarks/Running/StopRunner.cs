using System.Diagnostics;
using System.Globalization;
using PanelService.Benchmarks.Suites;
using PanelService.Cutting;
using PanelService.Planning;
using PanelService.Planning.Plans;

namespace PanelService.Benchmarks.Running;

/// <summary>Stops searches at random moments and measures how long they take to come back.</summary>
public static class StopRunner
{
    /// <summary>Runs.</summary>
    /// <param name="options">The command line.</param>
    public static IEnumerable<Measurement> Run(Options options)
    {
        var random = new Xorshift(9_000);

        // By name, since the first case of each kind runs twice: first for the compiler.
        var delays = new Dictionary<string, double>();
        foreach (var one in Run(Boards(options)).Concat(Run(Cloths(options.Draw))))
        {
            yield return one;
        }

        double[] sorted = [.. delays.Values.Order()];
        if (sorted.Length > 0)
        {
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{sorted.Length} stopped; delay ms: median {sorted[sorted.Length / 2]:0.0}, 95 % {sorted[sorted.Length * 95 / 100]:0.0}, worst {sorted[^1]:0.0}; late by more than 50 ms: {sorted.Count(d => d > 50)}"));
        }

        IEnumerable<Measurement> Run(IEnumerable<StopCase> cases) => CaseFilter.Run(cases, one => one.Name, one => Stopped(one, random, delays), options);
    }

    // Of every nature, and such as take long.
    private static IEnumerable<StopCase> Boards(Options options)
    {
        CuttingCase[] cases =
        [
            .. StudioOrders.MixedBoards(options.Draw).Take(60),
            .. StudioOrders.Large(options.Draw),
            .. OddFormats.All(options.Draw),
            .. StudioOrders.Small(options.Draw).Take(20),
            .. options.Data is null ? [] : PublishedSheets.Furniture(options.Data),
            .. options.Data is null ? [] : PublishedSheets.Packing(options.Data).Where((_, i) => i % 10 == 0),
        ];
        return cases.Select(OfBoards);
    }

    // By the whole planner, so that what is made of the search after the stop counts too.
    private static IEnumerable<StopCase> Cloths(int draw) => ClothOrders.Strips(draw).Concat(ClothOrders.Mixed(draw).Where((_, i) => i % 5 == 0)).Select(OfCloth);

    private static StopCase OfBoards(CuttingCase one) => new(one.Name, stop =>
    {
        var result = CuttingPlanner.Plan(one.Problem, Effort.Thorough, null, stop);
        return new StopAnswer(result.StoppedEarly, result.Spent, result.LeastPossible);
    });

    private static StopCase OfCloth(OrderCase one) => new(one.Name, stop =>
    {
        var outcome = Planner.Plan(one.Order with { Effort = Effort.Thorough }, null, stop);
        return outcome is Planned { Plan: var plan }
            ? new StopAnswer(plan.StoppedEarly, one.Proof(plan).Spent.Minor, one.Proof(plan).LeastPossible.Minor)
            : new StopAnswer(false, 0, 0) { Fault = $"no plan: {((CannotBeMade)outcome).Detail}" };
    });

    private static Measurement Stopped(StopCase one, Xorshift random, Dictionary<string, double> delays)
    {
        int after = random.Between(1, 700);
        using var source = new CancellationTokenSource();
        long asked = 0;
        double? late = null;
        var (answer, cpu, clock) = Timing.Of(() =>
        {
            // A thread of its own, so that no pool's delay is measured; it does nothing but wait and ask.
            var asking = new Thread(() =>
            {
                Thread.Sleep(after);
                asked = Stopwatch.GetTimestamp();
                source.Cancel();
            });
            asking.Start();
            var answer = one.Plan(source.Token);
            long back = Stopwatch.GetTimestamp();
            asking.Join();
            late = answer.Stopped && asked < back ? Stopwatch.GetElapsedTime(asked, back).TotalMilliseconds : null;
            return answer;
        });
        delays.Remove(one.Name);
        if (late is { } delay)
        {
            delays.Add(one.Name, delay);
        }

        string told = late is null ? "before the stop" : string.Create(CultureInfo.InvariantCulture, $"{late:0.0} ms after");
        return new Measurement(late is null ? told : "stopped", $"{one.Name} at {after}: {told}", answer.Spent, answer.LeastPossible, cpu, clock) { Fault = answer.Fault };
    }

    /// <summary>Something to plan and to stop.</summary>
    private sealed record StopCase(string Name, Func<CancellationToken, StopAnswer> Plan);

    /// <summary>How a search ended.</summary>
    private sealed record StopAnswer(bool Stopped, long Spent, long LeastPossible)
    {
        public string? Fault { get; init; }
    }
}
