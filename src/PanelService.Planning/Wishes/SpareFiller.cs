// Problem: leftovers of a finished plan are to be filled with wished panels by worth, never more of one than asked for.
// Idea:    one leftover after the other, the largest first, takes the most valuable guillotine pattern of what is still
//          asked for; what that leaves over is looked at in its turn. Copies of a sheet that can be filled alike are
//          filled together.
//          Worth counts first, the number of panels second: a worth is multiplied by more than any pattern holds.
// Cost:    one exact pattern a leftover and filling.
// Not:     the most worth over all leftovers together where the asked-for numbers bind, nor over other plans of the same
//          cost: for a small order WishBoards looks at those. A pattern that the engine could not finish within a quick effort may
//          not be the best.
using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Wishes;

/// <summary>Fills leftovers with wishes.</summary>
/// <typeparam name="T">What the material is cut from.</typeparam>
internal sealed class SpareFiller<T>
{
    private const long MostValue = 1_000_000_000;

    private readonly SpareTask<T> _task;
    private readonly int[] _left;

    private readonly PlanStop _stop;

    private SpareFiller(SpareTask<T> task, ImmutableArray<int> atMost, PlanStop stop)
    {
        _task = task;
        _stop = stop;
        _left = [.. atMost];
    }

    /// <summary>Fills.</summary>
    /// <param name="sheets">The sheets as planned.</param>
    /// <param name="task">What to fill them with.</param>
    /// <param name="atMost">Per wish: how many at most.</param>
    /// <param name="stop">Of the search: what is left then is filled with nothing more. Of everything: ends it with an exception.</param>
    /// <returns>The sheets with the wishes in them, and per wish how many.</returns>
    public static (ImmutableArray<LaidOut<T>> Sheets, ImmutableArray<int> Counts) Fill(
        ImmutableArray<LaidOut<T>> sheets, SpareTask<T> task, ImmutableArray<int> atMost, PlanStop stop)
    {
        var filler = new SpareFiller<T>(task, atMost, stop);
        ImmutableArray<LaidOut<T>> filled = [.. sheets.SelectMany(filler.FillCopies)];
        return (filled, [.. atMost.Zip(filler._left, (most, left) => most - left)]);
    }

    private List<LaidOut<T>> FillCopies(LaidOut<T> sheet)
    {
        var result = new List<LaidOut<T>>();
        int copies = sheet.Copies;
        while (copies > 0)
        {
            var before = _left.ToArray();
            var cuts = FillOne(sheet);
            var used = before.Zip(_left, (had, left) => had - left).ToArray();
            int alike = used.All(count => count == 0)
                ? copies
                : Math.Min(copies, before.Zip(used).Where(p => p.Second > 0).Min(p => p.First / p.Second));
            for (int wish = 0; wish < _left.Length; wish++)
            {
                _left[wish] = before[wish] - (used[wish] * alike);
            }

            result.Add(sheet with { Cuts = cuts, Copies = alike });
            copies -= alike;
        }

        return result;
    }

    private SheetCuts FillOne(LaidOut<T> sheet)
    {
        var cuts = sheet.Cuts;
        var open = new PriorityQueue<Leftover, (Int128 Area, int Order)>();
        var closed = new List<Leftover>();
        int order = 0;
        foreach (var leftover in cuts.Leftovers)
        {
            open.Enqueue(leftover, Rank(leftover, order++));
        }

        while (open.TryDequeue(out var leftover, out _))
        {
            var inner = leftover.FromTrim || leftover.Untrimmed || _stop.Search.IsCancellationRequested ? null : FillLeftover(leftover.At, sheet.Stock);
            if (inner is null)
            {
                closed.Add(leftover);
                continue;
            }

            cuts = new SheetCuts([.. cuts.Cuts, .. inner.Cuts], [.. cuts.Pieces, .. inner.Pieces], []);
            foreach (var rest in inner.Leftovers)
            {
                open.Enqueue(rest, Rank(rest, order++));
            }
        }

        return cuts with { Leftovers = [.. closed] };
    }

    private static (Int128 Area, int Order) Rank(Leftover leftover, int order) =>
        (-((Int128)leftover.At.Width * leftover.At.Height), order);

    private SheetCuts? FillLeftover(Rectangle room, T stock)
    {
        int[] wishes = [.. Enumerable.Range(0, _left.Length).Where(w => _left[w] > 0 && Fits(w, room, stock))];
        if (wishes.Length == 0)
        {
            return null;
        }

        var (_, block, _) = BestPattern.Bounded(
            room.Width,
            room.Height,
            [.. wishes.Select(w => new Piece(_task.Sizes[w].Width, _task.Sizes[w].Height, _left[w], [_task.TurningOn(w, stock)]))],
            Values(wishes, room),
            _task.Kerf,
            Effort.Quick,
            _stop.Everything);
        _stop.ThrowIfUnwanted();
        if (block is null || Cut(block, room, wishes) is not { } cuts)
        {
            return null;
        }

        TakeOff(block, wishes);
        return cuts;
    }

    private bool Fits(int wish, Rectangle room, T stock)
    {
        var (width, height) = _task.Sizes[wish];
        var turning = _task.TurningOn(wish, stock);
        return (turning.HasFlag(Turning.Upright) && width <= room.Width && height <= room.Height)
            || (turning.HasFlag(Turning.Turned) && height <= room.Width && width <= room.Height);
    }

    private ImmutableArray<int> Values(int[] wishes, Rectangle room)
    {
        decimal least = wishes.Min(w => (decimal)_task.Sizes[w].Width * _task.Sizes[w].Height);
        long most = (long)((decimal)room.Width * room.Height / least) + 1;
        decimal worth = wishes.Max(w => (decimal)_task.Worths[w] * (most + 1)) + 1;
        decimal unit = Math.Max(1, worth * most / MostValue);
        return [.. wishes.Select(w => Math.Max(1, (int)(((_task.Worths[w] * (most + 1m)) + 1) / unit)))];
    }

    /// <summary>Takes a block's pieces off the numbers asked for.</summary>
    private void TakeOff(Block block, int[] wishes)
    {
        if (block is PieceBlock piece)
        {
            _left[wishes[piece.Piece]]--;
            return;
        }

        foreach (var part in ((StackBlock)block).Parts)
        {
            TakeOff(part, wishes);
        }
    }

    private SheetCuts? Cut(Block block, Rectangle room, int[] wishes)
    {
        var frame = new SheetFrame(room.Width, room.Height, EdgeTrim: 0, _task.Kerf) { Fence = _task.Fence, SmallestKept = _task.SmallestKept };
        return SheetCutter.TryCut(block, frame, [.. wishes.Select(w => _task.Sizes[w])]) is not { } cuts ? null : new SheetCuts(
            [.. cuts.Cuts.Select(c => c with { Workpiece = Moved(c.Workpiece, room), At = c.At + (c.Axis == Axis.X ? room.X : room.Y) })],
            [.. cuts.Pieces.Select(p => p with { Piece = _task.FirstNumber + wishes[p.Piece], At = Moved(p.At, room) })],
            [.. cuts.Leftovers.Select(l => l with { At = Moved(l.At, room) })]);
    }

    private static Rectangle Moved(Rectangle at, Rectangle by) => at with { X = at.X + by.X, Y = at.Y + by.Y };
}
