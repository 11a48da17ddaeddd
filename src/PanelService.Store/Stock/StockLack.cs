namespace PanelService.Store.Stock;

/// <summary>A heap that does not hold what is needed of it.</summary>
/// <param name="Stock">Its id.</param>
/// <param name="Sort">Its sort.</param>
/// <param name="Needed">Pieces or nanolitres needed.</param>
/// <param name="There">Pieces or nanolitres there.</param>
/// <param name="IsChanged">Whether it measures otherwise than planned.</param>
public sealed record StockLack(string Stock, StockSort Sort, long Needed, long There, bool IsChanged);
