// Problem: one rectangle with little to waste: a plan.
// Idea:    nothing to waste: a table of blocks (BlockTable) as the pieces are given (what was cut from one cloth mostly lies one
//          way), then with turning. A little to waste: sections that waste little, and what they leave (SectionsAndRest).
// Source:  see there.
// Cost:    a quarter of a second for a small table, one to three for a large one, as much for sections.
// Not:     complete.
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>Puts a strip together again.</summary>
internal sealed class StripJigsaw
{
    // Fewer pieces of a kind than this, or sides coincide for another reason than that they were one.
    private const int MostAlike = 2;

    // More to waste than these parts leaves a plan to other ways: then sides need not coincide, and nothing guides the joins.
    private const double NoWaste = 0.002;
    private const double LittleWaste = 0.05;

    private const int LeastPieces = 12;
    private const long Gathering = 4_000_000;

    private readonly StripPieces _strip;
    private readonly WorkMeter _work;

    private StripJigsaw(StripPieces strip, WorkMeter work) => (_strip, _work) = (strip, work);

    /// <summary>Looks for a plan of one rectangle with nothing to waste, or next to nothing.</summary>
    /// <param name="model">The rectangle as its only stock, and the pieces.</param>
    /// <param name="given">Per piece as it was given: its type and sizes.</param>
    /// <param name="effort">How many blocks are kept of each number of pieces.</param>
    /// <param name="work">Where work is counted.</param>
    /// <returns>How the pieces lie; null where no plan was found.</returns>
    public static Block? Find(Model model, IReadOnlyList<(int Type, long Width, long Length)> given, JigsawEffort effort, WorkMeter work) =>
        Of(model, given, NoWaste, work)?.FindWhole(effort);

    /// <summary>Looks for a plan of one rectangle with a little to waste.</summary>
    /// <param name="model">The rectangle as its only stock, and the pieces.</param>
    /// <param name="given">Per piece as it was given: its type and sizes.</param>
    /// <param name="units">The work allowed for drawing sections.</param>
    /// <param name="work">Where work is counted.</param>
    /// <returns>How the pieces lie; null where no plan was found.</returns>
    public static Block? FindSections(
        Model model, IReadOnlyList<(int Type, long Width, long Length)> given, long units, WorkMeter work) =>
        Of(model, given, LittleWaste, work)?.FindSections(units);

    /// <summary>Whether a rectangle has little to waste and pieces that are mostly different: then other ways find nothing.</summary>
    /// <param name="model">The rectangle as its only stock, and the pieces.</param>
    public static bool Suits(Model model) =>
        model.Demand.Sum(d => (long)d) is <= BlockTable.MostPieces and > LeastPieces and var pieces
        && pieces <= MostAlike * model.Types.Length
        && model.Demand.Select((d, t) => d * model.PieceArea(t)).Sum() >= (1 - LittleWaste) * model.StockArea(0);

    private static StripJigsaw? Of(Model model, IReadOnlyList<(int Type, long Width, long Length)> given, double most, WorkMeter work) =>
        StripPieces.Of(model, given) is { } strip && strip.Waste >= 0 && strip.Waste <= most * strip.Width * strip.Length
            ? new StripJigsaw(strip, work)
            : null;

    private IEnumerable<BlockTable> Tables(JigsawEffort effort, int waste)
    {
        if (effort.AsGiven > 0)
        {
            yield return new BlockTable(_strip, new TableShape(Turn: false, effort.AsGiven, Waste: waste), _work);
        }

        if (effort.Turned > 0 && _strip.IsFree)
        {
            yield return new BlockTable(_strip, new TableShape(Turn: true, effort.Turned, Waste: waste), _work);
        }
    }

    private Block? FindWhole(JigsawEffort effort)
    {
        foreach (var table in Tables(effort, (int)_strip.Waste))
        {
            if (table.Fill() is >= 0 and int all)
            {
                return table.Lying(all, turned: table.All[all].Width > _strip.Width || table.All[all].Length > _strip.Length);
            }
        }

        return null;
    }

    /// <summary>By sections of the strip as it lies, and of the strip mirrored.</summary>
    private Block? FindSections(long units)
    {
        var blocks = StripBlocks.Of(_strip, Gathering, _work);
        StripPieces[] ways = [_strip, _strip.Mirrored()];
        var searches = new SectionsAndRest?[ways.Length];
        Block? plan = null;
        SideBySide.Run(ways.Length, units, _work, (way, work) => Search(way).Advance(work), found =>
        {
            int first = Array.FindIndex(found, block => block is not null);
            plan = first < 0 ? null : first == 1 ? BlockMath.Mirrored(found[first]!) : found[first];
            return first < 0;
        });
        return plan;

        SectionsAndRest Search(int way) => searches[way] ??= new SectionsAndRest(ways[way], blocks, mirrored: way == 1, _work.Cancellation);
    }
}

/// <summary>How many blocks are kept of each number of pieces.</summary>
/// <param name="AsGiven">Where every piece lies as it was given; 0: this is not tried.</param>
/// <param name="Turned">Where blocks may be turned.</param>
internal sealed record JigsawEffort(int AsGiven, int Turned);
