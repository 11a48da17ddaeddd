using PanelService.Planning.Measures;

namespace PanelService.Planning.Plans;

/// <summary>A panel's board, or its cloth, in its place on the material.</summary>
/// <param name="Mark">The line's or wish's mark.</param>
/// <param name="X">Along the material's width.</param>
/// <param name="Y">Along the material's height or length.</param>
/// <param name="Width">As it lies.</param>
/// <param name="Height">As it lies.</param>
/// <param name="Turned">Whether the panel's own width lies along y.</param>
public sealed record PlacedPanel(string Mark, Length X, Length Y, Length Width, Length Height, bool Turned);

/// <summary>A rectangle left over.</summary>
/// <param name="X">Along the material's width.</param>
/// <param name="Y">Along the material's height or length.</param>
/// <param name="Width">Extent along x.</param>
/// <param name="Height">Extent along y.</param>
/// <param name="Kept">Whether it goes back on the rack.</param>
public sealed record Offcut(Length X, Length Y, Length Width, Length Height, bool Kept)
{
    /// <summary>Its area.</summary>
    public Area Area => Width * Height;
}
