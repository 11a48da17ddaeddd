using PanelService.Cutting.Lengths;
using PanelService.Cutting.Many;
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Tests.Lengths;

/// <summary>Strips cut up without waste and put together again.</summary>
public sealed class StripJigsawTests
{
    // 60 by 100, cut from edge to edge into rows of 40, 25 and 35.
    private static readonly (int Width, int Length)[] _pieces =
    [
        (23, 40), (17, 22), (17, 18), (20, 40), (41, 25), (19, 9), (19, 16), (60, 6), (33, 29), (27, 11), (14, 18), (13, 18),
    ];

    [Theory]
    [InlineData(Turning.Upright, false)]
    [InlineData(Turning.Either, false)]
    [InlineData(Turning.Either, true)]
    public void Find_of_a_strip_cut_up_without_waste_is_a_plan_of_its_length(Turning turning, bool turned)
    {
        var model = ModelOf(100, turning, turned);

        var block = StripJigsaw.Find(model, Given(model, turned), new JigsawEffort(200, 200), new WorkMeter(1_000_000, default));

        Assert.Equal((60, 100), BlockMath.Size(block!, model.Sizes, kerf: 0));
        Assert.Equal(model.Demand, BlockMath.Counts(block!, model.Types.Length));
    }

    [Fact]
    public void Find_of_pieces_larger_than_the_strip_is_nothing()
    {
        var model = ModelOf(99, Turning.Upright, turned: false);

        Assert.Null(StripJigsaw.Find(model, Given(model, turned: false), new JigsawEffort(200, 200), new WorkMeter(1_000_000, default)));
    }

    [Fact]
    public void Find_where_blocks_may_only_be_turned_finds_what_lies_as_given_too()
    {
        var model = ModelOf(100, Turning.Either, turned: true);

        var block = StripJigsaw.Find(model, Given(model, turned: true), new JigsawEffort(0, 200), new WorkMeter(1_000_000, default));

        Assert.Equal((60, 100), BlockMath.Size(block!, model.Sizes, kerf: 0));
        Assert.Equal(model.Demand, BlockMath.Counts(block!, model.Types.Length));
    }

    [Theory]
    [InlineData(101)]
    [InlineData(103)]
    public void FindSections_of_a_strip_with_a_little_to_waste_is_a_plan_no_longer(long length)
    {
        var model = ModelOf(length, Turning.Upright, turned: false);

        var block = StripJigsaw.FindSections(
            model, Given(model, turned: false), 200_000, new WorkMeter(2_000_000, default));

        var size = BlockMath.Size(block!, model.Sizes, kerf: 0);
        Assert.InRange(size.Width, 1, 60);
        Assert.InRange(size.Height, 100, length);
        Assert.Equal(model.Demand, BlockMath.Counts(block!, model.Types.Length));
    }

    [Theory]
    [InlineData(4)]
    [InlineData(9)]
    public void FindSections_of_sixty_pieces_is_a_plan_with_at_most_3_in_300_wasted(ulong seed)
    {
        var random = new SeededRandom(seed);
        var pieces = CutUp(random, 60, 300, 60);
        var model = new Model(new CuttingProblem(
            [new Stock(60, 303, 1, 1)], [.. pieces.Select(size => new Piece(size.Width, size.Length, 1, [Turning.Either]))], Kerf: 0));
        (int Type, long Width, long Length)[] given = [.. pieces.Select((size, i) => (model.TypeOf(i), (long)size.Width, (long)size.Length))];

        var block = StripJigsaw.FindSections(model, given, 2_000_000, new WorkMeter(long.MaxValue, default));

        var size = BlockMath.Size(block!, model.Sizes, kerf: 0);
        Assert.InRange(size.Width, 1, 60);
        Assert.InRange(size.Height, 300, 303);
        Assert.Equal(model.Demand, BlockMath.Counts(block!, model.Types.Length));
    }

    private static List<(int Width, int Length)> CutUp(SeededRandom random, int width, int length, int wanted)
    {
        var pieces = new List<(int Width, int Length)> { (width, length) };
        while (pieces.Count < wanted)
        {
            var largest = pieces.MaxBy(piece => piece.Width * piece.Length);
            pieces.Remove(largest);
            bool across = largest.Width > largest.Length || (largest.Width > 8 && random.Below(3) == 0);
            int first = 4 + random.Below((across ? largest.Width : largest.Length) - 7);
            pieces.Add(across ? (first, largest.Length) : (largest.Width, first));
            pieces.Add(across ? (largest.Width - first, largest.Length) : (largest.Width, largest.Length - first));
        }

        return pieces;
    }

    private static Model ModelOf(long length, Turning turning, bool turned) => new(new CuttingProblem(
        [new Stock(60, length, 1, 1)], [.. Sizes(turned).Select(size => new Piece(size.Width, size.Length, 1, [turning]))], Kerf: 0));

    private static (int Type, long Width, long Length)[] Given(Model model, bool turned) =>
        [.. Sizes(turned).Select((size, i) => (model.TypeOf(i), (long)size.Width, (long)size.Length))];

    /// <summary>Every second piece turned, where that is asked for.</summary>
    private static IEnumerable<(int Width, int Length)> Sizes(bool turned) =>
        _pieces.Select((size, i) => turned && i % 2 == 1 ? (size.Length, size.Width) : size);
}
