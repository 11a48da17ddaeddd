using System.Collections.Immutable;
using PanelService.Store.Stock;

namespace PanelService.Store.Cuts;

/// <summary>Everything that moves when a plan is cut.</summary>
/// <param name="Declared">Goods the order itself said were on hand.</param>
/// <param name="Taken">Goods taken from heaps in stock; a liquid may name several heaps, to be emptied in their order.</param>
/// <param name="Kept">Offcuts, remnants and liquids left over.</param>
/// <param name="Finished">Panels.</param>
internal sealed record CutDraft(
    ImmutableArray<Declaration> Declared, ImmutableArray<ImmutableArray<Taking>> Taken, ImmutableArray<StockDraft> Kept, ImmutableArray<StockDraft> Finished);
