namespace PanelService.Cutting.Tests.Leftovers;

/// <summary>Counts what patterns hold, without the engine's own counting.</summary>
internal static class PatternCounts
{
    public static int[] Of(IEnumerable<PatternUse> patterns, int pieces)
    {
        int[] counts = new int[pieces];
        foreach (var use in patterns)
        {
            Add(use.Block, use.Copies, counts);
        }

        return counts;
    }

    private static void Add(Block block, int copies, int[] counts)
    {
        if (block is PieceBlock piece)
        {
            counts[piece.Piece] += copies;
            return;
        }

        foreach (var part in ((StackBlock)block).Parts)
        {
            Add(part, copies, counts);
        }
    }
}
