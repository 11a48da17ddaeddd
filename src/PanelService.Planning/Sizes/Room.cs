using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Cloth;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Sizes;

/// <summary>A pattern and the room it must stay within while its pieces grow.</summary>
/// <param name="Block">The pattern.</param>
/// <param name="LineOf">Per piece of the pattern's problem: the line it is of.</param>
/// <param name="Width">Usable width in steps.</param>
/// <param name="Height">Usable height in steps.</param>
/// <param name="Kerf">What a cut takes, in steps.</param>
/// <param name="Bench">For cloth: its margins and shrinkage; null for board.</param>
internal sealed record Room(
    Block Block, ImmutableArray<int> LineOf, long Width, long Height, long Kerf, BenchSettings? Bench = null)
{
    /// <summary>The sheet with what limits its cuts; null: nothing does.</summary>
    public SheetFrame? Frame { get; init; }

    /// <summary>Whether the pattern fits with its lines at these sizes.</summary>
    public bool Holds(ReadOnlySpan<CutSize> sizes)
    {
        var pieces = ImmutableArray.CreateBuilder<(long Width, long Height)>(LineOf.Length);
        foreach (int line in LineOf)
        {
            var size = Bench is null ? sizes[line] : ClothFit.WithMargins(sizes[line], Bench);
            pieces.Add((size.Width.Steps, size.Height.Steps));
        }

        var grown = pieces.MoveToImmutable();
        var (width, height) = SheetCutter.SizeOf(Block, grown, Kerf);
        return Frame is null ? width <= Width && height <= Height : SheetCutter.TryCut(Block, Frame, grown) is not null;
    }

    /// <summary>The lines the pattern holds.</summary>
    public IEnumerable<int> Lines() => PiecesOf(Block).Select(piece => LineOf[piece]).Distinct();

    private static IEnumerable<int> PiecesOf(Block block) => block switch
    {
        PieceBlock piece => [piece.Piece],
        StackBlock stack => stack.Parts.SelectMany(PiecesOf),
        _ => throw new InvalidOperationException("A block is a piece or a stack."),
    };
}
