using PanelService.Planning.Measures;
using PanelService.Wire.Reading;

namespace PanelService.Wire.Studio;

/// <summary>What a heap really is; whatever is left out is as it stands.</summary>
internal sealed record StockPatchRequest : IMeasuredRequest
{
    /// <summary>The unit of bare numbers. Required where the heap is not kept in the studio's units.</summary>
    public LengthUnit? Units { get; init; }

    /// <summary>ISO 4217 code of the value: the heap's own, or left out.</summary>
    public string? Currency { get; init; }

    /// <summary>What the painter calls it, at most 200 characters.</summary>
    public string? Name { get; init; }

    /// <summary>"hardboard", "linen" …</summary>
    public string? Kind { get; init; }

    /// <summary>Of a board.</summary>
    public Length? Thickness { get; init; }

    /// <summary>Of a board, a cloth or a panel.</summary>
    public Length? Width { get; init; }

    /// <summary>Of a board or panel.</summary>
    public Length? Height { get; init; }

    /// <summary>Of a cloth.</summary>
    public Length? Length { get; init; }

    /// <summary>Of a board: lost at each edge.</summary>
    public Length? EdgeTrim { get; init; }

    /// <summary>How many pieces there really are, 0 to 1 000 000.</summary>
    public int? Count { get; init; }

    /// <summary>How much of a liquid there really is.</summary>
    public decimal? Volume { get; init; }

    /// <summary>What one piece, or all of a liquid, counts as.</summary>
    public decimal? Value { get; init; }

    /// <summary>Why, for the ledger; at most 200 characters.</summary>
    public string? Note { get; init; }
}
