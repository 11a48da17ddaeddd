using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Plans;

/// <summary>Where goods come from.</summary>
public enum Source
{
    /// <summary>Bought at its price.</summary>
    Bought,

    /// <summary>From the studio, at its value.</summary>
    OnHand,
}

/// <summary>One distinct way of cutting a sheet, with every copy of it.</summary>
public sealed record SheetLayout
{
    /// <summary>1, 2, … in the order of the plan.</summary>
    public required int Number { get; init; }

    /// <summary>How many sheets are cut so.</summary>
    public required int Copies { get; init; }

    /// <summary>The board, as ordered.</summary>
    public required BoardSupply Board { get; init; }

    /// <summary>Bought or on hand.</summary>
    public required Source Source { get; init; }

    /// <summary>What is lost at each factory edge of this sheet.</summary>
    public required Length EdgeTrim { get; init; }

    /// <summary>What one cut turns to dust.</summary>
    public required Length Kerf { get; init; }

    /// <summary>The pieces of one copy.</summary>
    public required ImmutableArray<PlacedPanel> Pieces { get; init; }

    /// <summary>The leftovers of one copy.</summary>
    public required ImmutableArray<Offcut> Offcuts { get; init; }

    /// <summary>The cuts, in an order they can be made in.</summary>
    public required ImmutableArray<SheetCut> Cuts { get; init; }

    /// <summary>The waste of one copy.</summary>
    public required SheetWaste Waste { get; init; }

    /// <summary>What one copy costs: price or value.</summary>
    public Money CostEach => Source == Source.Bought ? Board.Price : Board.Value;

    /// <summary>How far the painter's own saw cuts on one copy: each cut from edge to edge of its workpiece.</summary>
    public Length CutLength => Cuts.Where(cut => !cut.BySupplier).Aggregate(
        Length.Zero, (sum, cut) => sum + (cut.Axis == Axis.X ? cut.Height : cut.Width));

    /// <summary>Full area of one copy.</summary>
    public Area Area => Board.Width * Board.Height;

    /// <summary>
    /// What is still lost at each edge of a leftover: zero, but where a supplier's cut parted it off with a factory edge that
    /// nobody has trimmed since.
    /// </summary>
    /// <param name="offcut">A leftover of this sheet.</param>
    public Length TrimOf(Offcut offcut)
    {
        bool isTrimmed = offcut.X >= EdgeTrim && offcut.X + offcut.Width <= Board.Width - EdgeTrim
            && offcut.Y >= EdgeTrim && offcut.Y + offcut.Height <= Board.Height - EdgeTrim;
        return isTrimmed ? Length.Zero : EdgeTrim;
    }
}

/// <summary>One cut of a sheet.</summary>
/// <param name="Number">1, 2, … in the order they are made.</param>
/// <param name="X">The workpiece's corner.</param>
/// <param name="Y">The workpiece's corner.</param>
/// <param name="Width">The workpiece's width.</param>
/// <param name="Height">The workpiece's height.</param>
/// <param name="Axis">The axis cut across.</param>
/// <param name="At">Where the blade's path begins, in sheet coordinates.</param>
/// <param name="IsTrim">Whether it trims a factory edge.</param>
public sealed record SheetCut(int Number, Length X, Length Y, Length Width, Length Height, Axis Axis, Length At, bool IsTrim)
{
    /// <summary>What the supplier's cut turns to dust; null: it is made at the saw.</summary>
    public Length? SupplierKerf { get; init; }

    /// <summary>Whether it is made where the sheet is bought.</summary>
    public bool BySupplier => SupplierKerf is not null;
}

/// <summary>What one copy of a sheet loses. The three and the pieces and the kept offcuts make up its area.</summary>
/// <param name="Kerf">Dust of the cuts inside the trimmed sheet.</param>
/// <param name="Trim">All that is lost at the factory edges, the trimming cuts included.</param>
/// <param name="Scrap">Leftovers too small to keep.</param>
public sealed record SheetWaste(Area Kerf, Area Trim, Area Scrap)
{
    /// <summary>All three together.</summary>
    public Area All => Kerf + Trim + Scrap;

    /// <summary>The waste of one copy.</summary>
    /// <param name="sheet">The sheet's full size.</param>
    /// <param name="edgeTrim">What is lost at each factory edge.</param>
    /// <param name="pieces">What the pieces take.</param>
    /// <param name="offcuts">The offcuts but for trimmed strips; one that still has its factory edge loses nothing there.</param>
    internal static SheetWaste Of((Length Width, Length Height) sheet, Length edgeTrim, Area pieces, ImmutableArray<Offcut> offcuts)
    {
        var inner = (sheet.Width - (edgeTrim * 2)) * (sheet.Height - (edgeTrim * 2));
        var left = Sum(offcuts.Select(offcut => offcut.Area));
        var leftInside = Sum(offcuts.Select(offcut =>
            Inside(offcut.X, offcut.Width, edgeTrim, sheet.Width) * Inside(offcut.Y, offcut.Height, edgeTrim, sheet.Height)));
        return new SheetWaste(
            Kerf: inner - pieces - leftInside,
            Trim: (sheet.Width * sheet.Height) - inner - (left - leftInside),
            Scrap: left - Sum(offcuts.Where(offcut => offcut.Kept).Select(offcut => offcut.Area)));
    }

    /// <summary>How much of an extent lies between the trimmed edges.</summary>
    private static Length Inside(Length from, Length extent, Length edgeTrim, Length whole) =>
        Length.Max(Length.Zero, Length.Min(from + extent, whole - edgeTrim) - Length.Max(from, edgeTrim));

    private static Area Sum(IEnumerable<Area> areas) => areas.Aggregate(Area.Zero, (sum, area) => sum + area);
}
