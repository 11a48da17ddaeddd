using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;
using PanelService.Planning.Prices;

namespace PanelService.Planning.Batches;

/// <summary>The cheapest batch found, and what no batch can spend less than.</summary>
/// <param name="Best">The batch.</param>
/// <param name="LeastPossible">The bound over everything that may be made or bought, deliveries included.</param>
internal sealed record BatchChoice(Batch Best, Money LeastPossible)
{
    /// <summary>The shops that charge, of those that something is bought in.</summary>
    public ImmutableArray<Delivery> Deliveries { get; init; } = [];

    /// <summary>Goods bought on top so that a shop charges nothing.</summary>
    public ImmutableArray<OnTop> TopUps { get; init; } = [];

    /// <summary>Whether some ways of shopping were not looked at; the bound stays true.</summary>
    public bool ShopsOpen { get; init; }

    /// <summary>The goods, deliveries and what is bought on top.</summary>
    public Money Spent => Best.Spent + Extra;

    private Money Extra => Deliveries.Aggregate(Money.Zero, (sum, delivery) => sum + delivery.Charge)
        + TopUps.Aggregate(Money.Zero, (sum, one) => sum + one.Cost);
}
