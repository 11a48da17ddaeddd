using PanelService.Benchmarks.Suites;
using PanelService.Cutting;

namespace PanelService.Benchmarks.Running;

/// <summary>Runs cases straight through the cutting engine.</summary>
public static class CuttingRunner
{
    /// <summary>A suite's way of running, given its cases.</summary>
    /// <param name="cases">Its cases, given the command line.</param>
    public static Func<Options, IEnumerable<Measurement>> Of(Func<Options, IEnumerable<CuttingCase>> cases) => options =>
        CaseFilter.Run(cases(options), one => one.Name, one => Measure(one, options), options);

    /// <summary>A suite's way of running single sheets of published value.</summary>
    /// <param name="cases">Its cases, given the command line.</param>
    public static Func<Options, IEnumerable<Measurement>> OfValues(Func<Options, IEnumerable<ValueCase>> cases) => options =>
        CaseFilter.Run(cases(options), one => one.Name, one => MeasureValue(one, options), options);

    private static Measurement Measure(CuttingCase one, Options options)
    {
        var (result, cpu, clock) = Timing.Of(() => Plan(one.Problem, options));
        return new Measurement(one.Group, one.Name, result.Spent, result.LeastPossible, cpu, clock)
        {
            Known = one.KnownPlan,
            Met = one.KnownPlan is { } known ? result.Spent <= known : null,
            Fault = PlanAudit.Fault(one, result),
            Verdict = options.Check && result.Complete ? BoundAudit.Check(one.Problem, result) : null,
        };
    }

    private static Measurement MeasureValue(ValueCase one, Options options)
    {
        var ((value, bound), cpu, clock) = Timing.Of(one.Solve);
        return new Measurement(one.Group, one.Name, value, bound, cpu, clock)
        {
            Known = one.Optimum,
            Met = value == one.Optimum,
            Verdict = options.Check ? BoundAudit.CheckValue(one.Sheet, one.Values, bound) : null,
            Fault = value == one.Optimum ? null : $"value {value}, published {one.Optimum}",
        };
    }

    private static CuttingResult Plan(CuttingProblem problem, Options options)
    {
        using var source = options.Stopper();
        return CuttingPlanner.Plan(problem, options.Effort, null, source.Token);
    }
}
