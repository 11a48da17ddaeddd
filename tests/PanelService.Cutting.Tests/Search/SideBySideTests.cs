using PanelService.Cutting.Search;
using PanelService.Cutting.Tests.Many;

namespace PanelService.Cutting.Tests.Search;

/// <summary>Strategies advanced side by side: the plan does not depend on the cores there are.</summary>
public sealed class SideBySideTests
{
    private static readonly Stock[] _mixed =
        [new(100, 100, 1000, null), new(150, 120, 1700, null), new(70, 60, 0, 2), new(61, 61, 350, 3)];

    private static readonly Stock[] _single = [new(100, 100, 1, null)];

    [Theory]
    [InlineData(51, 60, true)]
    [InlineData(52, 90, true)]
    [InlineData(53, 40, false)]
    [InlineData(54, 80, false)]
    public void Many_pieces_are_planned_alike_on_any_number_of_cores(int seed, int pieces, bool mixed)
    {
        var problem = ManyPieces.Draw(seed, pieces, mixed ? _mixed : _single);

        string[] all = [.. new[] { 1, 2, 8, 8 }.Select(cores => Told(problem, cores))];

        Assert.Equal(Enumerable.Repeat(all[0], all.Length), all);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(8)]
    public void Finds_come_in_the_order_of_the_strategies(int cores)
    {
        var work = new WorkMeter(100_000, CancellationToken.None) { Cores = cores };
        int[] order = [];

        SideBySide.Run(40, 1_000, work, (i, _) => i, found =>
        {
            order = found;
            return false;
        });

        Assert.Equal(Enumerable.Range(0, 40), order);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void Every_strategy_gets_its_work_and_all_of_it_is_counted(int cores)
    {
        var work = new WorkMeter(1_000_000, CancellationToken.None) { Cores = cores };
        long[] done = new long[3];

        SideBySide.Run(3, 70_000, work, (i, meter) => done[i] += SpendAll(meter), _ => true);

        Assert.Equal([70_000, 70_000, 70_000], done);
        Assert.Equal(1_000_000 - (3 * 70_000), work.Left);
    }

    [Fact]
    public void Ends_with_the_slice_in_which_enough_is_found()
    {
        var work = new WorkMeter(1_000_000, CancellationToken.None);
        int slices = 0;

        SideBySide.Run(2, 500_000, work, (_, meter) => SpendAll(meter), _ => ++slices < 3);

        // Slices of 2,000, 4,000 and 8,000 units.
        Assert.Equal((3, 1_000_000 - (2 * 14_000)), (slices, work.Left));
    }

    [Fact]
    public void Stop_before_the_start_still_brings_a_plan_for_a_few_formats()
    {
        var problem = new CuttingProblem([.. _single], [new Piece(31, 17, 40, [Turning.Either]), new Piece(23, 41, 30, [Turning.Either])], 0);
        using var source = new CancellationTokenSource();
        source.Cancel();

        var result = CuttingPlanner.Plan(problem, Effort.Steady, null, source.Token);

        Assert.True(result.StoppedEarly);
        Assert.Empty(ManyPieces.Faults(problem, result.Patterns, result.Spent));
    }

    private static long SpendAll(WorkMeter meter)
    {
        long all = meter.Left;
        meter.Spend(all);
        return all;
    }

    /// <summary>Everything a search tells, on the way and at the end.</summary>
    private static string Told(CuttingProblem problem, int cores)
    {
        var told = new List<string>();
        var result = CuttingPlanner.Plan(problem, Effort.Quick, cores, new Listener(told), CancellationToken.None);
        told.Add($"{result.Spent} {result.LeastPossible} {string.Join(',', result.Missing)}");
        told.AddRange(result.Patterns.Select(use => $"{use.Copies} x {use.Stock}: {Text(use.Block)}"));
        return string.Join('\n', told);
    }

    private static string Text(Block block) => block switch
    {
        StackBlock stack => $"{stack.Axis}({string.Join(' ', stack.Parts.Select(Text))})",
        PieceBlock piece => $"{piece.Piece}{(piece.Turned ? "t" : "")}",
        _ => throw new InvalidOperationException("Blocks are a closed family."),
    };

    private sealed class Listener(List<string> told) : IProgress<CuttingProgress>
    {
        public void Report(CuttingProgress value) => told.Add($"{value.Spent} {value.LeastPossible}");
    }
}
