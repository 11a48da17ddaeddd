using System.Xml.Linq;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Tests;

public sealed class SawSlipTests
{
    private static readonly XNamespace _svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void An_entry_says_the_distance_what_goes_through_what_comes_out_and_has_a_box_to_tick()
    {
        XElement step = Steps(Sawn(1), LabelPaper.A4).First();

        string[] words = [.. step.Elements(_svg + "text").Select(text => text.Value)];
        Assert.Equal("1", words[0]);
        Assert.Equal("Fence 8 in", words[1]);
        Assert.Equal("Sheet 1 · cut 1: 24 × 48 → 8 × 48 and 15 7/8 × 48 · left edge, factory", words[2]);
        Assert.Equal(2, step.Elements(_svg + "rect").Count(box => (string?)box.Attribute("class") == "tick"));
    }

    [Fact]
    public void The_cuts_of_a_setting_are_drawn_in_the_accent_on_their_sheet()
    {
        XElement picture = Steps(Sawn(1), LabelPaper.A4).First().Elements(_svg + "g").Single(g => (string?)g.Attribute("class") == "sheet-picture");

        XElement cut = Assert.Single(picture.Elements(_svg + "path"));
        Assert.Equal(("1", "#b3261e"), ((string?)cut.Attribute("data-cut"), (string?)cut.Attribute("stroke")));
    }

    [Theory]
    [InlineData(LabelPaper.A4, "210mm", 297)]
    [InlineData(LabelPaper.Letter, "215.9mm", 279.4)]
    public void Every_step_stands_once_and_everything_lies_on_the_paper(LabelPaper paper, string width, double bottom)
    {
        Plan plan = Sawn(40);
        var pages = Enumerable.Range(1, SawSlipDrawing.Pages(plan)).Select(page => XDocument.Parse(SawSlipDrawing.Render(plan, paper, page)).Root!).ToList();

        Assert.True(pages.Count > 1);
        Assert.All(pages, page => Assert.Equal(width, (string?)page.Attribute("width")));
        Assert.Equal(Enumerable.Range(1, 40).Select(n => n.ToString(System.Globalization.CultureInfo.InvariantCulture)), Steps(plan, paper).Select(step => (string?)step.Attribute("data-step")));
        Assert.All(pages.SelectMany(page => page.Descendants(_svg + "text")), text =>
            Assert.InRange(double.Parse((string)text.Attribute("y")!, System.Globalization.CultureInfo.InvariantCulture), 5, bottom - 5));
    }

    [Fact]
    public void Every_page_ends_with_the_manual_and_an_experienced_person() =>
        Assert.Contains("experienced person come first", SawSlipDrawing.Render(Sawn(40), LabelPaper.A4, 2), StringComparison.Ordinal);

    [Fact]
    public void Nothing_to_saw_is_said() =>
        Assert.Contains("Nothing is sawn.", SawSlipDrawing.Render(Samples.StudyWeek(), LabelPaper.A4, 1), StringComparison.Ordinal);

    [Fact]
    public void A_slip_in_french_says_everything_in_french()
    {
        string slip = SawSlipDrawing.Render(Sawn(1), LabelPaper.A4, 1, SlipLanguage.French);

        Assert.Contains("Guide 8 in", slip, StringComparison.Ordinal);
        Assert.Contains("bord gauche, d’usine", slip, StringComparison.Ordinal);
        Assert.Contains("Moins de 6 in (150 mm) entre guide et lame", slip, StringComparison.Ordinal);
        Assert.DoesNotContain("Mind it.", slip, StringComparison.Ordinal);
        Assert.DoesNotContain("Sheet", slip, StringComparison.Ordinal);
    }

    [Fact]
    public void Like_cuts_of_several_sheets_stand_in_one_line_and_a_caution_said_on_the_page_is_not_said_again()
    {
        Plan plan = Sawn(2);
        plan = plan with
        {
            Sheets = [plan.Sheets[0], plan.Sheets[0] with { Number = 2, Copies = 3 }],
            SawRun = [.. plan.SawRun.Select(step => step with
            {
                Passes = [step.Passes[0], step.Passes[0] with { Sheet = 2 }],
                Cautions = [new Warning("narrow-rip", "Too narrow: mind it. Here: 5 in.") { Here = "5 in" }],
            })],
        };

        string[][] lines = [.. Steps(plan, LabelPaper.A4).Select(step => step.Elements(_svg + "text").Select(text => text.Value).ToArray())];

        Assert.All(lines, step => Assert.StartsWith("Sheets 1, 2 (3 ×) · cut 1: 24 × 48 → 8 × 48", step[2], StringComparison.Ordinal));
        Assert.Equal("Too narrow: mind it. Here: 5 in.", lines[0][^1]);
        Assert.Equal("Too narrow: 5 in", lines[1][^1]);
    }

