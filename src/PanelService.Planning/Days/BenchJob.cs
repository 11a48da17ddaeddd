using System.Collections.Immutable;

namespace PanelService.Planning.Days;

/// <summary>Work that is done in one go, and the time it then needs to be left alone.</summary>
public sealed record BenchJob
{
    /// <summary>1, 2, … in the order they could be done in.</summary>
    public required int Number { get; init; }

    /// <summary>What is done.</summary>
    public required BenchTask Task { get; init; }

    /// <summary>The steps it covers.</summary>
    public required ImmutableArray<BenchStep> Steps { get; init; }

    /// <summary>What it is done to, by mark; empty for the errand.</summary>
    public ImmutableArray<MarkCount> Panels { get; init; } = [];

    /// <summary>The coat, from 1; 0: none.</summary>
    public int Coat { get; init; }

    /// <summary>The stack, from 1; 0: none.</summary>
    public int Stack { get; init; }

    /// <summary>Minutes of one pair of hands; 1 or more.</summary>
    public required int Hands { get; init; }

    /// <summary>The hands-on minutes of its panels, which <see cref="Hands"/> rounds up; 0 for the errand. Labour is counted by them.</summary>
    public decimal Minutes { get; init; }

    /// <summary>Minutes it is then left alone: under weight, drying, curing.</summary>
    public int Wait { get; init; }

    /// <summary>Whether it stands in a space of the press from its start to the end of its wait.</summary>
    public bool TakesSpace { get; init; }

    /// <summary>Jobs that must be over, their waits included.</summary>
    public ImmutableArray<int> After { get; init; } = [];

    /// <summary>Jobs whose hands must be through: what is pressed first.</summary>
    public ImmutableArray<int> AfterHands { get; init; } = [];

    /// <summary>How many panels.</summary>
    public long Count => Panels.Sum(panel => panel.Count);
}

/// <summary>So many panels of a line.</summary>
/// <param name="Mark">The line.</param>
/// <param name="Count">How many, 1 or more.</param>
public sealed record MarkCount(string Mark, long Count);
