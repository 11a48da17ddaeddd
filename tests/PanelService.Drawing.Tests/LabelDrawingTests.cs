using System.Globalization;
using System.Xml.Linq;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Tests;

public sealed class LabelDrawingTests
{
    private static readonly XNamespace _svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void Every_panel_cut_and_every_offcut_kept_has_one_label()
    {
        Plan plan = Twice(Samples.StudyWeek());

        List<XElement> labels = [.. Labels(plan, LabelPaper.A4)];

        Assert.Equal(
            plan.Sheets[0].Pieces.GroupBy(p => p.Mark).SelectMany(g => Enumerable.Range(1, 2 * g.Count()).Select(n => $"{g.Key} {n}/{2 * g.Count()}")),
            labels.Where(l => Class(l) == "label panel").Select(Corner));
        int kept = 2 * plan.Sheets[0].Offcuts.Count(offcut => offcut.Kept);
        Assert.True(kept > 0);
        Assert.Equal(Enumerable.Range(1, kept).Select(n => $"offcut {n}/{kept}"), labels.Where(l => Class(l) == "label offcut").Select(Corner));
    }

    [Fact]
    public void A_label_says_format_finish_board_and_batch_and_leaves_room_to_sign()
    {
        XElement label = Labels(Samples.StudyWeek(), LabelPaper.A4).First();

        string[] words = [.. Texts(label)];

        Assert.Equal(
            ["8 × 10 in", $"A 1/{Count("A")}", "bare board", "hardboard, 1/8 in thick", "Tern Island study week", "signature", "date"],
            words);
    }

    [Theory]
    [InlineData(LabelPaper.A4, "210mm", "297mm", 210, 297)]
    [InlineData(LabelPaper.Letter, "215.9mm", "279.4mm", 215.9, 279.4)]
    public void A_page_is_the_papers_size_and_everything_lies_on_it(LabelPaper paper, string width, string height, double right, double bottom)
    {
        XElement root = XDocument.Parse(LabelDrawing.Render(Samples.StudyWeek(), paper, 1)).Root!;

        Assert.Equal((width, height), ((string?)root.Attribute("width"), (string?)root.Attribute("height")));
        Assert.Equal(string.Create(CultureInfo.InvariantCulture, $"0 0 {right} {bottom}"), (string?)root.Attribute("viewBox"));
        Assert.All(root.Descendants(_svg + "text"), text =>
        {
            Assert.InRange(Number(text, "x"), 5, right - 5);
            Assert.InRange(Number(text, "y"), 5, bottom - 5);
        });
    }

    // Two columns and six rows have 3 + 7 lines to cut along, each marked at both ends, and 5 crossings inside: 20 + 10 strokes.
    [Fact]
    public void Cut_marks_stand_at_both_ends_of_every_line()
    {
        XElement root = XDocument.Parse(LabelDrawing.Render(Samples.StudyWeek(), LabelPaper.A4, 1)).Root!;

        string path = (string)root.Elements(_svg + "path").Single(p => Class(p) == "cut-marks").Attribute("d")!;

        Assert.Equal(30, path.Count(sign => sign == 'M'));
    }

    /// <summary>Every grid of label sheets.</summary>
    public static TheoryData<LabelPaper, string> Grids()
    {
        var grids = new TheoryData<LabelPaper, string>();
        foreach (LabelSheet sheet in LabelSheet.All)
        {
            grids.Add(sheet.Paper, sheet.Name);
        }

        return grids;
    }

    [Theory]
    [MemberData(nameof(Grids))]
    public void Every_grid_lies_on_its_paper_and_each_label_keeps_to_its_own_place(LabelPaper paper, string name)
    {
        LabelSheet sheet = LabelSheet.Find(paper, name)!;
        var (width, height) = sheet.PaperSize;
        Assert.InRange(sheet.Left + (sheet.Columns * (sheet.Width + sheet.GapAcross)) - sheet.GapAcross, 0, width + 0.01);
        Assert.InRange(sheet.Top + (sheet.Rows * sheet.Height), 0, height + 0.01);
        XElement root = XDocument.Parse(LabelDrawing.Render(Samples.StudyWeek(), sheet, 1, "2026-12-01")).Root!;

        XElement[] labels = [.. root.Elements(_svg + "g").Where(g => Class(g).StartsWith("label ", StringComparison.Ordinal))];

        Assert.Equal(sheet.IsPlain, root.Elements(_svg + "path").Any(p => Class(p) == "cut-marks"));
        Assert.InRange(labels.Length, 1, sheet.Count);
        for (int i = 0; i < labels.Length; i++)
        {
            double left = sheet.Left + (i % sheet.Columns * (sheet.Width + sheet.GapAcross)), top = sheet.Top + (i / sheet.Columns * sheet.Height);
            Assert.Contains("2026-12-01", Texts(labels[i]));
            Assert.All(labels[i].Descendants(_svg + "text"), text =>
            {
                Assert.InRange(Number(text, "x"), left, left + sheet.Width);
                Assert.InRange(Number(text, "y"), top, top + sheet.Height);
            });
        }
    }

