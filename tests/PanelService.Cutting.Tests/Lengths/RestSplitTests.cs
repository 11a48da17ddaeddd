using PanelService.Cutting.Exact;
using PanelService.Cutting.Lengths;
using PanelService.Cutting.Many;
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Tests.Lengths;

/// <summary>Whether a few rectangles can be cut from one, against the programme over all sets that drops nothing.</summary>
public sealed class RestSplitTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Fit_is_what_the_table_of_all_staircases_says(bool turn)
    {
        var random = new SeededRandom(turn ? 11UL : 12UL);
        int fitting = 0;
        var fronts = Enumerable.Range(8, 6).ToDictionary(width => width, width => new RestSplit(turn, width, longest: 100, few: 3));
        for (int i = 0; i < 300; i++)
        {
            (int Width, int Length)[] parts = [.. Enumerable.Range(0, 2 + random.Below(5)).Select(_ => (2 + random.Below(9), 2 + random.Below(9)))];
            int width = 8 + random.Below(6);
            int length = (parts.Sum(part => part.Width * part.Length) / width) + 1 + random.Below(3);

            bool fits = FitsByTable(parts, turn, width, length);
            Assert.Equal(fits, fronts[width].Fit(parts, length, most: 1_000_000));
            fitting += fits ? 1 : 0;
            if (fits)
            {
                var plan = fronts[width].Plan((part, turned) => new PieceBlock(part, turned));
                var size = BlockMath.Size(plan, [.. parts.Select(part => ((long)part.Width, (long)part.Length))], kerf: 0);
                Assert.InRange(size.Width, 1, width);
                Assert.InRange(size.Height, 1, length);
                Assert.All(BlockMath.Counts(plan, parts.Length), count => Assert.Equal(1, count));
            }
        }

        Assert.InRange(fitting, 30, 270);
    }

    [Fact]
    public void Fit_of_parts_larger_than_the_room_is_no() => Assert.False(new RestSplit(turn: true, 9, 6, few: 3).Fit([(5, 5), (5, 6)], 6, most: 1000));

    private static bool FitsByTable((int Width, int Length)[] parts, bool turn, int width, int length)
    {
        List<Shape> shapes = [];
        for (int p = 0; p < parts.Length; p++)
        {
            shapes.Add(new Shape(parts[p].Width, parts[p].Length, p, Turned: false));
            if (turn)
            {
                shapes.Add(new Shape(parts[p].Length, parts[p].Width, p, Turned: true));
            }
        }

        var sets = new MultisetIndex([.. parts.Select(_ => 1)]);
        var table = new FrontTable(sets, shapes, [(width, length)], new WorkMeter(100_000_000, default));
        Assert.True(table.Fill());
        return table.Fits(sets.Count - 1, width, length);
    }
}
