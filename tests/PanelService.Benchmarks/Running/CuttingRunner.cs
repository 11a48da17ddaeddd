using System.Diagnostics;
using PanelService.Benchmarks.Suites;
using PanelService.Cutting;

namespace PanelService.Benchmarks.Running;

/// <summary>Runs cases through the cutting engine, one after another, and measures them.</summary>
public static class CuttingRunner
{
    /// <summary>Runs a suite; the first case runs once unmeasured, so that no compiling is counted.</summary>
    /// <param name="suite">The suite.</param>
    /// <param name="options">The command line.</param>
    public static IEnumerable<Measurement> Run(CuttingSuite suite, Options options)
    {
        var cases = suite.Cases(options.Data)
            .Where(one => options.Only is null || one.Name.Contains(options.Only, StringComparison.OrdinalIgnoreCase))
            .Skip(options.Skip)
            .Take(options.First ?? int.MaxValue);
        bool warm = false;
        foreach (var one in cases)
        {
            if (!warm)
            {
                _ = Plan(one.Problem, options);
                warm = true;
            }

            yield return Measure(one, options);
        }
    }

    private static Measurement Measure(CuttingCase one, Options options)
    {
        var process = Process.GetCurrentProcess();
        var cpuBefore = process.TotalProcessorTime;
        var clock = Stopwatch.StartNew();
        var result = Plan(one.Problem, options);
        clock.Stop();
        process.Refresh();
        return new Measurement(
            one.Group, one.Name, result.Spent, result.LeastPossible, process.TotalProcessorTime - cpuBefore, clock.Elapsed)
        {
            KnownPlan = one.KnownPlan,
            Fault = PlanAudit.Fault(one, result),
        };
    }

    private static CuttingResult Plan(CuttingProblem problem, Options options)
    {
        using var source = options.Seconds is { } seconds
            ? new CancellationTokenSource(TimeSpan.FromSeconds(seconds))
            : new CancellationTokenSource();
        return CuttingPlanner.Plan(problem, options.Effort, null, source.Token);
    }
}
