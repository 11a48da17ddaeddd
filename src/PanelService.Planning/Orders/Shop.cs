using PanelService.Planning.Measures;

namespace PanelService.Planning.Orders;

/// <summary>Where goods are bought, and what it takes to get them from there: delivery, or the way.</summary>
/// <param name="Id">Unique among the order's shops.</param>
/// <param name="Name">What the painter calls it; null where nothing is said.</param>
/// <param name="Charge">Paid once where anything is bought there.</param>
/// <param name="FreeFrom">Not paid where the goods bought there come to this or more, tax included; null: always paid.</param>
public sealed record Shop(string Id, string? Name, Money Charge, Money? FreeFrom);
