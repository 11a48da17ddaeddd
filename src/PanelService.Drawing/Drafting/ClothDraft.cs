using System.Collections.Immutable;
using System.Globalization;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Drafting;

/// <summary>What a drawing of a cloth shows.</summary>
internal static class ClothDraft
{
    public static Draft Of(Plan plan, ClothLayout cloth)
    {
        LengthUnit unit = plan.Order.Units;
        ImmutableArray<DraftKey> keys = Keys.Of(plan, cloth.Pieces, unit);
        string name = string.Create(CultureInfo.InvariantCulture, $"Cloth {cloth.Number} of {plan.Cloth.Length}");
        string material = Material(cloth, unit);
        string copies = Wording.Copies(cloth.Copies);
        return new Draft
        {
            Sort = "cloth",
            Batch = Lettering.Clean(plan.Order.Title),
            Name = name,
            Copies = copies,
            Material = material,
            Description = Wording.Describe($"{material}. {copies}.", keys, [.. cloth.Offcuts.Select(offcut => offcut with { Width = WidthOf(cloth, offcut) })], unit),
            Unit = unit,
            Width = cloth.Width,
            Height = cloth.Length,
            Pieces = [.. cloth.Pieces.Select(piece => Piece(plan, piece))],
            Offcuts = [.. cloth.Offcuts.Select(offcut => Millimetres.Of(offcut) with { Width = WidthOf(cloth, offcut) })],
            Bands = Selvedges(cloth),
            BandWord = "selvedge",
            Keys = keys,
            MayFold = true,
            Along = cloth.Cloth.Warp == Grain.Height ? "warp" : null,
        };
    }

    private static DraftPiece Piece(Plan plan, PlacedPanel piece)
    {
        BenchSettings bench = plan.Order.Bench;
        double left = Millimetres.Of(piece.Turned ? bench.MarginEnds : bench.MarginSides);
        double top = Millimetres.Of(piece.Turned ? bench.MarginSides : bench.MarginEnds);
        double across = Millimetres.Of(piece.Turned ? bench.MarginAlong : bench.MarginAcross);
        double along = Millimetres.Of(piece.Turned ? bench.MarginAcross : bench.MarginAlong);
        Box box = Millimetres.Of(piece);
        var panel = new Box(box.X + left, box.Y + top, box.Width - across, box.Height - along);
        bool shown = (across > 0 || along > 0) && panel.Width > 0 && panel.Height > 0;
        return new DraftPiece(piece.Mark, box, piece.Width, piece.Height, piece.Turned, shown ? panel : null);
    }

    // What is kept is told as it is booked and labelled, without selvedges; its box is drawn as it lies.
    private static Length WidthOf(ClothLayout cloth, Offcut offcut) => offcut.Kept ? cloth.UsableOf(offcut) : offcut.Width;

    private static ImmutableArray<Box> Selvedges(ClothLayout cloth)
    {
        double width = Millimetres.Of(cloth.Selvedge);
        double length = Millimetres.Of(cloth.Length);
        return width > 0
            ? [new Box(0, 0, width, length), new Box(Millimetres.Of(cloth.Width) - width, 0, width, length)]
            : [];
    }

    private static string Material(ClothLayout cloth, LengthUnit unit)
    {
        string from = cloth.Remnant is { } remnant ? $"remnant {Lettering.Clean(remnant.Id)} from the rack" : "bought";
        string size = $"{LengthText.FormatFigure(cloth.Width, unit)} wide, {LengthText.FormatFigure(cloth.Length, unit)} {LengthText.Abbreviation(unit)} long";
        return $"{Lettering.Clean(cloth.Cloth.Name ?? cloth.Cloth.Id)}, {size}, {from}";
    }
}
