using System.ComponentModel.DataAnnotations;
using PanelService.Planning.Measures;
using PanelService.Wire.Reading;

namespace PanelService.Wire.Studio;

/// <summary>How the batch came out. Everything as planned where nothing is said.</summary>
internal sealed record CutRequest : IMeasuredRequest
{
    /// <summary>Not looked at: a cut names no lengths.</summary>
    public LengthUnit? Units { get; init; }

    /// <summary>Not looked at: a cut names no amounts.</summary>
    public string? Currency { get; init; }

    /// <summary>Panels that were spoiled.</summary>
    public IReadOnlyList<SpoiledRequest?>? Spoiled { get; init; }

    /// <summary>Sheets that were spoiled, with every panel and offcut that was to come out of them.</summary>
    public IReadOnlyList<SpoiledSheetRequest?>? SpoiledSheets { get; init; }
}

/// <summary>Spoiled sheets of one layout.</summary>
internal sealed record SpoiledSheetRequest
{
    /// <summary>The layout's number in the plan. Required.</summary>
    [Required]
    public int? Sheet { get; init; }

    /// <summary>How many of its copies. Required.</summary>
    [Required]
    public int? Count { get; init; }
}

/// <summary>Spoiled panels of one line.</summary>
internal sealed record SpoiledRequest
{
    /// <summary>The line's mark. Required.</summary>
    [Required]
    public string? Mark { get; init; }

    /// <summary>How many. Required.</summary>
    [Required]
    public int? Count { get; init; }
}
