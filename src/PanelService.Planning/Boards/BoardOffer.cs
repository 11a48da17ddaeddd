using PanelService.Cutting;

namespace PanelService.Planning.Boards;

/// <summary>Boards of one sort, at a price that may be another than the sort's own.</summary>
/// <param name="Board">The sort.</param>
/// <param name="Stock">As the engine takes it.</param>
internal sealed record BoardOffer(BoardStock Board, Stock Stock);
