using System.Collections.Immutable;

namespace PanelService.Cutting;

/// <summary>The best plan found for a <see cref="LengthProblem"/>, and how much cheaper any plan could be at most.</summary>
/// <param name="Uses">What is cut from what; empty where no plan was found.</param>
/// <param name="Spent">Its price; <see cref="long.MaxValue"/> where no plan was found.</param>
/// <param name="LeastPossible">A true lower bound of every plan's price, lengths of any number of steps included.</param>
/// <param name="StoppedEarly">Whether cancellation ended the search; such a result need not repeat.</param>
public sealed record LengthResult(ImmutableArray<LengthUse> Uses, long Spent, long LeastPossible, bool StoppedEarly)
{
    /// <summary>What the bound rests on.</summary>
    public LengthProof Proof { get; init; } = LengthProof.None;

    /// <summary>Whether there is a plan.</summary>
    public bool Complete => Spent < long.MaxValue;
}

/// <summary>What is cut from one good.</summary>
/// <param name="Stock">The sheet's index, or the number of sheets and the length's index.</param>
/// <param name="Steps">How many steps of a length; 0 for a sheet.</param>
/// <param name="Block">What is cut from it.</param>
/// <param name="Copies">How many are cut so; 1 for a length.</param>
public sealed record LengthUse(int Stock, int Steps, Block Block, int Copies);
