using System.ComponentModel.DataAnnotations;
using PanelService.Planning.Measures;
using PanelService.Wire.Orders;
using PanelService.Wire.Reading;

namespace PanelService.Wire.Yields;

/// <summary>How many panels of one size come out of a sheet? Asked of one board, or of all boards and stock given.</summary>
internal sealed record YieldRequest : IMeasuredRequest
{
    /// <summary>The unit bare numbers are in. Default: inch.</summary>
    public LengthUnit? Units { get; init; }

    /// <summary>ISO 4217 code, for boards that are given with their prices. Default: EUR.</summary>
    public string? Currency { get; init; }

    /// <summary>The panel. Required.</summary>
    [Required]
    public YieldPanelRequest? Panel { get; init; }

    /// <summary>One board: only width and height are needed. Either this or boards, or neither.</summary>
    public BoardRequest? Board { get; init; }

    /// <summary>Several boards, as in an order: only width and height are needed. At most 200. With neither: all saved boards and all board in stock.</summary>
    public IReadOnlyList<BoardRequest?>? Boards { get; init; }

    /// <summary>How board is cut.</summary>
    public SawRequest? Saw { get; init; }
}

/// <summary>The panel asked about.</summary>
internal sealed record YieldPanelRequest
{
    /// <summary>Width as it hangs; 1 mm to 100 m. Required.</summary>
    [Required]
    public Length? Width { get; init; }

    /// <summary>Height as it hangs; 1 mm to 100 m. Required.</summary>
    [Required]
    public Length? Height { get; init; }

    /// <summary>A board kind it must be cut from; null: any.</summary>
    public string? Board { get; init; }

    /// <summary>A nominal thickness it must have; null: any.</summary>
    public Length? Thickness { get; init; }

    /// <summary>Whether it may lie turned on the sheet. Default true.</summary>
    public bool? MayTurn { get; init; }
}
