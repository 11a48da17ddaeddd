using PanelService.Cutting.Lengths;
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Tests.Lengths;

/// <summary>Plans put together section by section.</summary>
public sealed class SectionMixTests
{
    private static readonly MixEffort _effort = new(new FillEffort(2, 200, 300, 0.1), new FillEffort(1, 100, 200, 0.1), 3);

    [Fact]
    public void Find_where_no_section_keeps_to_the_demand_finds_no_plan()
    {
        // Two squares lie side by side, but one is wanted: it wastes half a section, more than there is to waste, and is not drawn.
        var model = ModelOf(100, [new Piece(10, 10, 1, [Turning.Upright]), new Piece(20, 7, 13, [Turning.Upright])]);

        Assert.Null(new SectionMix(model, [1], seed: 1, Work()).Find(reach: 4, _effort));
    }

    [Fact]
    public void Find_where_sections_fill_the_length_holds_every_piece()
    {
        var model = ModelOf(101, [new Piece(10, 10, 1, [Turning.Upright]), new Piece(20, 7, 13, [Turning.Upright])]);

        var found = new SectionMix(model, [1], seed: 1, Work()).Find(reach: 4, _effort);

        var use = Assert.Single(found!);
        Assert.Equal([1, 13], use.Column.Counts);
        Assert.Equal((20, 101), BlockMath.Size(use.Column.Block, model.Sizes, kerf: 0));
    }

    private static Model ModelOf(long length, Piece[] pieces) =>
        new(new CuttingProblem([new Stock(20, length, 1, 1)], [.. pieces], Kerf: 0));

    private static WorkMeter Work() => new(1_000_000, default);
}
