using System.Collections.Immutable;
using PanelService.Planning.Liquids;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Prices;

/// <summary>
/// Containers that cost less each in larger numbers: every choice of a level for each size is tried, with the level's
/// count paid for and any more at its price, as <see cref="PriceLevelSearch{T}"/> does for boards. Past a number of choices
/// the lowest prices, whatever the number, are the bound.
/// </summary>
internal static class ContainerPrices
{
    private const int MostChoices = 400;

    // All choices together take no more than a few times what one may.
    private const int LeastNodes = 200;
    private const int ShareOfNodes = 100;

    /// <summary>The lowest price of a container, whatever the number.</summary>
    public static Money Lowest(Container container) => LevelsOf(container).Lowest;

    /// <summary>Chooses.</summary>
    /// <param name="containers">What is sold; at least one.</param>
    /// <param name="needed">The volume to be covered; above zero.</param>
    /// <param name="nodeLimit">As many nodes as a choice by itself may take.</param>
    public static ContainerChoice Choose(ImmutableArray<Container> containers, Volume needed, int nodeLimit)
    {
        int share = Math.Max(LeastNodes, nodeLimit / ShareOfNodes);
        ImmutableArray<PriceStep> lowest = [.. containers.Select(one => new PriceStep(0, Lowest(one)))];
        var floor = ContainerChooser.Choose(At(containers, lowest), needed, nodeLimit)!;
        var best = Real(containers, lowest, floor.Bought);
        var least = new Money(long.MaxValue);
        int tried = 0;
        Try(0, [], needed, Money.Zero);
        var bound = tried > MostChoices || least < floor.LeastCost ? floor.LeastCost : least;
        return best with { LeastCost = bound > best.Cost ? best.Cost : bound };

        void Try(int at, ImmutableArray<PriceStep> levels, Volume rest, Money paid)
        {
            if (paid >= best.Cost || tried > MostChoices)
            {
                return;
            }

            if (at < containers.Length)
            {
                foreach (var level in LevelsOf(containers[at]).Levels)
                {
                    Try(at + 1, levels.Add(level), rest - (containers[at].Volume * level.Count), paid + (level.Price * level.Count));
                }

                return;
            }

            tried++;
            var more = ContainerChooser.Choose(At(containers, levels), rest, share)!;
            var real = Real(containers, levels, more.Bought);
            best = real.Cost < best.Cost ? real : best;
            least = paid + more.LeastCost < least ? paid + more.LeastCost : least;
        }
    }

    /// <summary>What the levels' counts and so many more really cost.</summary>
    private static ContainerChoice Real(ImmutableArray<Container> containers, ImmutableArray<PriceStep> levels, ImmutableArray<ContainerCount> more)
    {
        var sold = At(containers, levels);
        var bought = containers.Select((container, i) =>
        {
            // Of two alike in volume and price the first stands for both.
            int extra = sold.IndexOf(sold[i]) == i ? more.Where(one => one.Container == sold[i]).Sum(one => one.Count) : 0;
            var cheapest = LevelsOf(container).Cheapest(levels[i].Count + extra);
            return new ContainerCount(Plain(container, cheapest.Price), cheapest.Count);
        }).Where(one => one.Count > 0).ToImmutableArray();
        var cost = bought.Aggregate(Money.Zero, (sum, one) => sum + (one.Container.Price * one.Count));
        return new ContainerChoice(bought, cost, cost);
    }

    private static ImmutableArray<Container> At(ImmutableArray<Container> containers, ImmutableArray<PriceStep> levels) =>
        [.. containers.Zip(levels, (container, level) => Plain(container, level.Price))];

    private static PriceLevels LevelsOf(Container container) => PriceLevels.Of(container.Price, container.PriceFrom, most: null);

    private static Container Plain(Container container, Money price) => new(container.Volume, price);
}
