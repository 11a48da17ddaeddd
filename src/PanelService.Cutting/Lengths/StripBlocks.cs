using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>The blocks that a strip's sections are made of: the likeliest of any number of pieces, and as many of few pieces as there are.</summary>
internal sealed class StripBlocks
{
    // Kept of each number of pieces: without waste, and of few pieces with a little. Where enough have a number of pieces there are
    // too many of more.
    private const int LikeliestKept = 1000;
    private const int SmallKept = 100_000;
    private const int SmallEnough = 50_000;
    private const int SmallPieces = 9;

    // Small blocks may waste this part of all there is to waste, and sides in them be one step more apart for every 1/64 of the strip
    // that is waste.
    private const int WastePart = 8;
    private const int ApartShare = 64;

    private StripBlocks(int apart, BlockTable[] tables) => (Apart, Tables) = (apart, tables);

    /// <summary>Sides may be so much apart.</summary>
    public int Apart { get; }

    /// <summary>The tables: the likeliest, the small ones.</summary>
    public IReadOnlyList<BlockTable> Tables { get; }

    /// <summary>Makes them.</summary>
    /// <param name="strip">The strip.</param>
    /// <param name="units">No more pieces are tried once so much work is done.</param>
    /// <param name="work">Where the work is counted.</param>
    public static StripBlocks Of(StripPieces strip, long units, WorkMeter work)
    {
        int apart = 1 + (int)(strip.Waste * ApartShare / ((long)strip.Width * strip.Length));
        TableShape[] shapes =
        [
            new(strip.IsFree, LikeliestKept),
            new(strip.IsFree, SmallKept, SmallPieces, SmallEnough, apart, Waste: (int)strip.Waste / WastePart, Drawn: true),
        ];
        BlockTable[] tables = [];
        SideBySide.Run(shapes.Length, 0, work, (i, _) => Filled(strip, shapes[i], new WorkMeter(units, work.Cancellation)), made =>
        {
            tables = made;
            return false;
        });
        return new StripBlocks(apart, tables);
    }

    private static BlockTable Filled(StripPieces strip, TableShape shape, WorkMeter work)
    {
        var table = new BlockTable(strip, shape, work);
        table.Fill();
        return table;
    }
}
