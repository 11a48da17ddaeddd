// Problem: one rectangle with next to nothing to waste: a plan.
// Idea:    BlockBeam puts the pieces together, first as they are given (what was cut from one cloth mostly lies one way), then
//          with turning; here its joins become a block.
// Source:  see there.
// Cost:    see there.
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>Puts a strip together again.</summary>
internal static class StripJigsaw
{
    private const int MostPieces = 120;

    // More to waste than this part leaves a plan to other ways: then sides need not coincide, and nothing guides the joins.
    private const double MostWaste = 0.002;

    /// <summary>Looks for a plan of one rectangle.</summary>
    /// <param name="model">The rectangle as its only stock, and the pieces.</param>
    /// <param name="given">Per piece as it was given: its type and sizes.</param>
    /// <param name="beam">How many states are kept side by side.</param>
    /// <param name="work">Where work is counted.</param>
    /// <returns>How the pieces lie; null where no plan was found.</returns>
    public static Block? Find(Model model, IReadOnlyList<(int Type, long Width, long Length)> given, int beam, WorkMeter work)
    {
        var (width, length, _, _) = model.Stock(0);
        double area = given.Sum(piece => (double)piece.Width * piece.Length);
        if (beam == 0 || given.Count > MostPieces || area > (double)width * length || area < (1 - MostWaste) * width * length)
        {
            return null;
        }

        long unit = given.Aggregate(width, (d, piece) => Divisor(Divisor(d, piece.Width), piece.Length));
        if (Math.Max(width, length) / unit > BlockBeam.LongestSide)
        {
            return null;
        }

        return Try(turn: false, spread: 8) ?? (model.Types.All(IsFree) ? Try(turn: true, spread: 4) : null);

        Block? Try(bool turn, double spread)
        {
            List<(int Type, int Width, int Length)> lying = [.. given.Select(piece => Lying(model, piece)).Select(piece => turn && piece.Width > piece.Length
                ? (piece.Type, (int)(piece.Length / unit), (int)(piece.Width / unit))
                : (piece.Type, (int)(piece.Width / unit), (int)(piece.Length / unit)))];
            List<(int Width, int Length)> sizes = [.. lying.Select(piece => (piece.Width, piece.Length))];
            var search = new BlockBeam(((int)(width / unit), (int)(length / unit)), sizes, turn, spread, work);
            return search.Find(sizes, beam) is { } joins ? Built(joins, lying, piece => model.Sizes[piece.Type].Width / unit != piece.Width, turn) : null;
        }

        bool IsFree(Piece type) => type.On[model.Stocks[0]] == Turning.Either;
    }

    /// <summary>As it was given where it may lie so, else turned.</summary>
    private static (int Type, long Width, long Length) Lying(Model model, (int Type, long Width, long Length) piece)
    {
        bool turned = model.Sizes[piece.Type].Width != piece.Width;
        bool may = model.Types[piece.Type].On[model.Stocks[0]].HasFlag(turned ? Turning.Turned : Turning.Upright);
        return may ? piece : (piece.Type, piece.Length, piece.Width);
    }

    private static Block Built(
        List<BlockJoin> joins, List<(int Type, int Width, int Length)> pieces, Func<(int Type, int Width, int Length), bool> isTurned, bool turn)
    {
        var blocks = new Dictionary<(int, int), Stack<Block>>();
        foreach (var piece in pieces)
        {
            Put((piece.Width, piece.Length), new PieceBlock(piece.Type, isTurned(piece)));
        }

        Block? rows = null;
        foreach (var (first, second, axis, made) in joins)
        {
            var block = Take(first);
            if (made == default)
            {
                rows = rows is null ? block : BlockMath.Join(Axis.Y, rows, block);
                continue;
            }

            Put(made, BlockMath.Join(axis, block, Take(second)));
        }

        return rows!;

        void Put((int Width, int Length) size, Block block)
        {
            (size, block) = turn && size.Width > size.Length ? ((size.Length, size.Width), Turned(block)) : (size, block);
            if (!blocks.TryGetValue(size, out var alike))
            {
                blocks[size] = alike = new Stack<Block>();
            }

            alike.Push(block);
        }

        Block Take((int Width, int Length) size) =>
            turn && size.Width > size.Length ? Turned(blocks[(size.Length, size.Width)].Pop()) : blocks[size].Pop();
    }

    private static Block Turned(Block block) => block switch
    {
        PieceBlock piece => piece with { Turned = !piece.Turned },
        StackBlock stack => new StackBlock(stack.Axis == Axis.X ? Axis.Y : Axis.X, [.. stack.Parts.Select(Turned)]),
        _ => throw new InvalidOperationException("Blocks are a closed family."),
    };

    private static long Divisor(long a, long b) => (long)System.Numerics.BigInteger.GreatestCommonDivisor(a, b);
}
