using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>One rectangle and every single piece that is to be cut from it, in whole numbers of their common divisor.</summary>
internal sealed class StripPieces
{
    // Above this the tables of sides grow too large.
    private const int LongestSide = 32_767;

    private readonly Model _model;
    private readonly int[] _types;
    private readonly bool[] _turned;

    private StripPieces(Model model, IReadOnlyList<(int Type, long Width, long Length)> lying, long unit)
    {
        _model = model;
        var (width, length, _, _) = model.Stock(0);
        (Width, Length) = ((int)(width / unit), (int)(length / unit));
        _types = [.. lying.Select(piece => piece.Type)];
        _turned = [.. lying.Select(piece => model.Sizes[piece.Type].Width != piece.Width)];
        Sizes = [.. lying.Select(piece => ((int)(piece.Width / unit), (int)(piece.Length / unit)))];
        IsFree = model.Types.All(type => type.On[model.Stocks[0]] == Turning.Either);
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
