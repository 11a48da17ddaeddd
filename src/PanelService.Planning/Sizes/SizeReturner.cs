// Problem: patterns were found with every line at its smallest allowed size; lines that could stay nominal at the same cost are to.
// Idea:    growing (SizeGrower) gives back what the patterns leave room for. Beyond that the same boards and cloths are asked
//          whether other patterns of them hold more lines at their nominal size (SameStocksPlanner): those first that take
//          the least room for it, half of the lines together, and half by half where that cannot be. All lines at once are
//          not asked for: that nominal sizes cost more is why there are smaller ones. What comes after, larger leftovers
//          and fewer settings, is looked for at the sizes found, so that it makes no panel smaller.
// Cost:    a run of a tenth of a second at the most for each question, of which there are a few.
// Not:     other boards or cloths of the same cost; sizes between the two, which are left to growing; lines past the last question.
using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Batches;
using PanelService.Planning.Boards;
using PanelService.Planning.Cloth;
using PanelService.Planning.Orders;
using PanelService.Planning.SawRun;

namespace PanelService.Planning.Sizes;

/// <summary>Returns lines to their nominal size where that costs nothing.</summary>
internal sealed class SizeReturner
{
    private readonly Order _order;
    private readonly CancellationToken _cancellation;
    private readonly ImmutableArray<CutSize> _smallest;
    private readonly ImmutableArray<CutSize> _nominal;
    private Batch _batch;
    private HashSet<int> _whole;
    private int _questionsLeft;

    private SizeReturner(Order order, Batch batch, CancellationToken cancellation)
    {
        (_order, _batch, _cancellation) = (order, batch, cancellation);
        (_smallest, _nominal) = (CutSizes.Smallest(order), CutSizes.Nominal(order));
        _questionsLeft = order.Effort switch
        {
            Effort.Quick => 4,
            Effort.Steady => 10,
            _ => 40,
        };
        _whole = WholeIn(batch);
    }

    /// <summary>Returns.</summary>
    /// <param name="order">The order.</param>
    /// <param name="batch">A whole batch.</param>
    /// <param name="cancellation">Ends it; what was returned so far stands.</param>
    /// <returns>A batch of the same goods at the same cost with no fewer lines at their nominal size.</returns>
    public static Batch Return(Order order, Batch batch, CancellationToken cancellation)
    {
        if (order.Saw.Undersize == Measures.Length.Zero || batch.StoppedEarly)
        {
            return batch;
        }

        var returner = new SizeReturner(order, batch, cancellation);
        returner.AskForHalvesOf(
        [
            .. returner.Made.Where(line => !returner._whole.Contains(line)).OrderBy(returner.RoomFor).ThenBy(line => line),
        ]);
        var sizes = JointChoice.Grown(order, returner._batch);
        return returner._batch with { Sizes = sizes, Boards = BoardPlanner.HeldTo(returner._batch.Boards, sizes) };
    }

    private IEnumerable<int> Made => Enumerable.Range(0, _order.Panels.Length).Where(line => _batch.Made[line] > 0);

    private Int128 RoomFor(int line) => _batch.Made[line]
        * (((Int128)_nominal[line].Width.Steps * _nominal[line].Height.Steps) - ((Int128)_smallest[line].Width.Steps * _smallest[line].Height.Steps));

    private void AskFor(ImmutableArray<int> lines)
    {
        lines = [.. lines.Where(line => !_whole.Contains(line))];
        if (lines.IsEmpty || _questionsLeft == 0 || _cancellation.IsCancellationRequested)
        {
            return;
        }

        _questionsLeft--;
        if (!Take(lines))
        {
            AskForHalvesOf(lines);
        }
    }

    private void AskForHalvesOf(ImmutableArray<int> lines)
    {
        if (lines.Length > 1)
        {
            AskFor(lines[..(lines.Length / 2)]);
            AskFor(lines[(lines.Length / 2)..]);
        }
    }

    /// <summary>Takes patterns that hold some more lines at their nominal size, if there are any.</summary>
    private bool Take(ImmutableArray<int> lines)
    {
        ImmutableArray<CutSize> sizes =
            [.. _smallest.Select((size, line) => _whole.Contains(line) || lines.Contains(line) ? _nominal[line] : size)];
        var boards = _batch.Boards.Rooms(_order.Saw.Kerf).All(room => room.Holds(sizes.AsSpan()))
            ? _batch.Boards
            : BoardPlanner.AtSizes(_order, _batch.Boards, sizes, _cancellation);
        if (boards is null)
        {
            return false;
        }

        var cloth = _batch.Cloth.Rooms(_order.Bench).All(room => room.Holds(sizes.AsSpan()))
            ? _batch.Cloth
            : ClothPlanner.AtSizes(_order, _batch.Cloth, new CutRequest(_batch.Made, sizes, Ready: []), _cancellation);
        if (cloth is null)
        {
            return false;
        }

        _batch = _batch with { Boards = boards, Cloth = cloth, Sizes = sizes };
        _whole = WholeIn(_batch);
        return true;
    }

    private HashSet<int> WholeIn(Batch batch)
    {
        var sizes = JointChoice.Grown(_order, batch);
        return [.. Enumerable.Range(0, sizes.Length).Where(line => batch.Made[line] > 0 && sizes[line] == _nominal[line])];
    }
}
