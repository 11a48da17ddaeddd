using System.Globalization;
using System.Xml.Linq;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Tests;

public sealed class SheetDrawingTests
{
    [Fact]
    public void Every_piece_stands_at_its_place_in_millimetres()
    {
        Plan plan = Samples.StudyWeek();

        var svg = new Svg(SheetDrawing.Render(plan, 1));

        (string, double, double, double, double)[] wanted =
            [.. plan.Sheets[0].Pieces.Select(p => (p.Mark, Mm(p.X), Mm(p.Y), Mm(p.Width), Mm(p.Height)))];
        (string, double, double, double, double)[] drawn =
            [.. svg.Classed("piece").Select(g => ((string)g.Attribute("data-mark")!, Svg.FirstBox(g).X, Svg.FirstBox(g).Y, Svg.FirstBox(g).Width, Svg.FirstBox(g).Height))];
        Assert.Equal(wanted, drawn);
    }

    [Fact]
    public void Every_cut_is_a_kerf_wide_path_with_its_number()
    {
        Plan plan = Samples.StudyWeek();

        var svg = new Svg(SheetDrawing.Render(plan, 1));

        List<XElement> cuts = [.. svg.Classed("cut")];
        Assert.Equal(plan.Sheets[0].Cuts.Select(cut => cut.Number), cuts.Select(cut => int.Parse((string)cut.Attribute("data-cut")!, CultureInfo.InvariantCulture)));
        Assert.All(cuts, cut =>
        {
            (_, _, double width, double height) = Svg.FirstBox(cut);
            Assert.Equal(3.175, Math.Min(width, height), 6);
            Assert.Contains((string)cut.Attribute("data-cut")!, Texts(cut));
        });
    }

    [Fact]
    public void Every_offcut_is_hatched_at_45_degrees_and_kept_ones_say_so()
    {
        Plan plan = Samples.StudyWeek();

        var svg = new Svg(SheetDrawing.Render(plan, 1));

        List<XElement> offcuts = [.. svg.Classed("offcut")];
        Assert.Equal(plan.Sheets[0].Offcuts.Select(o => (Mm(o.X), Mm(o.Y), Mm(o.Width), Mm(o.Height))), offcuts.Select(Svg.FirstBox));
        Assert.Equal(plan.Sheets[0].Offcuts.Count(o => o.Kept), svg.Classed("kept").Count());
        Assert.All(offcuts, offcut => Assert.All(HatchLines(offcut), line => Assert.Equal(1, Math.Abs(line.Y2 - line.Y1) / Math.Abs(line.X2 - line.X1), 1)));
        Assert.Contains(Texts(svg.Root), text => text.StartsWith("keep 24 × ", StringComparison.Ordinal));
    }

    [Fact]
    public void Hatch_lines_stay_in_their_offcut()
    {
        var svg = new Svg(SheetDrawing.Render(Samples.StudyWeek(), 1));

        Assert.All(svg.Classed("offcut"), offcut =>
        {
            (double x, double y, double width, double height) = Svg.FirstBox(offcut);
            Assert.All(HatchLines(offcut), line =>
            {
                Assert.InRange(line.X1, x - 0.006, x + width + 0.006);
                Assert.InRange(line.X2, x - 0.006, x + width + 0.006);
                Assert.InRange(line.Y1, y - 0.006, y + height + 0.006);
                Assert.InRange(line.Y2, y - 0.006, y + height + 0.006);
            });
        });
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\"]]><svg onload=\"x\" & <!-- -->")]
    [InlineData("bell \u0007 and half a pair \ud800 here")]
    public void A_hostile_title_stays_text(string title)
    {
        string text = SheetDrawing.Render(Samples.StudyWeek(title), 1);

        var svg = new Svg(text);
        Assert.DoesNotContain(svg.Root.DescendantsAndSelf(), element => element.Name.LocalName is "script" or "foreignObject" or "style" or "image" or "use" or "a");
        Assert.DoesNotContain(svg.Root.DescendantsAndSelf().Attributes(), attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal) || attribute.Name.LocalName is "href" or "style");
        Assert.Single(svg.Elements("svg").Append(svg.Root));
    }

    [Fact]
    public void A_hostile_mark_stays_text()
    {
        string mark = "<b>&\"'";
        string text = SheetDrawing.Render(Samples.Crowded(3, mark, Samples.Inch(12), Samples.Inch(16)), 1);

        var svg = new Svg(text);
        Assert.Equal(3, svg.Classed("marks").Elements().Count(element => element.Value == mark));
    }

    [Fact]
    public void Sizes_of_an_inch_order_read_as_on_a_tape()
    {
        IEnumerable<string> texts = Texts(new Svg(SheetDrawing.Render(Samples.StudyWeek(), 1)).Root);

        Assert.Contains("7 15/16", texts);
        Assert.Contains("9 15/16", texts);
    }

    [Fact]
    public void The_strip_names_sheet_copies_board_and_batch()
    {
        Plan plan = Samples.StudyWeek();
        plan = plan with { Sheets = [plan.Sheets[0] with { Copies = 3 }, plan.Sheets[0] with { Number = 2 }] };

        string strip = string.Join('|', new Svg(SheetDrawing.Render(plan, 1)).Classed("strip").Single().Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value));

        Assert.Contains("Sheet 1 of 2", strip, StringComparison.Ordinal);
        Assert.Contains("cut 3 like this", strip, StringComparison.Ordinal);
        Assert.Contains("Hardboard 1/8, 2 x 4 ft", strip, StringComparison.Ordinal);
        Assert.Contains("Tern Island study week", strip, StringComparison.Ordinal);
        Assert.Contains("sizes in inches", strip, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_plan_gives_the_same_drawing() =>
        Assert.Equal(SheetDrawing.Render(Samples.StudyWeek(), 1), SheetDrawing.Render(Samples.StudyWeek(), 1));

    [Fact]
    public void A_sheet_the_plan_lacks_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SheetDrawing.Render(Samples.StudyWeek(), 2));

    [Fact]
    public void A_path_that_hangs_over_its_workpiece_is_drawn_only_on_it()
    {
        Plan plan = Samples.StudyWeek();
        SheetCut last = plan.Sheets[0].Cuts[0];
        SheetCut shaving = last with { At = last.Y + last.Height - Length.FromMillimetres(1) };
        plan = plan with { Sheets = [plan.Sheets[0] with { Cuts = [shaving] }] };

        (_, double y, _, double height) = Svg.FirstBox(new Svg(SheetDrawing.Render(plan, 1)).Classed("cut").Single());

        Assert.Equal(1, height, 6);
        Assert.Equal(Mm(last.Y + last.Height), y + height, 6);
    }

    private static double Mm(Length length) => (double)length.Millimetres;

    private static IEnumerable<string> Texts(XElement root) => root.Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value);

    private static IEnumerable<(double X1, double Y1, double X2, double Y2)> HatchLines(XElement offcut)
    {
        string path = (string)offcut.Elements().Single(e => e.Name.LocalName == "path").Attribute("d")!;
        foreach (string line in path.Split('M', StringSplitOptions.RemoveEmptyEntries))
        {
            double[] n = [.. line.Split(' ', 'L').Select(Svg.Number)];
            yield return (n[0], n[1], n[2], n[3]);
        }
    }
}
