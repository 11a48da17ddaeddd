using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Costing;

/// <summary>How the area of one copy of a sheet or cloth is used.</summary>
/// <param name="Whole">All of it.</param>
/// <param name="Kept">What goes back on the rack.</param>
/// <param name="Pieces">What is cut from it, by mark.</param>
internal sealed record MaterialShares(Area Whole, Area Kept, ImmutableArray<(string Mark, Area Area)> Pieces)
{
    /// <summary>Of a sheet.</summary>
    public static MaterialShares Of(SheetLayout sheet) => Of(sheet.Area, sheet.Offcuts, sheet.Pieces);

    /// <summary>Of a cloth.</summary>
    public static MaterialShares Of(ClothLayout cloth) => Of(cloth.Area, cloth.Offcuts, cloth.Pieces);

    /// <summary>Of a strip: all of it is as wide, so that its lengths stand for areas.</summary>
    public static MaterialShares Of(StripLayout strip) => new(
        AsArea(strip.Strip.Length),
        strip.RestKept ? AsArea(strip.Rest) : Area.Zero,
        [
            .. strip.Pieces.GroupBy(piece => piece.Mark, StringComparer.Ordinal)
                .Select(group => (group.Key, Sum(group.Select(piece => AsArea(piece.Length))))),
        ]);

    private static Area AsArea(Length length) => Area.FromSquareSteps(length.Steps);

    private static MaterialShares Of(Area whole, ImmutableArray<Offcut> offcuts, ImmutableArray<PlacedPanel> pieces) => new(
        whole,
        Sum(offcuts.Where(offcut => offcut.Kept).Select(offcut => offcut.Area)),
        [
            .. pieces.GroupBy(piece => piece.Mark, StringComparer.Ordinal)
                .Select(group => (group.Key, Sum(group.Select(piece => piece.Width * piece.Height)))),
        ]);

    private static Area Sum(IEnumerable<Area> areas) => areas.Aggregate(Area.Zero, (sum, area) => sum + area);
}
