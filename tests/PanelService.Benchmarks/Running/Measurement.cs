using PanelService.Checking.Bounds;

namespace PanelService.Benchmarks.Running;

/// <summary>What one case came to.</summary>
/// <param name="Group">What it is summed under.</param>
/// <param name="Name">The case.</param>
/// <param name="Spent">The plan's price.</param>
/// <param name="LeastPossible">The bound.</param>
/// <param name="Cpu">Processor time of the whole process, all threads.</param>
/// <param name="Clock">Time on the clock.</param>
public sealed record Measurement(
    string Group, string Name, long Spent, long LeastPossible, TimeSpan Cpu, TimeSpan Clock)
{
    /// <summary>A figure known beforehand: a price some plan reaches, or a published value.</summary>
    public long? Known { get; init; }

    /// <summary>Whether the known figure is reached; null where none is known.</summary>
    public bool? Met { get; init; }

    /// <summary>What is wrong with the result, in words; null: nothing.</summary>
    public string? Fault { get; init; }

    /// <summary>What became of computing the bound again; null: that was not asked for.</summary>
    public BoundVerdict? Verdict { get; init; }

    /// <summary>Other figures of the plan, each with the least it could be.</summary>
    public IReadOnlyList<(string Of, long Value, long Least)> Beside { get; init; } = [];

    /// <summary>Whether the plan is proven.</summary>
    public bool Proven => Spent == LeastPossible;

    /// <summary>How much cheaper a plan could be at most, as a share of what is spent.</summary>
    public double Gap => Spent == 0 ? 0 : (double)(Spent - LeastPossible) / Spent;
}
