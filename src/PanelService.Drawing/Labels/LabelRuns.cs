using System.Collections.Immutable;
using PanelService.Drawing.Drafting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Labels;

/// <summary>What a plan's labels say: its panels line by line in the order they are cut, then the kept offcuts, then the
/// remnants of cloth that are kept.</summary>
internal static class LabelRuns
{
    public static ImmutableArray<LabelRun> Of(Plan plan) =>
        [.. plan.Panels.Where(panel => panel.Line.NeedsBoard).SelectMany(panel => Panels(plan, panel)), .. Offcuts(plan), .. Remnants(plan)];

    private static IEnumerable<LabelRun> Panels(Plan plan, PanelResult panel)
    {
        string mark = panel.Line.Mark;
        List<(SheetLayout Sheet, long Count)> cut =
            [.. plan.Sheets.Select(sheet => (sheet, (long)sheet.Copies * sheet.Pieces.Count(piece => piece.Mark == mark))).Where(part => part.Item2 > 0)];
        long all = cut.Sum(part => part.Count);
        long next = 1;
        foreach ((SheetLayout sheet, long count) in cut)
        {
            yield return new LabelRun(
                "panel",
                Size(panel.Line.Width, panel.Line.Height, plan),
                mark,
                next,
                count,
                all,
                [Finish(plan, panel.Line), Board(plan, sheet.Board), Grounds(plan, mark)]);
            next += count;
        }
    }

    private static IEnumerable<LabelRun> Offcuts(Plan plan)
    {
        List<(SheetLayout Sheet, Offcut Offcut)> kept =
            [.. plan.Sheets.SelectMany(sheet => sheet.Offcuts.Where(offcut => offcut.Kept).Select(offcut => (sheet, offcut)))];
        long all = kept.Sum(part => (long)part.Sheet.Copies);
        long next = 1;
        foreach ((SheetLayout sheet, Offcut offcut) in kept)
        {
            yield return new LabelRun(
                "offcut",
                Size(offcut.Width, offcut.Height, plan),
                "offcut",
                next,
                sheet.Copies,
                all,
                [Board(plan, sheet.Board), sheet.Board.Grain == Grain.Height ? "grain along the second size" : ""]);
            next += sheet.Copies;
        }
    }

    private static IEnumerable<LabelRun> Remnants(Plan plan)
    {
        List<(ClothLayout Cloth, Offcut Offcut)> kept =
            [.. plan.Cloth.SelectMany(cloth => cloth.Offcuts.Where(offcut => offcut.Kept).Select(offcut => (cloth, offcut)))];
        long all = kept.Sum(part => (long)part.Cloth.Copies);
        long next = 1;
        foreach ((ClothLayout layout, Offcut offcut) in kept)
        {
            yield return new LabelRun(
                "remnant",
                Size(layout.UsableOf(offcut), offcut.Height, plan),
                "remnant",
                next,
                layout.Copies,
                all,
                [Name(layout.Cloth), "warp along the second size"]);
            next += layout.Copies;
        }
    }

    private static string Name(ClothSupply cloth) => cloth.Name ?? cloth.Kind ?? cloth.Id;

    private static string Size(Length width, Length height, Plan plan) =>
        $"{Wording.Size(width, height, plan.Order.Units)} {LengthText.Abbreviation(plan.Order.Units)}";

    private static string Board(Plan plan, BoardSupply board) =>
        $"{board.Kind ?? board.Name ?? board.Id}, {LengthText.Format(board.Thickness, plan.Order.Units)} thick";

    private static string Finish(Plan plan, PanelLine line) => line.Surface switch
    {
        Surface.Cloth when line.MountLater => $"for {Cloth(plan, line)}{GroundOn(plan, line)} not yet glued on",
        Surface.Cloth => $"{Cloth(plan, line)}{GroundOn(plan, line)} glued on",
        Surface.Primed => "primed board",
        _ => "bare board",
    };

    // Where a line's cloths are of more than one sort, no single name would be true of each panel.
    private static string Cloth(Plan plan, PanelLine line)
    {
        string[] names = [.. plan.Cloth.Where(cloth => cloth.Pieces.Any(piece => piece.Mark == line.Mark))
            .Select(cloth => Name(cloth.Cloth)).Distinct()];
        return names.Length == 1 ? names[0] : line.Cloth ?? "cloth";
    }

    // What the cloth was sold with; where a line's cloths differ, none would be true of each panel.
    private static string GroundOn(Plan plan, PanelLine line)
    {
        ClothGround[] grounds = [.. plan.Cloth.Where(cloth => cloth.Pieces.Any(piece => piece.Mark == line.Mark)).Select(cloth => cloth.Cloth.Ground).Distinct()];
        return grounds switch
        {
            [ClothGround.Oil] => ", oil ground,",
            [ClothGround.Acrylic] => ", acrylic ground,",
            _ => line.MountLater ? "," : "",
        };
    }

    private static string Grounds(Plan plan, string mark) => string.Join("; ", plan.Liquids
        .Where(use => use.Shares.Any(share => share.Mark == mark))
        .Select(use => $"{(use.IsAdhesive ? "glue" : "ground")}: {use.Liquid.Name ?? use.Liquid.Id}"));
}
