using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun;

/// <summary>What of a sheet comes to the saw in one piece: all of it, or a part that the supplier's cuts leave.</summary>
/// <param name="At">Where it lies on the sheet, in steps.</param>
/// <param name="Factory">Which of its edges are the sheet's.</param>
/// <param name="Cuts">The saw's cuts in it, in order.</param>
/// <param name="Width">What gave it its width.</param>
/// <param name="Height">What gave it its height.</param>
internal sealed record SheetPart(Rectangle At, SheetEdges Factory, ImmutableArray<SheetCut> Cuts, SizedBy Width, SizedBy Height)
{
    /// <summary>The parts of a sheet, in the order in which the supplier's cuts leave them.</summary>
    public static ImmutableArray<SheetPart> Of(SheetLayout sheet)
    {
        var parts = new List<SheetPart>
        {
            new(new Rectangle(0, 0, sheet.Board.Width.Steps, sheet.Board.Height.Steps), SheetEdges.All, [], SizedBy.Sheet, SizedBy.Sheet),
        };
        foreach (var cut in sheet.Cuts.Where(cut => cut.BySupplier).OrderBy(cut => cut.Number))
        {
            var workpiece = new Rectangle(cut.X.Steps, cut.Y.Steps, cut.Width.Steps, cut.Height.Steps);
            int index = parts.FindIndex(part => part.At == workpiece);
            var whole = parts[index];
            parts.RemoveAt(index);
            parts.AddRange(Halves(whole, cut));
        }

        return [.. parts.Select(part => part with
        {
            Cuts = [.. sheet.Cuts.Where(cut => !cut.BySupplier && IsIn(cut, part.At)).OrderBy(cut => cut.Number)],
        })];
    }

    private static IEnumerable<SheetPart> Halves(SheetPart whole, SheetCut cut)
    {
        var (at, kerf) = (cut.At.Steps, cut.SupplierKerf!.Value.Steps);
        var part = cut.Axis == Axis.X ? whole with { Width = SizedBy.Supplier } : whole with { Height = SizedBy.Supplier };
        SheetPart[] halves = cut.Axis == Axis.X
            ?
            [
                part with { At = whole.At with { Width = at - whole.At.X }, Factory = whole.Factory & ~SheetEdges.Right },
                part with { At = whole.At with { X = at + kerf, Width = whole.At.X + whole.At.Width - at - kerf }, Factory = whole.Factory & ~SheetEdges.Left },
            ]
            :
            [
                part with { At = whole.At with { Height = at - whole.At.Y }, Factory = whole.Factory & ~SheetEdges.Top },
                part with { At = whole.At with { Y = at + kerf, Height = whole.At.Y + whole.At.Height - at - kerf }, Factory = whole.Factory & ~SheetEdges.Bottom },
            ];
        return halves.Where(half => half.At.Width > 0 && half.At.Height > 0);
    }

    private static bool IsIn(SheetCut cut, Rectangle at) =>
        cut.X.Steps >= at.X && cut.Y.Steps >= at.Y
        && cut.X.Steps + cut.Width.Steps <= at.X + at.Width
        && cut.Y.Steps + cut.Height.Steps <= at.Y + at.Height;
}
