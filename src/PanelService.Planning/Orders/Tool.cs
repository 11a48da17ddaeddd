using PanelService.Planning.Measures;

namespace PanelService.Planning.Orders;

/// <summary>A tool bought for this work: each panel made bears its part of the price, until the tool is paid for.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Price">What it costs.</param>
/// <param name="SpreadOver">Over how many panels the price is spread; 1 or more.</param>
public sealed record Tool(string Name, Money Price, int SpreadOver);
