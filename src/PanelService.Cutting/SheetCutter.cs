// Problem: an arrangement says how pieces lie to one another; the saw needs places, cuts and what is left over.
// Idea:    every block takes no more room than it needs; what a block has too much is cut off first, in one strip
//          from edge to edge, so that leftovers are few and large. Of the two strips' orders the one with the larger
//          single leftover is taken. Then parts are cut off one after another, and each is divided in its turn.
// Cost:    linear in the pieces times the depth of the arrangement.
// Not:     the most valuable leftovers of all arrangements with the same pieces, only of this one.
using System.Collections.Immutable;
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting;

/// <summary>Turns an arrangement into places, numbered cuts and leftovers.</summary>
public static class SheetCutter
{
    /// <summary>Lays a block out on a sheet: trimming cuts first, then every cut after the one that makes its workpiece.</summary>
    /// <param name="block">What is to be cut.</param>
    /// <param name="frame">The sheet.</param>
    /// <param name="pieceSizes">Width and height as cut of every piece of the problem, by index.</param>
    /// <returns>Cuts, pieces and leftovers; leftovers as few and as large as the block allows.</returns>
    /// <exception cref="ArgumentException">The block does not fit the trimmed sheet.</exception>
    public static SheetCuts Cut(Block block, SheetFrame frame, ImmutableArray<(long Width, long Height)> pieceSizes)
    {
        ArgumentNullException.ThrowIfNull(block);
        ArgumentNullException.ThrowIfNull(frame);
        var (width, height) = BlockMath.Size(block, pieceSizes, frame.Kerf);
        if (width > frame.Width - (2 * frame.EdgeTrim) || height > frame.Height - (2 * frame.EdgeTrim))
        {
            throw new ArgumentException("The block does not fit the trimmed sheet.", nameof(block));
        }

        return new Run(frame, pieceSizes).Cut(block);
    }

    /// <summary>The smallest rectangle that holds a block.</summary>
    /// <param name="block">The block.</param>
    /// <param name="pieceSizes">Width and height as cut of every piece of the problem, by index.</param>
    /// <param name="kerf">The kerf between parts.</param>
    /// <returns>Width and height needed.</returns>
    public static (long Width, long Height) SizeOf(
        Block block, ImmutableArray<(long Width, long Height)> pieceSizes, long kerf) =>
        BlockMath.Size(block, pieceSizes, kerf);

    private sealed class Run(SheetFrame frame, ImmutableArray<(long Width, long Height)> sizes)
    {
        private readonly ImmutableArray<CutLine>.Builder _cuts = ImmutableArray.CreateBuilder<CutLine>();
        private readonly ImmutableArray<PlacedPiece>.Builder _pieces = ImmutableArray.CreateBuilder<PlacedPiece>();
        private readonly ImmutableArray<Leftover>.Builder _leftovers = ImmutableArray.CreateBuilder<Leftover>();

        public SheetCuts Cut(Block block)
        {
            Place(block, TrimEdges());
            return new SheetCuts(_cuts.ToImmutable(), _pieces.ToImmutable(), _leftovers.ToImmutable());
        }

        private Rectangle TrimEdges()
        {
            var rest = new Rectangle(0, 0, frame.Width, frame.Height);
            if (frame.EdgeTrim == 0)
            {
                return rest;
            }

            foreach (var axis in new[] { Axis.X, Axis.Y })
            {
                rest = Split(rest, axis, frame.EdgeTrim - frame.Kerf, isTrim: true).Second;
                long end = axis == Axis.X ? frame.Width : frame.Height;
                rest = Split(rest, axis, end - frame.EdgeTrim, isTrim: true).First;
            }

            return rest;
        }

        private void Place(Block block, Rectangle room)
        {
            room = CutOffSlack(room, BlockMath.Size(block, sizes, frame.Kerf));
            if (block is PieceBlock piece)
            {
                _pieces.Add(new PlacedPiece(piece.Piece, room, piece.Turned));
                return;
            }

            var stack = (StackBlock)block;
            foreach (var (part, at) in CutApart(stack, room))
            {
                Place(part, at);
            }
        }

        /// <summary>Cuts one part after another off the room, which fits the stack exactly along its axis.</summary>
        private List<(Block Part, Rectangle At)> CutApart(StackBlock stack, Rectangle room)
        {
            var parts = new List<(Block Part, Rectangle At)>();
            foreach (var part in stack.Parts[..^1])
            {
                var (width, height) = BlockMath.Size(part, sizes, frame.Kerf);
                long at = stack.Axis == Axis.X ? room.X + width : room.Y + height;
                var (first, second) = Split(room, stack.Axis, at, isTrim: false);
                parts.Add((part, first));
                room = second;
            }

            parts.Add((stack.Parts[^1], room));
            return parts;
        }

        private Rectangle CutOffSlack(Rectangle room, (long Width, long Height) need)
        {
            if (LargestLeftover(room, need, Axis.X) >= LargestLeftover(room, need, Axis.Y))
            {
                room = CutTo(room, Axis.X, need.Width);
                return CutTo(room, Axis.Y, need.Height);
            }

            room = CutTo(room, Axis.Y, need.Height);
            return CutTo(room, Axis.X, need.Width);
        }

        /// <summary>The area of the larger strip when the slack along <paramref name="first"/> is cut off first.</summary>
        private Int128 LargestLeftover(Rectangle room, (long Width, long Height) need, Axis first)
        {
            Int128 right = Math.Max(0, room.Width - need.Width - frame.Kerf);
            Int128 top = Math.Max(0, room.Height - need.Height - frame.Kerf);
            return first == Axis.X
                ? Int128.Max(right * room.Height, top * need.Width)
                : Int128.Max(right * need.Height, top * room.Width);
        }

        private Rectangle CutTo(Rectangle room, Axis axis, long need)
        {
            bool exact = (axis == Axis.X ? room.Width : room.Height) == need;
            if (exact)
            {
                return room;
            }

            long at = need + (axis == Axis.X ? room.X : room.Y);
            var (first, second) = Split(room, axis, at, isTrim: false);
            AddLeftover(second, fromTrim: false);
            return first;
        }

        private (Rectangle First, Rectangle Second) Split(Rectangle workpiece, Axis axis, long at, bool isTrim)
        {
            _cuts.Add(new CutLine(workpiece, axis, at, isTrim));
            var (first, second) = axis == Axis.X
                ? (workpiece with { Width = at - workpiece.X },
                   workpiece with { X = at + frame.Kerf, Width = workpiece.X + workpiece.Width - at - frame.Kerf })
                : (workpiece with { Height = at - workpiece.Y },
                   workpiece with { Y = at + frame.Kerf, Height = workpiece.Y + workpiece.Height - at - frame.Kerf });
            if (isTrim)
            {
                bool nearEdge = at < frame.EdgeTrim;
                AddLeftover(nearEdge ? first : second, fromTrim: true);
            }

            return (first, second);
        }

        private void AddLeftover(Rectangle at, bool fromTrim)
        {
            if (at.Width > 0 && at.Height > 0)
            {
                _leftovers.Add(new Leftover(at, fromTrim));
            }
        }
    }
}
