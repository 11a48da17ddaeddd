using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Boards;

/// <summary>How the boards are cut, before sizes are settled.</summary>
/// <param name="Patterns">What is cut from which board.</param>
/// <param name="LineOf">Per piece of the patterns: its line.</param>
/// <param name="Outcome">What it costs and what is missing.</param>
internal sealed record BoardPlan(ImmutableArray<BoardPattern> Patterns, ImmutableArray<int> LineOf, CutOutcome Outcome)
    : MaterialPlan(Outcome)
{
    /// <summary>What the engine was asked and answered; null where nothing is cut.</summary>
    public BoardCut? Cut { get; init; }

    /// <summary>Where lines may grow.</summary>
    /// <param name="kerf">What one cut turns to dust.</param>
    public IEnumerable<Room> Rooms(Length kerf) => Patterns.Select(pattern => new Room(
        pattern.Block, LineOf, pattern.Stock.UsableWidth.Steps, pattern.Stock.UsableHeight.Steps, kerf.Steps)
    {
        Frame = pattern.Stock.IsLimited ? pattern.Stock.ToFrame(kerf) : null,
    });
}

/// <summary>One way of cutting a board.</summary>
/// <param name="Stock">The board.</param>
/// <param name="Block">What is cut from it.</param>
/// <param name="Copies">How many are cut so.</param>
internal sealed record BoardPattern(BoardStock Stock, Block Block, int Copies)
{
    /// <summary>Whether it is cut for its leftover.</summary>
    public bool ForLeftover { get; init; }
}

/// <summary>What the engine was asked for boards, and its answer.</summary>
/// <param name="Stocks">The boards, first of the problem's stocks; one that is partly paid for stands there twice.</param>
/// <param name="Task">The problem.</param>
/// <param name="Result">The answer.</param>
internal sealed record BoardCut(ImmutableArray<BoardStock> Stocks, CutTask Task, CuttingResult Result);
