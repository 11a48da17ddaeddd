using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Plans;

/// <summary>A shop that something is bought in.</summary>
/// <param name="Shop">The shop.</param>
/// <param name="Goods">What the goods bought there come to.</param>
/// <param name="Charge">What is charged on top; zero where the goods come to enough.</param>
public sealed record Delivery(Shop Shop, Money Goods, Money Charge);
