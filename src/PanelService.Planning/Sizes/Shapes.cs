using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Sizes;

/// <summary>From the engine's steps to the plan's lengths.</summary>
internal static class Shapes
{
    /// <summary>A piece in its place, with its mark.</summary>
    public static PlacedPanel Placed(PlacedPiece piece, ImmutableArray<string> marks) => new(
        marks[piece.Piece],
        Length.FromSteps(piece.At.X),
        Length.FromSteps(piece.At.Y),
        Length.FromSteps(piece.At.Width),
        Length.FromSteps(piece.At.Height),
        piece.Turned);

    /// <summary>A leftover, not yet said to be kept.</summary>
    public static Offcut Offcut(Rectangle at) => new(
        Length.FromSteps(at.X), Length.FromSteps(at.Y), Length.FromSteps(at.Width), Length.FromSteps(at.Height), Kept: false);

    /// <summary>Whether a size fits into a leftover, either way round.</summary>
    public static bool Holds(Offcut offcut, Length width, Length height) => Holds((offcut.Width, offcut.Height), (width, height));

    /// <summary>Whether a size fits into another, either way round.</summary>
    public static bool Holds((Length Width, Length Height) whole, (Length Width, Length Height) size) =>
        (whole.Width >= size.Width && whole.Height >= size.Height) || (whole.Width >= size.Height && whole.Height >= size.Width);

    /// <summary>Adds areas up.</summary>
    public static Area Sum(IEnumerable<Area> areas) => areas.Aggregate(Area.Zero, (sum, area) => sum + area);
}