    [Fact]
    public void Labels_go_on_over_as_many_pages_as_they_need_and_no_further()
    {
        Plan plan = Samples.StudyWeek();
        int all = plan.Sheets[0].Pieces.Length + plan.Sheets[0].Offcuts.Count(offcut => offcut.Kept);

        Assert.Equal((all + 11) / 12, LabelDrawing.Pages(plan));
        Assert.Throws<ArgumentOutOfRangeException>(() => LabelDrawing.Render(plan, LabelPaper.A4, LabelDrawing.Pages(plan) + 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => LabelDrawing.Render(plan, LabelPaper.A4, 0));
    }

    [Fact]
    public void The_last_page_of_a_great_many_is_drawn_like_the_first()
    {
        Plan plan = Times(Samples.StudyWeek(), 100_000);

        XElement root = XDocument.Parse(LabelDrawing.Render(plan, LabelPaper.Letter, LabelDrawing.Pages(plan))).Root!;

        Assert.InRange(root.Elements(_svg + "g").Count(g => Class(g) == "label offcut"), 1, 12);
    }

    [Fact]
    public void A_label_says_what_ground_its_cloth_has()
    {
        ClothLayout linen = Samples.Linen();
        Plan plan = Samples.StudyWeek() with { Cloth = [linen with { Cloth = linen.Cloth with { Ground = ClothGround.Oil } }] };
        plan = plan with { Panels = [.. plan.Panels.Select(panel => panel with { Line = panel.Line with { Surface = Surface.Cloth } })] };

        Assert.Equal("Primed linen, oil ground, glued on", Texts(Labels(plan, LabelPaper.A4).First()).ElementAt(2));
    }

    // Two remnants of each of three lengths are kept. The first is 7 wide where it lies; nothing of its width is selvedge.
    [Theory]
    [InlineData(LabelPaper.A4, "plain")]
    [InlineData(LabelPaper.Letter, "2x7")]
    public void Every_remnant_kept_has_one_label_with_its_cloth_and_the_warp(LabelPaper paper, string grid)
    {
        Plan plan = Samples.Plan("Loose", LengthUnit.Inch, Samples.Linen() with { Copies = 3 });

        XElement root = XDocument.Parse(LabelDrawing.Render(plan, LabelSheet.Find(paper, grid)!, 1, "2026-12-01")).Root!;
        XElement[] labels = [.. root.Elements(_svg + "g").Where(g => Class(g) == "label remnant")];

        Assert.Equal(Enumerable.Range(1, 6).Select(n => $"remnant {n}/6"), labels.Select(Corner));
        Assert.Equal(["7 × 22 in", "remnant 1/6", "Primed linen", "warp along the second size", "Loose", "note", "date", "2026-12-01"], Texts(labels[0]));
    }

    [Fact]
    public void A_plan_without_boards_and_remnants_says_that_there_is_nothing_to_label()
    {
        Plan plan = Samples.Plan("Loose", LengthUnit.Inch, Samples.Linen() with { Offcuts = [] });

        XElement root = XDocument.Parse(LabelDrawing.Render(plan, LabelPaper.A4, 1)).Root!;

        Assert.Equal(1, LabelDrawing.Pages(plan));
        Assert.Contains(Texts(root), text => text.StartsWith("Nothing to label", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\"]]><svg onload=\"x\" & <!-- -->")]
    [InlineData("bell \u0007 and half a pair \ud800 here")]
    public void A_hostile_title_stays_text(string title)
    {
        XElement root = XDocument.Parse(LabelDrawing.Render(Samples.StudyWeek(title), LabelPaper.A4, 1)).Root!;

        Assert.DoesNotContain(root.Descendants(), e => e.Name.LocalName == "script" || e.Attributes().Any(a => a.Name.LocalName.StartsWith("on", StringComparison.Ordinal)));
        Assert.Single(root.DescendantsAndSelf(_svg + "svg"));
    }

    private static int Count(string mark) => Samples.StudyWeek().Sheets[0].Pieces.Count(piece => piece.Mark == mark);

    private static Plan Twice(Plan plan) => Times(plan, 2);

    private static Plan Times(Plan plan, int copies) => plan with { Sheets = [.. plan.Sheets.Select(sheet => sheet with { Copies = copies })] };

    private static IEnumerable<XElement> Labels(Plan plan, LabelPaper paper) => Enumerable.Range(1, LabelDrawing.Pages(plan))
        .SelectMany(page => XDocument.Parse(LabelDrawing.Render(plan, paper, page)).Root!.Elements(_svg + "g"))
        .Where(g => Class(g).StartsWith("label ", StringComparison.Ordinal));

    private static string Corner(XElement label) => Texts(label).ElementAt(1);

    private static string Class(XElement element) => (string?)element.Attribute("class") ?? "";

    private static IEnumerable<string> Texts(XElement element) => element.Descendants(_svg + "text").Select(text => text.Value);

    private static double Number(XElement element, string name) => double.Parse((string)element.Attribute(name)!, CultureInfo.InvariantCulture);
}
