using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Plans;

/// <summary>How much of a liquid the batch takes and where it comes from.</summary>
public sealed record LiquidUse
{
    /// <summary>The liquid, as ordered.</summary>
    public required LiquidSupply Liquid { get; init; }

    /// <summary>Whether it is an adhesive (else a primer).</summary>
    public required bool IsAdhesive { get; init; }

    /// <summary>What the batch takes.</summary>
    public required Volume Needed { get; init; }

    /// <summary>How much of that is on hand.</summary>
    public required Volume FromHand { get; init; }

    /// <summary>Containers bought: which and how many, none with a count of 0.</summary>
    public required ImmutableArray<ContainerCount> Bought { get; init; }

    /// <summary>What is left afterwards, on hand and bought together.</summary>
    public required Volume Left { get; init; }

    /// <summary>The marks it serves, each with the volume its line takes in all.</summary>
    public required ImmutableArray<LiquidShare> Shares { get; init; }

    /// <summary>What the containers cost.</summary>
    public Money BoughtCost => Bought.Aggregate(Money.Zero, (sum, b) => sum + (b.Container.Price * b.Count));

    /// <summary>What is in the containers bought.</summary>
    public Volume BoughtVolume => Bought.Aggregate(default(Volume), (sum, b) => sum + (b.Container.Volume * b.Count));

    /// <summary>The used share of the on-hand value, to the nearest minor unit, halves up.</summary>
    public Money OnHandCost => Liquid.OnHand > default(Volume)
        ? new Money((long)Math.Round(Liquid.Value.Minor * (FromHand.Millilitres / Liquid.OnHand.Millilitres), MidpointRounding.AwayFromZero))
        : Money.Zero;

    /// <summary>What the liquid counts as in the proof: containers and the used share of what is on hand.</summary>
    public Money Spent => BoughtCost + OnHandCost;
}

/// <summary>Containers of one size.</summary>
/// <param name="Container">Which.</param>
/// <param name="Count">How many, 1 or more.</param>
public sealed record ContainerCount(Container Container, int Count);

/// <summary>A line's share of a liquid.</summary>
/// <param name="Mark">The line or wish.</param>
/// <param name="Volume">What it takes in all.</param>
public sealed record LiquidShare(string Mark, Volume Volume);
