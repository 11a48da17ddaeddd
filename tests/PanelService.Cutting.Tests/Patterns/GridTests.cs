using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Tests.Patterns;

/// <summary>Coarse grids and narrow tables against the exact programme.</summary>
public sealed class GridTests
{
    private const long Kerf = 3;

    // So little work that no grid of these problems stays exact.
    private const long LittleWork = 60_000;

    private const int LargestOfNarrow = ushort.MaxValue;

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Coarse_grids_enclose_the_best_value(int seed)
    {
        var (area, values) = Problem(seed);
        int best = Filled(new ValueProgramme(Grid.Exact(area)), values, area);
        var down = Grid.Bounding(area, LittleWork);
        var fitting = Grid.Fitting(area, LittleWork);
        Assert.False(down.IsExact);
        Assert.False(fitting.IsExact);

        foreach (bool narrow in (bool[])[false, true])
        {
            Assert.InRange(Filled(new ValueProgramme(down, narrow), values, area), best, int.MaxValue);
            Assert.InRange(Filled(new ValueProgramme(fitting, narrow), values, area), best / 2, best);
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_pattern_of_a_fitting_grid_fits_and_is_worth_what_it_says(int seed)
    {
        var (area, values) = Problem(seed);
        var programme = new ValueProgramme(Grid.Fitting(area, LittleWork), narrow: true);
        int value = Filled(programme, values, area);

        var block = programme.Pattern(area.Width, area.Height)!;
        int[] counts = BlockMath.Counts(block, values.Length);
        Assert.Equal(value, counts.Zip(values, (count, one) => count * one).Sum());
        var (width, height) = BlockMath.Size(block, [.. area.Pieces.Select(piece => (piece.Width, piece.Height))], Kerf);
        Assert.InRange(width, 1, area.Width);
        Assert.InRange(height, 1, area.Height);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_narrow_table_says_the_same_as_a_wide_one(int seed)
    {
        var (area, values) = Problem(seed);
        var grid = Grid.Exact(area);
        var wide = new ValueProgramme(grid);
        var narrow = new ValueProgramme(grid, narrow: true);

        // Filled twice, the second time for a part of the sheet: nothing of the first may be left.
        narrow.Fill([.. values.Select(value => 2 * value)]);
        narrow.Fill(values, area.Width * 3 / 4, area.Height * 2 / 3);
        wide.Fill(values);

        int columns = grid.X.Floor((area.Width * 3 / 4) + Kerf);
        int rows = grid.Y.Floor((area.Height * 2 / 3) + Kerf);
        for (int i = 0; i <= columns; i++)
        {
            for (int j = 0; j <= rows; j++)
            {
                Assert.Equal(wide.At(i, j), narrow.At(i, j));
            }
        }
    }

    [Fact]
    public void A_narrow_table_says_when_it_is_outgrown()
    {
        var (area, values) = Problem(1);
        int best = Filled(new ValueProgramme(Grid.Exact(area)), values, area);
        var narrow = new ValueProgramme(Grid.Exact(area), narrow: true);

        int most = (LargestOfNarrow - 1) / best;
        narrow.Fill([.. values.Select(value => most * value)]);
        Assert.False(narrow.IsOutgrown(area.Width, area.Height));

        narrow.Fill([.. values.Select(value => (most + 2) * value)]);
        Assert.True(narrow.IsOutgrown(area.Width, area.Height));
    }

    [Fact]
    public void Odd_pieces_so_small_that_a_narrow_table_would_be_outgrown_are_planned()
    {
        // A sheet holds some 20,000 of the smallest: each would be worth a unit or two of sixteen bits, and rounded up more than the sheet.
        var random = new Random(3);
        Piece[] pieces = [.. Enumerable.Range(0, 60).Select(_ => new Piece(random.Next(50, 301), random.Next(50, 301), 200, [Turning.Either]))];
        var problem = new CuttingProblem([new Stock(12_200, 24_400, 1000, null)], [.. pieces], Kerf: 32);

        var result = CuttingPlanner.Plan(problem, Effort.Quick);

        Assert.True(result.Complete);
        double sheets = pieces.Sum(piece => (piece.Width + 32.0) * (piece.Height + 32) * piece.Demand) / ((12_200 + 32.0) * (24_400 + 32));
        Assert.InRange(result.LeastPossible, (long)sheets * 1000, result.Spent);

        // No block holds more than 2,000 pieces.
        Assert.InRange(result.Spent, result.LeastPossible, 7000);
    }

    public static TheoryData<int> Seeds() => [.. Enumerable.Range(1, 12)];

    private static int Filled(ValueProgramme programme, int[] values, GridArea area)
    {
        programme.Fill(values);
        return programme.Value(area.Width, area.Height);
    }

    /// <summary>Five pieces of odd sizes; a sheet is worth a few thousand.</summary>
    private static (GridArea Area, int[] Values) Problem(int seed)
    {
        var random = new Random(seed);
        Piece[] pieces = [.. Enumerable.Range(0, 5).Select(_ => new Piece(random.Next(90, 300), random.Next(90, 300), random.Next(2, 9), [Turning.Either]))];
        int[] values = [.. pieces.Select(piece => (int)(piece.Width * piece.Height * random.Next(80, 120) / 20_000))];
        var turning = pieces.Select((_, i) => i % 3 == 0 ? Turning.Upright : Turning.Either).ToArray();
        return (new GridArea(pieces, turning, random.Next(700, 900), random.Next(900, 1200), Kerf), values);
    }
}
