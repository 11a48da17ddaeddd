// Problem: an arrangement says how pieces lie to one another; the saw needs places, cuts and what is left over.
// Idea:    what a block has too much is cut off in one strip from edge to edge, so that leftovers are few and large; where the
//          sheet is cut for its leftover, of its parts, if that leaves a larger one: SlackOrder. Then parts are cut off one after
//          another, and each is divided in its turn. Where the fence is in the way of a leftover, the strips come off at once.
// Source:  see SlackOrder.
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
        return TryCut(block, frame, pieceSizes)
            ?? throw new ArgumentException("The block does not fit the trimmed sheet, or what the saw can do.", nameof(block));
    }

    /// <summary>The same; null where the block does not fit, or no way was found within the frame's limits.</summary>
    /// <param name="block">What is to be cut.</param>
    /// <param name="frame">The sheet.</param>
    /// <param name="pieceSizes">Width and height as cut of every piece of the problem, by index.</param>
    public static SheetCuts? TryCut(Block block, SheetFrame frame, ImmutableArray<(long Width, long Height)> pieceSizes)
    {
        ArgumentNullException.ThrowIfNull(block);
        ArgumentNullException.ThrowIfNull(frame);
        var (width, height) = BlockMath.Size(block, pieceSizes, frame.Kerf);
        bool hasRoom = width <= frame.Width - (2 * frame.EdgeTrim) && height <= frame.Height - (2 * frame.EdgeTrim);
        return !hasRoom && (frame.First is not { } first || first.Kerf >= frame.Kerf)
            ? null
            : FirstCutter.Cut(block, frame, pieceSizes) is { } parts ? Cut(parts, frame, pieceSizes) : null;
    }

    /// <summary>The smallest rectangle that holds a block.</summary>
    /// <param name="block">The block.</param>
    /// <param name="pieceSizes">Width and height as cut of every piece of the problem, by index.</param>
    /// <param name="kerf">The kerf between parts.</param>
    /// <returns>Width and height needed.</returns>
    public static (long Width, long Height) SizeOf(
        Block block, ImmutableArray<(long Width, long Height)> pieceSizes, long kerf) =>
        BlockMath.Size(block, pieceSizes, kerf);

    /// <summary>Whether a part of a sheet that comes to the saw can be cut up there.</summary>
    internal static bool CanCut(SheetPart part, SheetFrame frame, ImmutableArray<(long Width, long Height)> pieceSizes) =>
        Cut(new SheetParts([], [part]), frame, pieceSizes) is not null;

    private static SheetCuts? Cut(SheetParts parts, SheetFrame frame, ImmutableArray<(long Width, long Height)> sizes)
    {
        var slack = new SlackOrder(sizes, frame);
        var cuts = new Run(frame, sizes, slack).Cut(parts);
        if (frame.Fence is null || !frame.ForLeftover)
        {
            return cuts;
        }

        var atOnce = Cut(parts, frame with { ForLeftover = false }, sizes);
        return cuts is null || (atOnce is not null && Largest(atOnce) >= Largest(cuts)) ? atOnce : cuts;

        Int128 Largest(SheetCuts all) => all.Leftovers.Select(one => slack.Rank(one.At.Width, one.At.Height)).DefaultIfEmpty().Max();
    }

    private sealed class Run(SheetFrame frame, ImmutableArray<(long Width, long Height)> sizes, SlackOrder slack)
    {
        private readonly ImmutableArray<CutLine>.Builder _cuts = ImmutableArray.CreateBuilder<CutLine>();
        private readonly ImmutableArray<PlacedPiece>.Builder _pieces = ImmutableArray.CreateBuilder<PlacedPiece>();
        private readonly ImmutableArray<Leftover>.Builder _leftovers = ImmutableArray.CreateBuilder<Leftover>();

        private bool _impossible;

        public SheetCuts? Cut(SheetParts parts)
        {
            _cuts.AddRange(parts.Cuts);
            foreach (var part in parts.Parts)
            {
                if (part.Block is null)
                {
                    _leftovers.Add(new Leftover(part.At, FromTrim: false, Untrimmed: frame.EdgeTrim > 0 && part.Factory != SheetEdges.None));
                }
                else
                {
                    Place(part.Block, TrimEdges(part.At, part.Factory));
                }
            }

            return _impossible ? null : new SheetCuts(_cuts.ToImmutable(), _pieces.ToImmutable(), _leftovers.ToImmutable());
        }

        private Rectangle TrimEdges(Rectangle rest, SheetEdges factory)
        {
            if (frame.EdgeTrim == 0)
            {
                return rest;
            }

            foreach (var axis in new[] { Axis.X, Axis.Y })
            {
                var (near, far) = axis == Axis.X ? (SheetEdges.Left, SheetEdges.Right) : (SheetEdges.Bottom, SheetEdges.Top);
                if (factory.HasFlag(near))
                {
                    long at = axis == Axis.X ? rest.X : rest.Y;
                    rest = Trim(rest, axis, at + frame.EdgeTrim - frame.Kerf, stripIsNear: true);
                }

                if (factory.HasFlag(far))
                {
                    long end = axis == Axis.X ? rest.X + rest.Width : rest.Y + rest.Height;
                    rest = Trim(rest, axis, end - frame.EdgeTrim, stripIsNear: false);
                }
            }

            return rest;
        }

        private Rectangle Trim(Rectangle workpiece, Axis axis, long at, bool stripIsNear)
        {
            var (first, second) = Split(workpiece, axis, at, isTrim: true);
            AddLeftover(stripIsNear ? first : second, fromTrim: true);
            return stripIsNear ? second : first;
        }

        private void Place(Block block, Rectangle room)
        {
            room = CutOffSlack(block, room);
            if (block is PieceBlock piece)
            {
                _impossible |= (room.Width, room.Height) != BlockMath.Size(block, sizes, frame.Kerf);
                _pieces.Add(new PlacedPiece(piece.Piece, room, piece.Turned));
                return;
            }

            var stack = (StackBlock)block;
            foreach (var (part, at) in CutApart(stack, room))
            {
                Place(part, at);
            }
        }

        /// <summary>Cuts one part after another off the room; the last gets what room there is beyond the stack.</summary>
        private List<(Block Part, Rectangle At)> CutApart(StackBlock stack, Rectangle room)
        {
            var parts = new List<(Block Part, Rectangle At)>();
            var order = OrderOf(stack, (stack.Axis == Axis.X ? room.Width : room.Height) - Along(stack, stack.Axis));
            foreach (var (part, size) in order[..^1])
            {
                long at = stack.Axis == Axis.X ? room.X + size : room.Y + size;
                var (first, second) = Split(room, stack.Axis, at, isTrim: false);
                parts.Add((part, first));
                room = second;
            }

            parts.Add((order[^1].Part, room));
            return parts;
        }

        /// <summary>
        /// The parts in the order they are cut off, with the room each gets: as they are, unless one is wider than the fence
        /// reaches. That one comes last, at its exact size; room that could not be cut off beside it goes to another.
        /// </summary>
        private ImmutableArray<(Block Part, long Size)> OrderOf(StackBlock stack, long spare)
        {
            ImmutableArray<(Block Part, long Size)> parts = [.. stack.Parts.Select(part => (part, Along(part, stack.Axis)))];
            if (frame.Fence is not { } fence || parts.Sum(part => part.Size + frame.Kerf) <= fence.Reach)
            {
                return parts;
            }

            int wide = parts.Count(part => part.Size > fence.Reach);
            _impossible |= wide > 1;
            var order = NarrowTogether([.. parts.OrderBy(part => part.Size > fence.Reach)], stack.Axis, fence);
            return wide == 0 ? order : order.SetItem(0, (order[0].Part, order[0].Size + spare));
        }

        /// <summary>
        /// A part too narrow to lie at the fence can only fall off what does. So those come after the parts that can, in stacks as
        /// wide as the fence reaches, which are cut apart when they are cut off.
        /// </summary>
        private ImmutableArray<(Block Part, long Size)> NarrowTogether(ImmutableArray<(Block Part, long Size)> parts, Axis axis, FenceSides fence)
        {
            ImmutableArray<(Block Part, long Size)> narrow = [.. parts.Where(part => part.Size < fence.LeastAtFence)];
            if (narrow.IsEmpty)
            {
                return parts;
            }

            var groups = new List<(Block Part, long Size)>();
            foreach (var (part, size) in narrow)
            {
                if (groups.Count > 0 && groups[^1].Size + frame.Kerf + size <= fence.Reach)
                {
                    groups[^1] = (BlockMath.Join(axis, groups[^1].Part, part), groups[^1].Size + frame.Kerf + size);
                }
                else
                {
                    groups.Add((part, size));
                }
            }

            return
            [
                .. parts.Where(part => part.Size >= fence.LeastAtFence && part.Size <= fence.Reach),
                .. groups,
                .. parts.Where(part => part.Size > fence.Reach),
            ];
        }

        private long Along(Block block, Axis axis)
        {
            var (width, height) = BlockMath.Size(block, sizes, frame.Kerf);
            return axis == Axis.X ? width : height;
        }

        private Rectangle CutOffSlack(Block block, Rectangle room)
        {
            var need = BlockMath.Size(block, sizes, frame.Kerf);
            foreach (var axis in slack.Of(block, room.Width, room.Height))
            {
                room = CutTo(room, axis, axis == Axis.X ? need.Width : need.Height);
            }

            return room;
        }

        private Rectangle CutTo(Rectangle room, Axis axis, long need)
        {
            while (true)
            {
                var (from, size) = axis == Axis.X ? (room.X, room.Width) : (room.Y, room.Height);
                if (size == need)
                {
                    return room;
                }

                long keep = KeptOf(size, need);
                if (keep == size)
                {
                    return room;
                }

                var (first, second) = Split(room, axis, from + keep, isTrim: false);
                AddLeftover(second, fromTrim: false);
                room = first;
            }
        }

        /// <summary>
        /// What to keep when slack is cut off: the need, or more where the fence reaches neither that nor all of the slack. All of
        /// it where a strip too narrow for the fence is all the slack there is: then another part has to take it.
        /// </summary>
        private long KeptOf(long size, long need)
        {
            long waste = size - need - frame.Kerf;
            if (frame.Fence is not { } fence || fence.CanCut(need, waste))
            {
                return need;
            }

            if (waste <= fence.Reach)
            {
                return size;
            }

            // What is left of the slack must not be too narrow a strip either.
            long chunk = waste - fence.Reach - frame.Kerf >= fence.LeastAtFence ? fence.Reach : (waste - frame.Kerf) / 2;
            return size - frame.Kerf - chunk;
        }

        private (Rectangle First, Rectangle Second) Split(Rectangle workpiece, Axis axis, long at, bool isTrim)
        {
            _cuts.Add(new CutLine(workpiece, axis, at, isTrim));
            var (first, second) = axis == Axis.X
                ? (workpiece with { Width = at - workpiece.X },
                   workpiece with { X = at + frame.Kerf, Width = workpiece.X + workpiece.Width - at - frame.Kerf })
                : (workpiece with { Height = at - workpiece.Y },
                   workpiece with { Y = at + frame.Kerf, Height = workpiece.Y + workpiece.Height - at - frame.Kerf });
            _impossible |= frame.Fence is { } fence && !(axis == Axis.X
                ? fence.CanCut(first.Width, second.Width)
                : fence.CanCut(first.Height, second.Height));
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
