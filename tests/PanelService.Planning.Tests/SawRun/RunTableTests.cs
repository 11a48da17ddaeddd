using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.SawRun.Graph;
using PanelService.Planning.SawRun.Search;

namespace PanelService.Planning.Tests.SawRun;

/// <summary>What the table says of runs, against cutting every workpiece from the sheet downwards.</summary>
public sealed class RunTableTests
{
    private const long Kerf = 2;

    [Fact]
    public void Table_says_of_a_run_what_cutting_down_from_the_sheet_says()
    {
        int served = 0, compared = 0;
        for (int seed = 1; seed <= 150; seed++)
        {
            var (graph, root, random) = Sheet(seed, 7);
            int[] settings = [.. Enumerable.Range(0, graph.Settings.Count)];
            var table = new RunTable(graph, [root], settings);
            for (int i = 0; i < 40; i++)
            {
                List<int> run = [.. Enumerable.Range(0, random.Next(1, 3 * settings.Length)).Select(_ => random.Next(settings.Length))];

                bool serves = table.Serves(run);

                Assert.Equal(CutsUp(root, run, 0), serves);
                compared++;
                served += serves ? 1 : 0;
            }
        }

        Assert.InRange(served, compared / 20, compared * 19 / 20);
    }

    [Fact]
    public void Settings_in_one_order_serve_as_many_times_over_as_the_table_says_and_no_fewer()
    {
        int more = 0;
        for (int seed = 1; seed <= 150; seed++)
        {
            var (graph, root, random) = Sheet(seed, 9);
            int[] settings = [.. Enumerable.Range(0, graph.Settings.Count)];
            random.Shuffle(settings);

            int times = new RunTable(graph, [root], [.. settings.Order()]).TimesOver(settings);

            Assert.True(CutsUp(root, Over(times), 0), $"seed {seed}: {times} times over");
            Assert.False(CutsUp(root, Over(times - 1), 0), $"seed {seed}: one time fewer than {times}");
            more += times > 1 ? 1 : 0;

            List<int> Over(int count) => [.. Enumerable.Repeat(settings, count).SelectMany(once => once)];
        }

        Assert.InRange(more, 50, 150);
    }

    [Fact]
    public void Sheet_of_two_hundred_sizes_gets_a_run_in_little_memory_where_there_is_no_time()
    {
        // Strip by strip from two sides, each narrower than the one before: in rising order of settings every cut needs a round of its own.
        var parts = new List<Rectangle>();
        long left = 0, top = 0;
        for (long size = 400; size > 200; size--)
        {
            (long across, long along) = size % 2 == 0 ? (left, top) : (top, left);
            long end = 40_000 - along;
            parts.Add(size % 2 == 0 ? new(across, along, size, end) : new(along, across, end, size));
            (left, top) = size % 2 == 0 ? (left + size, top) : (left, top + size);
        }

        parts.Add(new(left, top, 40_000 - left, 40_000 - top));
        var graph = new CutGraph(new GraphRules(Kerf, 0, 0), wasteIsFree: false, limit: 60_000);
        var root = graph.Of(40_000, 40_000, [.. parts.Select(NeededPart.Panel)]);
        graph.Finish();
        int[] settings = [.. Enumerable.Range(0, graph.Settings.Count)];
        long before = GC.GetAllocatedBytesForCurrentThread();

        int[] run = RunSequence.Find(graph, [root], [settings], work: 0, new CancellationToken(canceled: true));

        Assert.True(RunTable.CanCut(graph, [root], run));
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 100L << 20);
    }

    private static bool CutsUp(CutShape shape, List<int> run, int from) => shape.IsDone
        || shape.Splits.Exists(split => Enumerable.Range(from, run.Count - from).Any(step =>
            (run[step] == split.NearSetting || run[step] == split.FarSetting)
            && (split.Near is null || CutsUp(split.Near, run, step))
            && (split.Far is null || CutsUp(split.Far, run, step))));

    /// <summary>A sheet cut up at random, edge to edge.</summary>
    private static (CutGraph Graph, CutShape Root, Random Random) Sheet(int seed, int pieces)
    {
        var random = new Random(seed);
        long side = 60L * pieces;
        var open = new List<Rectangle> { new(0, 0, side, side) };
        while (open.Count < pieces)
        {
            var largest = open.MaxBy(one => one.Width * one.Height);
            open.Remove(largest);
            bool across = largest.Width > largest.Height || (largest.Width == largest.Height && random.Next(2) == 0);
            long extent = across ? largest.Width : largest.Height;
            long at = (extent / 4) + random.NextInt64(extent / 2);
            open.Add(across ? largest with { Width = at } : largest with { Height = at });
            open.Add(across
                ? largest with { X = largest.X + at, Width = extent - at }
                : largest with { Y = largest.Y + at, Height = extent - at });
        }

        var graph = new CutGraph(new GraphRules(Kerf, 0, 0), wasteIsFree: false, limit: 60_000);
        var root = graph.Of(side, side, [.. open.Select(NeededPart.Panel)]);
        graph.Finish();
        return (graph, root, random);
    }
}
