using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Sizes;
using PanelService.Planning.Wishes;

namespace PanelService.Planning.Tests.Wishes;

public sealed class SpareFillerTests
{
    private static readonly ImmutableArray<LaidOut<int>> _empty =
        [new LaidOut<int>(0, new SheetCuts([], [], [new Leftover(new Rectangle(0, 0, 100, 100), FromTrim: false)]), Copies: 3)];

    [Theory]
    [InlineData(false, 12)]
    [InlineData(true, 0)]
    public void Fill_that_is_stopped_leaves_what_is_left_as_it_is(bool isStopped, int made)
    {
        var task = new SpareTask<int>([(50, 50)], [200], FirstNumber: 0, Kerf: 0, (_, _) => Turning.Either);
        var stop = new PlanStop(new CancellationToken(isStopped), CancellationToken.None);
        var (sheets, counts) = SpareFiller<int>.Fill(_empty, task, [100], stop);
        Assert.Equal((made, 3), (counts[0], sheets.Sum(sheet => sheet.Copies)));
    }
}
