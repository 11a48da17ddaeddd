using System.Collections.Immutable;
using PanelService.Planning.Measures;

namespace PanelService.Planning.Sizes;

/// <summary>What a material's plan comes to.</summary>
/// <param name="Spent">What it costs, ready-made panels included where they were offered.</param>
/// <param name="LeastPossible">What no plan can spend less than, at any size the order allows.</param>
/// <param name="Missing">Per line: how many could not be placed.</param>
/// <param name="Ready">Per line: how many are taken ready-made.</param>
internal sealed record CutOutcome(
    Money Spent, Money LeastPossible, ImmutableArray<int> Missing, ImmutableArray<int> Ready)
{
    private readonly Money? _leastAtNominal;

    /// <summary>
    /// What no plan with all sizes nominal can spend less than. Where nothing else is said it is
    /// <see cref="LeastPossible"/> as it stands now, also after a <c>with</c> has put another bound there.
    /// </summary>
    public Money LeastAtNominal
    {
        get => _leastAtNominal ?? LeastPossible;
        init => _leastAtNominal = value;
    }

    /// <summary>Whether the patterns hold for certain only at the smallest sizes.</summary>
    public bool AtSmallest { get; init; }

    /// <summary>Whether combinations of quantity prices were left untried; the bound stays true.</summary>
    public bool PricesOpen { get; init; }

    /// <summary>Whether the search was stopped.</summary>
    public bool StoppedEarly { get; init; }

    /// <summary>Whether everything was placed.</summary>
    public bool Complete => Missing.All(count => count == 0);

    /// <summary>Of another plan that makes everything and buys nothing ready-made.</summary>
    /// <param name="spent">What it costs.</param>
    public CutOutcome Instead(Money spent) => this with
    {
        Spent = spent,
        Missing = [.. new int[Missing.Length]],
        Ready = [.. new int[Ready.Length]],
    };

    /// <summary>With the bounds of the same panels out of more goods.</summary>
    /// <param name="wider">What they came to.</param>
    public CutOutcome BoundedBy(CutOutcome wider) => this with
    {
        LeastPossible = wider.LeastPossible <= Spent ? wider.LeastPossible : Spent,
        LeastAtNominal = wider.LeastAtNominal,
    };

    /// <summary>The same with another bound, of a plan at one set of sizes.</summary>
    /// <param name="least">What no plan at these sizes can spend less than.</param>
    public CutOutcome WithBound(Money least) => this with { LeastPossible = least };

    /// <summary>Nothing to cut.</summary>
    /// <param name="lines">How many lines there are.</param>
    public static CutOutcome Nothing(int lines) =>
        new(Money.Zero, Money.Zero, [.. new int[lines]], [.. new int[lines]]);

    /// <summary>Reads what the engine found.</summary>
    /// <param name="result">The engine's result.</param>
    /// <param name="task">Which piece is of which line, and which stocks are ready-made panels.</param>
    /// <param name="lines">How many lines there are.</param>
    public static CutOutcome Of(Cutting.CuttingResult result, CutTask task, int lines)
    {
        var missing = new int[lines];
        for (int piece = 0; piece < task.LineOf.Length; piece++)
        {
            missing[task.LineOf[piece]] = result.Missing[piece];
        }

        var ready = new int[lines];
        foreach (var use in result.Patterns.Where(use => use.Stock >= task.FirstReady))
        {
            ready[task.ReadyLines[use.Stock - task.FirstReady]] += use.Copies;
        }

        // A plan that lacks something has no price worth comparing.
        return new CutOutcome(
            new Money(result.Complete ? result.Spent : 0),
            new Money(result.Complete ? result.LeastPossible : 0),
            [.. missing],
            [.. ready])
        {
            StoppedEarly = result.StoppedEarly,
        };
    }
}