    [Theory]
    [InlineData("5 in", "Ici : 5 in.")]
    [InlineData("5 in …", "Ici : 5 in …")]
    public void A_caution_in_french_ends_with_one_sign(string here, string end)
    {
        Plan plan = Sawn(1);
        plan = plan with { SawRun = [.. plan.SawRun.Select(step => step with { Cautions = [new Warning("narrow-rip", "") { Here = here }] })] };

        string slip = SawSlipDrawing.Render(plan, LabelPaper.A4, 1, SlipLanguage.French);

        Assert.Contains($"{end}<", slip, StringComparison.Ordinal);
    }

    [Fact]
    public void A_slip_in_french_has_a_decimal_comma()
    {
        Plan plan = Sawn(1);
        plan = plan with { Order = plan.Order with { Units = LengthUnit.Centimetre } };

        string slip = SawSlipDrawing.Render(plan, LabelPaper.A4, 1, SlipLanguage.French);

        Assert.Contains("Guide 20,32 cm", slip, StringComparison.Ordinal);
        Assert.Contains("Fence 20.32 cm", SawSlipDrawing.Render(plan, LabelPaper.A4, 1), StringComparison.Ordinal);
    }

    [Fact]
    public void A_long_line_goes_on_in_the_next_and_is_not_cut_short()
    {
        Plan plan = Sawn(1);
        var cut = plan.Sheets[0].Cuts[0] with { Width = Samples.Inch(23.984375m), Height = Samples.Inch(47.984375m), At = Samples.Inch(7.984375m) };
        plan = plan with { Sheets = [.. Enumerable.Range(1, 3).Select(n => plan.Sheets[0] with { Number = n, Copies = 100, Cuts = [cut with { Width = cut.Width + Samples.Inch(n) }] })] };
        plan = plan with { SawRun = [plan.SawRun[0] with { Passes = [.. Enumerable.Range(1, 3).Select(n => new SawPass(n, 1, SheetEdge.Bottom, EdgeMaker.Factory))] }] };

        string slip = SawSlipDrawing.Render(plan, LabelPaper.A4, 1);
        XElement[] texts = [.. Steps(plan, LabelPaper.A4).Single().Elements(_svg + "text")];

        Assert.DoesNotContain("…", slip, StringComparison.Ordinal);
        Assert.Contains(texts, text => text.Value.StartsWith("Sheet 3, 100 ×", StringComparison.Ordinal));
        Assert.Contains(texts, text => text.Value.EndsWith("bottom edge, factory", StringComparison.Ordinal) && !text.Value.StartsWith("Sheet", StringComparison.Ordinal));
    }

    // The text's extent by an average letter of a usual sans-serif, half its size wide: 68 letters take 116 of 131 mm.
    [Fact]
    public void A_line_that_has_room_beside_the_pictures_is_not_ended_early()
    {
        Plan plan = Sawn(1);
        var cut = plan.Sheets[0].Cuts[0];
        plan = plan with { Sheets = [.. Enumerable.Range(1, 3).Select(n => plan.Sheets[0] with { Number = n, Cuts = [cut with { Width = Samples.Inch(24 - n) }] })] };
        plan = plan with { SawRun = [plan.SawRun[0] with { Passes = [.. Enumerable.Range(1, 3).Select(n => new SawPass(n, 1, SheetEdge.Right, EdgeMaker.Factory))] }] };

        string[] lines = [.. Steps(plan, LabelPaper.A4).Single().Elements(_svg + "text").Skip(2).Select(text => text.Value).SkipLast(1)];

        Assert.Equal(3, lines.Length);
        Assert.Equal("Sheet 1 · cut 1: 23 × 48 → 8 × 48 and 14 7/8 × 48 · right edge, factory", lines[0]);
    }

