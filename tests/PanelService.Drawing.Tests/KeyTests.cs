using System.Collections.Immutable;
using System.Xml.Linq;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Tests;

/// <summary>A piece too small for its dimensions has its size in the key: there it is never cut short.</summary>
public sealed class KeyTests
{
    // 33 × 41 cm with half an inch of margin all round, on a drawing in inches: neither is a 64th.
    private static readonly Length _width = Samples.Mm(330) + Samples.Inch(1);
    private static readonly Length _height = Samples.Mm(410) + Samples.Inch(1);

    [Theory]
    [InlineData("E")]
    [InlineData("Long mark of a painter")]
    [InlineData("A mark that is so long that it takes more than a line of the key")]
    public void Size_to_cut_stands_whole_in_the_key_however_long_mark_and_figures_are(string mark)
    {
        XElement entry = Assert.Single(Entries(Cloth(mark)));

        string[] lines = [.. entry.Elements().Skip(1).Select(text => text.Value)];
        Assert.Equal($"4 of {Figures(Samples.Mm(330), Samples.Mm(410))}, cut {Figures(_width, _height)}", string.Join(' ', lines));
    }

    [Fact]
    public void Short_entries_stay_in_one_line_beside_a_long_mark()
    {
        XElement[] entries = [.. Entries(Cloth("Long mark of a painter", "B"))];

        Assert.Equal([3, 3], entries.Select(entry => entry.Elements().Count()));
        Assert.Equal("B", entries[1].Elements().First().Value);
        Assert.Equal((string?)entries[1].Elements().First().Attribute("y"), (string?)entries[1].Elements().ElementAt(1).Attribute("y"));
    }

    private static IEnumerable<XElement> Entries(Plan plan) => new Svg(ClothDrawing.Render(plan, 1)).Classed("entry");

    private static string Figures(Length width, Length height) =>
        $"{LengthText.FormatFigure(width, LengthUnit.Inch)} × {LengthText.FormatFigure(height, LengthUnit.Inch)}";

    /// <summary>Four pieces of each mark in a row on cloth 72 in wide.</summary>
    private static Plan Cloth(params string[] marks)
    {
        ImmutableArray<PlacedPanel> pieces =
        [
            .. marks.SelectMany((mark, row) => Enumerable.Range(0, 4).Select(i => new PlacedPanel(mark, _width * i, _height * row, _width, _height, false))),
        ];
        Plan plan = Samples.Plan("Roll", LengthUnit.Inch, Samples.Linen() with { Width = Samples.Inch(72), Length = Samples.Inch(216), Selvedge = Length.Zero, Pieces = pieces, Offcuts = [] });
        return plan with
        {
            Panels = [.. marks.Select(mark => new PanelResult(
                new PanelLine { Mark = mark, Width = Samples.Mm(330), Height = Samples.Mm(410), Quantity = 4 }, IsWish: false, Samples.Mm(330), Samples.Mm(410), 4, Bought: 0, []))],
        };
    }
}
