using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Prices;

/// <summary>A good of which so many are bought that a shop charges nothing.</summary>
/// <param name="Id">The board, cloth or strip.</param>
/// <param name="Unit">What it is counted in.</param>
/// <param name="Count">How many are bought in all.</param>
/// <param name="Price">What each of them costs.</param>
/// <param name="Cost">How much more they cost than the cheapest way of buying what is cut; above zero.</param>
internal sealed record OnTop(string Id, SaleUnit Unit, int Count, Money Price, Money Cost);