    [Fact]
    public void The_suppliers_slip_has_every_first_cut_with_its_distance_and_the_parts_that_come_out()
    {
        Plan plan = Sawn(1);
        var first = plan.Sheets[0].Cuts[0] with { Axis = Axis.Y, At = Samples.Inch(23), SupplierKerf = Samples.EighthInch };
        plan = plan with { Sheets = [plan.Sheets[0] with { Cuts = [first] }] };

        XElement slip = XDocument.Parse(SupplierSlipDrawing.Render(plan, LabelPaper.Letter, 1, SlipLanguage.English)).Root!;
        string words = string.Join(" | ", slip.Descendants(_svg + "text").Select(text => text.Value));

        Assert.Contains("Have these cuts made where you buy it", words, StringComparison.Ordinal);
        Assert.Contains("1. 24 × 48: 23 in from the top edge", words, StringComparison.Ordinal);
        Assert.Contains("24 × 23; 24 × 24 7/8", words, StringComparison.Ordinal);
        Assert.Single(slip.Descendants(_svg + "path"), path => (string?)path.Attribute("class") == "cut");
        Assert.Contains("Nothing has to be cut where you buy it.", SupplierSlipDrawing.Render(Sawn(1), LabelPaper.A4, 1, SlipLanguage.English), StringComparison.Ordinal);
    }

    // The second cut is made so that the middle of its upper part, where the size stands, lies beside the usual place of the first one's number.
    [Fact]
    public void A_number_on_the_suppliers_slip_touches_no_size()
    {
        Plan plan = Sawn(1);
        var first = plan.Sheets[0].Cuts[0] with { SupplierKerf = Samples.EighthInch };
        var second = new SheetCut(2, Samples.Inch(8.125m), default, Samples.Inch(15.875m), Samples.Inch(48), Axis.Y, Samples.Inch(19.1875m), IsTrim: false) { SupplierKerf = Samples.EighthInch };
        plan = plan with { Sheets = [plan.Sheets[0] with { Cuts = [first, second] }] };

        XElement picture = XDocument.Parse(SupplierSlipDrawing.Render(plan, LabelPaper.A4, 1, SlipLanguage.English)).Descendants(_svg + "g").Single(g => (string?)g.Attribute("class") == "sheet-picture");
        List<(double X, double Y, double Width, double Height)> badges = [.. picture.Elements(_svg + "rect").Where(rect => rect.Attribute("rx") is not null).Select(Svg.Box)];
        List<(double X, double Y, double Width, double Height)> sizes = [.. picture.Elements(_svg + "text").Where(text => text.Value.Contains('×', StringComparison.Ordinal)).Select(BoxOfSize)];

        Assert.Equal((2, 3), (badges.Count, sizes.Count));
        Assert.All(badges, badge => Assert.All(sizes, size => Assert.True(
            badge.X + badge.Width < size.X || size.X + size.Width < badge.X || badge.Y + badge.Height < size.Y || size.Y + size.Height < badge.Y, $"The number at {badge} touches the size at {size}.")));
    }

    // No font is here to measure by: half the letters' size each is less than any sans-serif takes.
    private static (double X, double Y, double Width, double Height) BoxOfSize(XElement text)
    {
        double letters = Svg.Number(text.Attribute("font-size")!.Value);
        double width = text.Value.Length * letters * 0.5;
        return (Svg.Number(text.Attribute("x")!.Value) - (width / 2), Svg.Number(text.Attribute("y")!.Value) - (letters * 0.75), width, letters * 0.75);
    }

    /// <summary>A run that makes the same first cut at every step: enough to be drawn.</summary>
    private static Plan Sawn(int steps)
    {
        Plan plan = Samples.StudyWeek();
        var cut = new SheetCut(1, default, default, Samples.Inch(24), Samples.Inch(48), Axis.X, Samples.Inch(8), IsTrim: false);
        return plan with
        {
            Sheets = [plan.Sheets[0] with { Cuts = [cut], Kerf = Samples.EighthInch }],
            SawProof = new SawProof(1, 1, steps),
            SawRun = [.. Enumerable.Range(1, steps).Select(n => new SawStep(
                n, SawTool.Fence, Samples.Inch(8), [new SawPass(1, 1, SheetEdge.Left, EdgeMaker.Factory)], [new Warning("narrow-rip", "Mind it.")]))],
        };
    }

    private static IEnumerable<XElement> Steps(Plan plan, LabelPaper paper) => Enumerable.Range(1, SawSlipDrawing.Pages(plan))
        .SelectMany(page => XDocument.Parse(SawSlipDrawing.Render(plan, paper, page)).Descendants(_svg + "g"))
        .Where(group => (string?)group.Attribute("class") == "step");
}
