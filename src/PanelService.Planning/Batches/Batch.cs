using System.Collections.Immutable;
using PanelService.Planning.Boards;
using PanelService.Planning.Cloth;
using PanelService.Planning.Liquids;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Sizes;
using PanelService.Planning.Strips;

namespace PanelService.Planning.Batches;

/// <summary>A batch with a decision how many of each line are made and how many bought ready-made.</summary>
/// <param name="Made">Per line: how many are made.</param>
/// <param name="Bought">Per line: how many are bought.</param>
/// <param name="Boards">The boards for what is made.</param>
/// <param name="Cloth">The cloth for what is made.</param>
/// <param name="Liquids">The liquids for what is made.</param>
/// <param name="Strips">The strips for what is made.</param>
/// <param name="Ready">What the bought ones cost.</param>
internal sealed record Batch(
    ImmutableArray<int> Made,
    ImmutableArray<int> Bought,
    BoardPlan Boards,
    ClothPlan Cloth,
    LiquidPlan Liquids,
    StripPlan Strips,
    Money Ready)
{
    /// <summary>Per line: a size at which boards and cloth hold everything; empty: they do at the smallest sizes.</summary>
    public ImmutableArray<CutSize> Sizes { get; init; } = [];

    /// <summary>Per line: the size at which its patterns hold everything.</summary>
    /// <param name="order">The order.</param>
    public ImmutableArray<CutSize> SizesHeld(Order order) => Sizes.IsEmpty ? CutSizes.Smallest(order) : Sizes;

    /// <summary>What the whole batch costs.</summary>
    public Money Spent => Boards.Outcome.Spent + Cloth.Outcome.Spent + Liquids.Spent + Strips.Spent + Ready;

    /// <summary>What no plan with these made counts can spend less than.</summary>
    public Money LeastAsMade => Boards.Outcome.LeastPossible + Cloth.Outcome.LeastPossible + Liquids.LeastPossible + Strips.LeastPossible + Ready;

    /// <summary>Whether everything can be made so.</summary>
    public bool Complete => Boards.Outcome.Complete && Cloth.Outcome.Complete && Strips.Complete;

    /// <summary>Whether a search was stopped.</summary>
    public bool StoppedEarly => Boards.Outcome.StoppedEarly || Cloth.Outcome.StoppedEarly || Strips.StoppedEarly;
}
