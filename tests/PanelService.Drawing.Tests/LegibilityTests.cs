using System.Xml.Linq;
using CsCheck;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Tests;

/// <summary>What a person needs to read a drawing, on every drawing: room, no text over text, paper that holds it.</summary>
public sealed class LegibilityTests
{
    private static readonly string[] Marks = ["A", "B", "AA", "Q7", "Long mark of a painter"];

    private static readonly Gen<(string Mark, Length Width, Length Height)> Piece = Gen.Select(
        Gen.Int[0, 4].Select(i => Marks[i]),
        Gen.Int[1, 300],
        Gen.Int[1, 300],
        (mark, width, height) => (mark, Samples.Mm(width * 4), Samples.Mm(height * 4)));

    public static TheoryData<int, string, decimal, decimal> Crowds => new()
    {
        { 100, "A", 8, 4 },
        { 400, "A", 3, 2 },
        { 900, "A", 2, 1 },
        { 60, "Long mark of a painter", 5, 7 },
        { 12, "A", 0.25m, 3 },
        { 300, "AB", 0.75m, 4 },
    };

    [Theory]
    [MemberData(nameof(Crowds))]
    public void A_crowded_sheet_stays_legible(int count, string mark, decimal width, decimal height) =>
        IsLegible(SheetDrawing.Render(Samples.Crowded(count, mark, Samples.Inch(width), Samples.Inch(height)), 1));

    [Fact]
    public void Any_sheet_is_legible() =>
        Piece.Array[1, 60].Sample(
            pieces => IsLegible(SheetDrawing.Render(
                Samples.Plan("Any", LengthUnit.Millimetre, Shelves.Fill(Samples.LargeSheet, Samples.Mm(3.2m), pieces.DistinctBy(p => (p.Mark, p.Width, p.Height)))),
                1)),
            iter: 100);

    [Fact]
    public void Cloth_is_legible() =>
        IsLegible(ClothDrawing.Render(Samples.Plan("Cloth", LengthUnit.Inch, Samples.Linen()), 1));

    [Fact]
    public void More_than_a_hundred_pieces_all_carry_their_mark()
    {
        var svg = new Svg(SheetDrawing.Render(Samples.Crowded(150, "A", Samples.Inch(4), Samples.Inch(5)), 1));

        Assert.Equal(svg.Classed("piece").Count(), svg.Classed("marks").Elements().Count());
        Assert.All(svg.Classed("cut"), cut => Assert.Single(cut.Descendants(), e => e.Name.LocalName == "text"));
    }

    [Fact]
    public void A_piece_too_small_for_text_has_a_leader_line_to_its_mark_and_size()
    {
        var svg = new Svg(SheetDrawing.Render(Samples.Crowded(5, "A", Samples.Inch(0.25m), Samples.Inch(3)), 1));

        Assert.Equal(5, svg.Classed("leader").Count());
        Assert.All(svg.Classed("leader"), leader => Assert.Contains("A  1/4 × 3", leader.Value, StringComparison.Ordinal));
    }

    private static void IsLegible(string text)
    {
        var svg = new Svg(text);
        (double X, double Y, double Width, double Height) page = svg.ViewBox;
        double scale = page.Width / Svg.Number(((string)svg.Root.Attribute("width")!).Replace("mm", "", StringComparison.Ordinal));
        Assert.True(page.Width / scale <= 186.001 && page.Height / scale <= 245.001, "fits A4 and Letter");
        Assert.All(svg.Elements("rect").Select(Svg.Box), box => Inside(page, box));
        List<(double X, double Y, double Width, double Height)> texts = [.. svg.Elements("text").Select(Extent)];
        Assert.All(texts, box => Inside(page, box));
        for (int i = 0; i < texts.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                if (Overlap(texts[i], texts[j]))
                {
                    Assert.Fail($"{svg.Elements("text").ElementAt(i)} overlaps {svg.Elements("text").ElementAt(j)}");
                }
            }
        }

        Assert.All(svg.Elements("text"), t => Assert.False(string.IsNullOrWhiteSpace(t.Value), $"{t} says nothing"));
        Assert.All(svg.Elements("text"), t => Assert.True(Svg.Number((string)t.Attribute("font-size")!) / scale >= 1.49, "letters of 1.5 mm at least"));
    }

    /// <summary>A text's extent by an average letter of a usual sans-serif: 0.5 of its size wide, 0.7 high.</summary>
    private static (double X, double Y, double Width, double Height) Extent(XElement text)
    {
        double x = Svg.Number((string)text.Attribute("x")!);
        double y = Svg.Number((string)text.Attribute("y")!);
        double size = Svg.Number((string)text.Attribute("font-size")!);
        double width = text.Value.Length * size * 0.5;
        double left = (string?)text.Attribute("text-anchor") == "start" ? 0 : width / 2;
        return text.Attribute("transform") is null
            ? (x - left, y - (size * 0.7), width, size * 0.7)
            : (x - (size * 0.7), y - width + left, size * 0.7, width);
    }

    private static bool Overlap((double X, double Y, double Width, double Height) a, (double X, double Y, double Width, double Height) b) =>
        a.X < b.X + b.Width && b.X < a.X + a.Width && a.Y < b.Y + b.Height && b.Y < a.Y + a.Height;

    private static void Inside((double X, double Y, double Width, double Height) page, (double X, double Y, double Width, double Height) box)
    {
        Assert.InRange(box.X, page.X - 1e-4, page.X + page.Width);
        Assert.InRange(box.Y, page.Y - 1e-4, page.Y + page.Height);
        Assert.InRange(box.X + box.Width, page.X, page.X + page.Width + 1e-4);
        Assert.InRange(box.Y + box.Height, page.Y, page.Y + page.Height + 1e-4);
    }
}
