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
