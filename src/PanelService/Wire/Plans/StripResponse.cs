using PanelService.Planning.Plans;

namespace PanelService.Wire.Plans;

/// <summary>One distinct way of cutting a strip, from one end; one kerf (saw.kerf) goes between each two pieces and before the rest.</summary>
/// <param name="Number">1, 2, …</param>
/// <param name="Copies">How many are cut so.</param>
/// <param name="Strip">The strip's id.</param>
/// <param name="Source">Bought or on hand.</param>
/// <param name="Length">Its length.</param>
/// <param name="Pieces">The pieces of one copy.</param>
/// <param name="Rest">What is left; 0: nothing but dust.</param>
/// <param name="Kept">Whether the rest is kept: from strength.smallestStrip on.</param>
/// <param name="Name">The strip's name, where it has one.</param>
internal sealed record StripResponse(
    int Number, int Copies, string Strip, Source Source, decimal Length, IReadOnlyList<StripPieceResponse> Pieces, decimal Rest, bool Kept, string? Name);

/// <summary>A piece of a cradle in its place on a strip.</summary>
/// <param name="Mark">The line it is for.</param>
/// <param name="At">Where it begins.</param>
/// <param name="Length">How long it is.</param>
internal sealed record StripPieceResponse(string Mark, decimal At, decimal Length);
