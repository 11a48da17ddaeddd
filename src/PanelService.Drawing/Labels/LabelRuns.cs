using System.Collections.Immutable;
using PanelService.Drawing.Drafting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Labels;

/// <summary>What a plan's labels say: its panels line by line in the order they are cut, then the kept offcuts, then the
/// remnants of cloth that are kept.</summary>
/// <param name="plan">The plan.</param>
/// <param name="words">The words.</param>
internal sealed class LabelRuns(Plan plan, LabelWords words)
{
    public static ImmutableArray<LabelRun> Of(Plan plan, LabelWords words) => new LabelRuns(plan, words).All();

    private ImmutableArray<LabelRun> All() =>
        [.. plan.Panels.Where(panel => panel.Line.NeedsBoard).SelectMany(Panels), .. Offcuts(), .. Remnants()];

    private IEnumerable<LabelRun> Panels(PanelResult panel)
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
                Size(panel.Line.Width, panel.Line.Height),
                mark,
                next,
                count,
                all,
                [Finish(panel.Line), Board(sheet.Board), Grounds(mark)]);
            next += count;
        }
    }

    private IEnumerable<LabelRun> Offcuts()
    {
        List<(SheetLayout Sheet, Offcut Offcut)> kept =
            [.. plan.Sheets.SelectMany(sheet => sheet.Offcuts.Where(offcut => offcut.Kept).Select(offcut => (sheet, offcut)))];
        long all = kept.Sum(part => (long)part.Sheet.Copies);
        long next = 1;
        foreach ((SheetLayout sheet, Offcut offcut) in kept)
        {
            yield return new LabelRun(
                "offcut",
                Size(offcut.Width, offcut.Height),
                words.Offcut,
                next,
                sheet.Copies,
                all,
                [Board(sheet.Board), sheet.Board.Grain == Grain.Height ? words.GrainAlongSecond : ""]);
            next += sheet.Copies;
        }
    }

    private IEnumerable<LabelRun> Remnants()
    {
        List<(ClothLayout Cloth, Offcut Offcut)> kept =
            [.. plan.Cloth.SelectMany(cloth => cloth.Offcuts.Where(offcut => offcut.Kept).Select(offcut => (cloth, offcut)))];
        long all = kept.Sum(part => (long)part.Cloth.Copies);
        long next = 1;
        foreach ((ClothLayout layout, Offcut offcut) in kept)
        {
            yield return new LabelRun(
                "remnant",
                Size(layout.UsableOf(offcut), offcut.Height),
                words.Remnant,
                next,
                layout.Copies,
                all,
                [Name(layout.Cloth), words.WarpAlongSecond]);
            next += layout.Copies;
        }
    }

    private static string Name(ClothSupply cloth) => cloth.Name ?? cloth.Kind ?? cloth.Id;

    private string Size(Length width, Length height) =>
        $"{Wording.Size(width, height, plan.Order.Units)} {LengthText.Abbreviation(plan.Order.Units)}";

    private string Board(BoardSupply board) =>
        $"{board.Kind ?? board.Name ?? board.Id}, {words.Thick(LengthText.Format(board.Thickness, plan.Order.Units))}";

    private string Finish(PanelLine line) => line.Surface switch
    {
        Surface.Cloth when line.MountLater => words.NotYetGluedOn(Cloth(line), GroundOn(line)),
        Surface.Cloth => words.GluedOn(Cloth(line), GroundOn(line)),
        Surface.Primed => words.Primed,
        _ => words.Bare,
    };

    // Where a line's cloths are of more than one sort, no single name would be true of each panel.
    private string Cloth(PanelLine line)
    {
        string[] names = [.. plan.Cloth.Where(cloth => cloth.Pieces.Any(piece => piece.Mark == line.Mark))
            .Select(cloth => Name(cloth.Cloth)).Distinct()];
        return names.Length == 1 ? names[0] : line.Cloth ?? words.Cloth;
    }

    // What the cloth was sold with; where a line's cloths differ, none would be true of each panel.
    private string GroundOn(PanelLine line)
    {
        ClothGround[] grounds = [.. plan.Cloth.Where(cloth => cloth.Pieces.Any(piece => piece.Mark == line.Mark)).Select(cloth => cloth.Cloth.Ground).Distinct()];
        return grounds switch
        {
            [ClothGround.Oil] => words.OilGround,
            [ClothGround.Acrylic] => words.AcrylicGround,
            _ => "",
        };
    }

    private string Grounds(string mark) => string.Join("; ", plan.Liquids
        .Where(use => use.Shares.Any(share => share.Mark == mark))
        .Select(use => words.Named(use.IsAdhesive ? words.Glue : words.Ground, use.Liquid.Name ?? use.Liquid.Id)));
}
