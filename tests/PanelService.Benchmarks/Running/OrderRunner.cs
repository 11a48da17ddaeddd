using PanelService.Benchmarks.Suites;
using PanelService.Planning;
using PanelService.Planning.Plans;

namespace PanelService.Benchmarks.Running;

/// <summary>Runs whole orders through the planner.</summary>
public static class OrderRunner
{
    /// <summary>A suite's way of running, given its orders.</summary>
    /// <param name="cases">Its orders, given the command line.</param>
    public static Func<Options, IEnumerable<Measurement>> Of(Func<Options, IEnumerable<OrderCase>> cases) => options =>
        CaseFilter.Run(cases(options), one => one.Name, one => Measure(one, options), options);

    private static Measurement Measure(OrderCase one, Options options)
    {
        var (outcome, cpu, clock) = Timing.Of(() =>
        {
            using var source = options.Stopper();
            return Planner.Plan(one.Order with { Effort = options.Effort }, null, source.Token);
        });
        if (outcome is not Planned { Plan: var plan })
        {
            return new Measurement(one.Group, one.Name, 0, 0, cpu, clock) { Fault = $"no plan: {((CannotBeMade)outcome).Detail}" };
        }

        var proof = one.Proof(plan);
        return new Measurement(one.Group, one.Name, proof.Spent.Minor, proof.LeastPossible.Minor, cpu, clock)
        {
            Known = one.KnownPlan,
            Met = one.KnownPlan is { } known ? proof.Spent.Minor <= known : null,
            Verdict = options.Check && one.IsCloth ? ClothAudit.Check(one.Order with { Effort = options.Effort }, proof) : null,
            Fault = proof.LeastPossible.Minor > (one.KnownPlan ?? long.MaxValue) ? $"bound above a known plan of {one.KnownPlan}" : null,
        };
    }
}
