using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Orders;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Cloth;

/// <summary>How the cloth is cut, before sizes are settled.</summary>
/// <param name="Patterns">What is cut from which cloth.</param>
/// <param name="LineOf">Per piece of the patterns: its line.</param>
/// <param name="Outcome">What it costs and what is missing.</param>
internal sealed record ClothPlan(ImmutableArray<ClothPattern> Patterns, ImmutableArray<int> LineOf, CutOutcome Outcome)
    : MaterialPlan(Outcome)
{
    /// <summary>Whether what is paid for cost nothing in the run, so that it comes on top of the bound.</summary>
    public bool PaidApart { get; init; }

    /// <summary>Where lines may grow.</summary>
    /// <param name="bench">The margins.</param>
    public IEnumerable<Room> Rooms(BenchSettings bench) => Patterns.Select(pattern => new Room(
        pattern.Block,
        LineOf,
        pattern.Stock.UsableWidth.Steps,
        pattern.Stock.Length.Steps,
        Kerf: 0,
        bench));
}

/// <summary>One way of cutting a cloth.</summary>
/// <param name="Stock">The cloth.</param>
/// <param name="Block">What is cut from it.</param>
/// <param name="Copies">How many are cut so.</param>
internal sealed record ClothPattern(ClothStock Stock, Block Block, int Copies)
{
    /// <summary>Whether it is cut for the largest leftover there can be: see <see cref="SheetFrame.ForLeftover"/>.</summary>
    public bool ForLeftover { get; init; }
}
