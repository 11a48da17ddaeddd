using PanelService.Planning.Measures;

namespace PanelService.Planning.Orders;

/// <summary>A panel to fill spare board with; never a reason to buy a sheet. Cut at nominal size.</summary>
public sealed record Wish
{
    /// <summary>What is drawn on the layouts; unique within the order.</summary>
    public required string Mark { get; init; }

    /// <summary>Width; above zero.</summary>
    public required Length Width { get; init; }

    /// <summary>Height; above zero.</summary>
    public required Length Height { get; init; }

    /// <summary>At most so many are made, 1 or more.</summary>
    public required int AtMost { get; init; }

    /// <summary>What one is worth to the painter: the more, the sooner it is fitted in.</summary>
    public Money Worth { get; init; }

    /// <summary>The finish; bare where nothing is said.</summary>
    public Surface Surface { get; init; }

    /// <summary>A board kind, or null for any.</summary>
    public string? Board { get; init; }

    /// <summary>The nominal thickness asked for; null: at least what the thickness rule asks.</summary>
    public Length? Thickness { get; init; }

    /// <summary>Whether it may lie turned on a board without grain.</summary>
    public bool MayTurn { get; init; } = true;
}
