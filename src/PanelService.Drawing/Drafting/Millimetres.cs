using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Drafting;

/// <summary>From exact lengths to the drawing's floating point: a step is 1/320 mm, so a double holds it exactly enough.</summary>
internal static class Millimetres
{
    public static double Of(Length length) => (double)length.Millimetres;

    public static Box Of(Length x, Length y, Length width, Length height) => new(Of(x), Of(y), Of(width), Of(height));

    public static Box Of(PlacedPanel piece) => Of(piece.X, piece.Y, piece.Width, piece.Height);

    public static DraftOffcut Of(Offcut offcut) => new(
        Of(offcut.X, offcut.Y, offcut.Width, offcut.Height), offcut.Width, offcut.Height, offcut.Kept);
}
