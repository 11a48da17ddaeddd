using PanelService.Planning.Measures;

namespace PanelService.Store.Cuts;

/// <summary>How much a plan takes of one heap that was in stock when it was planned.</summary>
/// <param name="Stock">The heap.</param>
/// <param name="Quantity">Pieces or nanolitres.</param>
/// <param name="Width">What it measured; null for a liquid or a strip.</param>
/// <param name="Length">What it measured the other way; null for a liquid.</param>
internal sealed record Taking(string Stock, long Quantity, Length? Width, Length? Length);
