using PanelService.Planning.Measures;

namespace PanelService.Planning.Orders;

/// <summary>A cheaper price for a larger number: from so many on, every one of them costs this.</summary>
/// <param name="Count">From so many on; 2 or more.</param>
/// <param name="Price">The price of each, the first ones included.</param>
public sealed record PriceStep(int Count, Money Price);
