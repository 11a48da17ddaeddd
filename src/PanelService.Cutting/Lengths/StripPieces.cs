using PanelService.Cutting.Many;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>One rectangle and every single piece that is to be cut from it, in whole numbers of their common divisor.</summary>
internal sealed class StripPieces
{
    // Above this the tables of sides grow too large.
    private const int LongestSide = 32_767;

    private readonly int[] _types;
    private readonly bool[] _turned;

    private StripPieces(Model model, IReadOnlyList<(int Type, long Width, long Length)> lying, long unit)
    {
        var (width, length, _, _) = model.Stock(0);
        (Width, Length) = ((int)(width / unit), (int)(length / unit));
        _types = [.. lying.Select(piece => piece.Type)];
        _turned = [.. lying.Select(piece => model.Sizes[piece.Type].Width != piece.Width)];
        Sizes = [.. lying.Select(piece => ((int)(piece.Width / unit), (int)(piece.Length / unit)))];
        IsFree = model.Types.All(type => type.On[model.Stocks[0]] == Turning.Either);
    }

    private StripPieces(StripPieces strip)
    {
        (Width, Length, IsFree) = (strip.Length, strip.Width, strip.IsFree);
        (_types, _turned) = (strip._types, strip._turned);
        Sizes = [.. strip.Sizes.Select(piece => (piece.Length, piece.Width))];
    }

    /// <summary>The strip's width.</summary>
    public int Width { get; }

    /// <summary>The strip's length.</summary>
    public int Length { get; }

    /// <summary>How many pieces there are.</summary>
    public int Count => _types.Length;

    /// <summary>Width and length of every piece as it was given, or turned where it must be.</summary>
    public (int Width, int Length)[] Sizes { get; }

    /// <summary>Whether every piece may lie either way.</summary>
    public bool IsFree { get; }

    /// <summary>The area that is no piece's.</summary>
    public long Waste => ((long)Width * Length) - Sizes.Sum(piece => (long)piece.Width * piece.Length);

    /// <summary>Reads pieces.</summary>
    /// <param name="model">The rectangle as its only stock, and the pieces.</param>
    /// <param name="given">Per piece as it was given: its type and sizes.</param>
    /// <returns>Nothing where there are too many pieces, or sizes too fine.</returns>
    public static StripPieces? Of(Model model, IReadOnlyList<(int Type, long Width, long Length)> given)
    {
        var (width, length, _, _) = model.Stock(0);
        long unit = given.Aggregate(width, (d, piece) => Divisor(Divisor(d, piece.Width), piece.Length));
        return given.Count > BlockTable.MostPieces || Math.Max(width, length) / unit > LongestSide
            ? null
            : new StripPieces(model, [.. given.Select(piece => Allowed(model, piece))], unit);
    }

    /// <summary>The set of all pieces: one bit for each.</summary>
    public UInt128 Everything => Count == BlockTable.MostPieces ? UInt128.MaxValue : (UInt128.One << Count) - 1;

    /// <summary>The pieces of a set.</summary>
    /// <param name="set">One bit for each.</param>
    public static IEnumerable<int> PiecesOf(UInt128 set)
    {
        for (; set != 0; set &= set - 1)
        {
            yield return (int)UInt128.TrailingZeroCount(set);
        }
    }

    /// <summary>For each piece the parts that hold it.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="random">Where chance comes from.</param>
    public IEnumerable<PartList> ByPiece(IEnumerable<StripPart> parts, SeededRandom random)
    {
        List<StripPart>[] holding = [.. Enumerable.Range(0, Count).Select(_ => new List<StripPart>())];
        foreach (var part in parts)
        {
            foreach (int piece in PiecesOf(part.Set))
            {
                holding[piece].Add(part);
            }
        }

        return holding.Select(some => new PartList(some, random));
    }

    /// <summary>Everything mirrored: lengths become widths. What is found for it is a plan of this strip with its axes exchanged.</summary>
    public StripPieces Mirrored() => new(this);

    /// <summary>A piece as a block.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="turned">Whether it is turned against <see cref="Sizes"/>.</param>
    public PieceBlock Lying(int piece, bool turned) => new(_types[piece], _turned[piece] != turned);

    /// <summary>As it was given where it may lie so, else turned.</summary>
    private static (int Type, long Width, long Length) Allowed(Model model, (int Type, long Width, long Length) piece)
    {
        bool turned = model.Sizes[piece.Type].Width != piece.Width;
        bool may = model.Types[piece.Type].On[model.Stocks[0]].HasFlag(turned ? Turning.Turned : Turning.Upright);
        return may ? piece : (piece.Type, piece.Length, piece.Width);
    }

    private static long Divisor(long a, long b) => (long)System.Numerics.BigInteger.GreatestCommonDivisor(a, b);
}
