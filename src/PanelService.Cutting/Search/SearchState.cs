namespace PanelService.Cutting.Search;

/// <summary>What the parts of one search share.</summary>
/// <param name="Pool">Columns known; new ones are added.</param>
/// <param name="Box">How many of each stock may be used.</param>
/// <param name="Work">Where work is counted.</param>
/// <param name="Best">The best plan and the bound.</param>
/// <param name="Proof">Told what the bound rests on.</param>
/// <param name="Rounding">Rounds the relaxation's solution down.</param>
internal sealed record SearchState(ColumnPool Pool, StockBox Box, WorkMeter Work, Incumbent Best, ProofRecord Proof, RoundDown Rounding);
