using System.Collections.Immutable;
using System.Xml.Linq;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Tests;

/// <summary>A long roll is drawn in parts side by side, so that every piece has room for its mark.</summary>
public sealed class FoldingTests
{
    private const int Rows = 120;
    private const int Across = 12;
    private static readonly Plan _roll = Roll(rest: 0);

    [Fact]
    public void Every_piece_of_a_long_roll_carries_its_mark()
    {
        Svg svg = Drawn(_roll);

        Assert.Equal(Rows * Across, svg.Classed("piece").Count());
        Assert.Equal(Rows * Across, svg.Classed("marks").Elements().Count());
        Assert.Empty(svg.Classed("leader"));
    }

    [Fact]
    public void Parts_follow_one_another_from_the_beginning_of_the_roll_to_its_end()
    {
        int[][] parts = [.. Drawn(_roll).Classed("letters").Elements().Select(text => text.Value.Split(" – ")).Where(ends => ends.Length == 2).Select(ends => ends.Select(int.Parse).ToArray())];

        Assert.True(parts.Length > 1);
        Assert.Equal(0, parts[0][0]);
        Assert.Equal(Rows * 9, parts[^1][1]);
        Assert.All(parts.Zip(parts.Skip(1)), pair => Assert.Equal(pair.First[1], pair.Second[0]));
    }

    [Fact]
    public void No_piece_is_broken_nor_drawn_outside_its_part()
    {
        Svg svg = Drawn(_roll);
        (double X, double Y, double Width, double Height)[] pieces = [.. svg.Classed("piece").Select(Svg.FirstBox)];
        double[] columns = [.. pieces.Select(piece => piece.X).Distinct()];

        Assert.All(pieces, piece => Assert.Equal(9 * 25.4, piece.Height, 6));
        Assert.All(pieces, piece => Assert.DoesNotContain(pieces, other => other != piece
            && other.X < piece.X + piece.Width - 1e-6 && piece.X < other.X + other.Width - 1e-6 && other.Y < piece.Y + piece.Height - 1e-6 && piece.Y < other.Y + other.Height - 1e-6));
        Assert.Equal(0, columns.Length % Across);
    }

    // Two thirds of it are kept: the rest runs through parts, and is named in one of them.
    [Fact]
    public void A_leftover_in_several_parts_is_named_once()
    {
        Svg svg = Drawn(Roll(rest: 2));

        Assert.True(svg.Classed("offcut").Count() > 1);
        Assert.Single(svg.Elements("text"), text => text.Value.StartsWith("keep ", StringComparison.Ordinal));
    }

    [Fact]
    public void What_can_be_read_in_one_piece_is_drawn_in_one() =>
        Assert.Empty(Drawn(Samples.Plan("", LengthUnit.Inch, Samples.Linen())).Classed("outlines"));

    private static Svg Drawn(Plan plan) => new(ClothDrawing.Render(plan, 1));

    /// <summary>Rows of twelve pieces of 7 × 9 in on cloth 84 in wide, and so many times their length kept behind them.</summary>
    private static Plan Roll(int rest)
    {
        Length used = Samples.Inch(9) * Rows;
        ImmutableArray<Offcut> left = rest == 0 ? [] : [new Offcut(Length.Zero, used, Samples.Inch(84), used * rest, Kept: true)];
        return Samples.Plan("Roll", LengthUnit.Inch, Samples.Linen() with
        {
            Width = Samples.Inch(84),
            Length = used * (1 + rest),
            Selvedge = Length.Zero,
            Pieces = [.. Enumerable.Range(0, Rows * Across).Select(i => new PlacedPanel("A", Samples.Inch(7) * (i % Across), Samples.Inch(9) * (i / Across), Samples.Inch(7), Samples.Inch(9), false))],
            Offcuts = left,
        });
    }
}
