using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Prices;

namespace PanelService.Planning.Liquids;

/// <summary>
/// The cheapest containers that hold at least a volume: an unbounded covering knapsack.
/// Idea: take the sizes by falling volume for the money; choose the count of one after the other, the most first,
/// and leave a branch as soon as filling its rest at the best remaining price per volume, rounded up to a whole
/// minor unit, costs no less than the best choice.
/// Source: depth-first branch and bound for knapsacks, Martello and Toth, Knapsack Problems, 1990.
/// Cost: a handful of nodes for real price lists; exponential at worst, so the nodes are counted and limited.
/// Not guaranteed: past the limit the choice may not be the cheapest; its least cost then says by how much at most.
/// </summary>
internal sealed class ContainerChooser
{
    /// <summary>As many nodes as one choice may take by itself: some tenths of a second.</summary>
    public const int NodeLimit = 500_000;

    // Volumes come out of divisions: what is short by less than a millionth of a millilitre is not short.
    private const decimal NegligibleMillilitres = 0.000_001m;

    private readonly ImmutableArray<Container> _sizes;
    private readonly int _nodeLimit;
    private readonly int[] _counts;
    private int[]? _best;
    private long _bestCost = long.MaxValue;
    private int _nodes;

    private ContainerChooser(ImmutableArray<Container> sizes, int nodeLimit)
    {
        (_sizes, _nodeLimit) = (sizes, nodeLimit);
        _counts = new int[sizes.Length];
    }

    /// <summary>Chooses.</summary>
    /// <param name="containers">What is sold; each volume above zero.</param>
    /// <param name="needed">The volume to be covered; at or below zero: nothing is bought.</param>
    /// <param name="nodeLimit">As many nodes as it may take: one of many choices takes its share.</param>
    /// <returns>The choice; null where something is needed and nothing is sold.</returns>
    public static ContainerChoice? Choose(ImmutableArray<Container> containers, Volume needed, int nodeLimit = NodeLimit)
    {
        if (needed.Millilitres <= NegligibleMillilitres)
        {
            return ContainerChoice.None;
        }

        return containers.IsEmpty ? null
            : containers.All(container => container.PriceFrom.IsEmpty) ? new ContainerChooser(ByPricePerVolume(containers), nodeLimit).Choose(needed.Millilitres)
            : ContainerPrices.Choose(containers, needed, nodeLimit);
    }

    private static ImmutableArray<Container> ByPricePerVolume(ImmutableArray<Container> containers) =>
        [.. containers.OrderBy(c => c.Price.Minor / c.Volume.Millilitres).ThenByDescending(c => c.Volume)];

    private ContainerChoice Choose(decimal needed)
    {
        Search(0, needed, 0);
        var bought = _sizes.Zip(_best!, (size, count) => new ContainerCount(size, count)).Where(c => c.Count > 0);
        long least = _nodes > _nodeLimit ? CostOfRest(0, needed) : _bestCost;
        return new ContainerChoice([.. bought], new Money(_bestCost), new Money(least));
    }

    private void Search(int size, decimal rest, long cost)
    {
        _nodes++;
        if (rest <= NegligibleMillilitres)
        {
            Remember(size, cost);
        }
        else if (size < _sizes.Length)
        {
            Branch(size, rest, cost);
        }
    }

    private void Branch(int size, decimal rest, long cost)
    {
        var container = _sizes[size];
        int most = (int)decimal.Ceiling((rest - NegligibleMillilitres) / container.Volume.Millilitres);
        for (int count = most; count >= 0; count--)
        {
            long price = cost + count * container.Price.Minor;
            decimal left = rest - count * container.Volume.Millilitres;
            bool worthIt = price + CostOfRest(size + 1, left) < _bestCost;
            if (worthIt)
            {
                _counts[size] = count;
                Search(size + 1, left, price);
            }

            // The highest count may overshoot what is needed; below it the bound rises as the count falls.
            if ((!worthIt && count < most) || (_best is not null && _nodes > _nodeLimit))
            {
                break;
            }
        }

        _counts[size] = 0;
    }

    /// <summary>A lower bound of covering the rest with this size and those after it; out of reach where none is left.</summary>
    private long CostOfRest(int size, decimal rest)
    {
        if (rest <= NegligibleMillilitres)
        {
            return 0;
        }

        // Far above any cost, yet it can be added to one.
        return size == _sizes.Length
            ? long.MaxValue / 2
            : (long)decimal.Ceiling((rest - NegligibleMillilitres) * _sizes[size].Price.Minor / _sizes[size].Volume.Millilitres);
    }

    private void Remember(int size, long cost)
    {
        Array.Clear(_counts, size, _counts.Length - size);
        if (cost < _bestCost)
        {
            _bestCost = cost;
            _best = [.. _counts];
        }
    }
}
