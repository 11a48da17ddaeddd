// Problem: one sheet being filled and emptied, hundreds of thousands of times a second: where does a piece fit, what
//          does it spoil there, and how does the sheet look after a piece is taken out?
// Idea:    not free rectangles but the slicing tree of the pieces placed, each node as small as its parts allow. Slack
//          then gathers by itself: it lies at the end of every stack and beside every part that is smaller than its
//          neighbours. From the slack follows for every node how far it could grow, so whether a piece fits beside it is two
//          comparisons, and no cut is fixed before it has to be. Of the places where it fits, the one that breaks up
//          the slack least is taken: the sum of the gaps' squared areas falls least.
// Source:  leftover trees and their valuation: Gardeyn and Wauters, EJOR 302 (2022); slicing trees: Wong and Liu, DAC 1986.
// Cost:    a change costs one pass over the bin's nodes (about 10 ns each), a look for a place one comparison a slot.
// Not:     every guillotine layout in one step: a piece is laid beside one part or a whole stack, never beside some
//          parts of a stack.
// Parts:   SlicingTree holds the nodes, SlackWalk finds the places, SlotTable values them.
// Checks:  overflow checks are off in its parts. Sizes are below 2^30 and sums of slack never exceed the bin; with
//          checks a packing of 100 pieces ran 1.2 times as long.
namespace PanelService.Cutting.Many;

/// <summary>A stock rectangle and the slicing tree of what lies on it.</summary>
internal sealed class SlicingBin
{
    private readonly SlicingTree _tree = new();
    private readonly SlotTable _slots = new();
    private readonly SlackWalk _walk;

    /// <summary>Makes a bin of no stock yet.</summary>
    public SlicingBin() => _walk = new SlackWalk(_tree, _slots);

    /// <summary>The stock's place in the model.</summary>
    public int Stock { get; private set; }

    /// <summary>The stock's usable width and one kerf.</summary>
    public int Width { get; private set; }

    /// <summary>The stock's usable height and one kerf.</summary>
    public int Height { get; private set; }

    /// <summary>The root of the tree; −1 while nothing is placed.</summary>
    public int Root => _tree.Root;

    /// <summary>How many places there are.</summary>
    public int Slots => _slots.Count;

    /// <summary>How many nodes the tree has.</summary>
    public int Nodes => _walk.Count;

    /// <summary>Area not covered by pieces.</summary>
    public double Slack { get; private set; }

    /// <summary>How well the slack hangs together: the sum of the gaps' squared areas over the squared area of the bin.</summary>
    public double Gathered { get; private set; }

    /// <summary>The largest width any place takes.</summary>
    public int MostX => _slots.MostX;

    /// <summary>The largest height any place takes.</summary>
    public int MostY => _slots.MostY;

    /// <summary>Empties the bin and makes it one of a stock.</summary>
    /// <param name="stock">The stock's place in the model.</param>
    /// <param name="width">Its usable width and one kerf.</param>
    /// <param name="height">Its usable height and one kerf.</param>
    public void Open(int stock, int width, int height)
    {
        (Stock, Width, Height) = (stock, width, height);
        Slack = (double)width * height;
        _tree.Clear();
        Refresh();
    }

    /// <summary>Makes the bin the same as another.</summary>
    /// <param name="other">The other.</param>
    public void CopyFrom(SlicingBin other)
    {
        (Stock, Width, Height, Slack, Gathered) = (other.Stock, other.Width, other.Height, other.Slack, other.Gathered);
        _tree.CopyFrom(other._tree);
        _slots.CopyFrom(other._slots);
        _walk.CopyFrom(other._walk);
    }

    /// <summary>A node, for reading the tree.</summary>
    /// <param name="index">Its index.</param>
    public ref readonly SlicingNode Node(int index) => ref _tree.Nodes[index];

    /// <summary>A node of the tree by its place in the walk of the tree, the root first.</summary>
    /// <param name="at">From 0 up to, not including, <see cref="Nodes"/>.</param>
    public int Live(int at) => _walk.Live(at);

    /// <inheritdoc cref="SlotTable.NextFit"/>
    public int NextFit(int from, int width, int height) => _slots.NextFit(from, width, height);

    /// <inheritdoc cref="SlotTable.Loss"/>
    public double Loss(int slot, int width, int height) => _slots.Loss(slot, width, height);

    /// <summary>Puts a piece in a place.</summary>
    /// <param name="slot">The place; it takes the piece.</param>
    /// <param name="shape">The piece's shape.</param>
    /// <param name="width">Its width and a kerf.</param>
    /// <param name="height">Its height and a kerf.</param>
    public void Insert(int slot, int shape, int width, int height)
    {
        ref readonly var place = ref _slots[slot];
        int axis = place.AlongX ? SlicingNode.StackX : SlicingNode.StackY;
        _tree.Insert(place.Node, axis, new SlicingNode { Kind = shape, Width = width, Height = height });
        Slack -= (double)width * height;
        Refresh();
    }

    /// <summary>Takes a node and everything under it out. The places are not counted anew: see <see cref="Refresh"/>.</summary>
    /// <param name="node">The node.</param>
    /// <param name="shapes">Gets the shapes of the pieces taken out.</param>
    /// <param name="count">How many there are in <paramref name="shapes"/>; raised.</param>
    public void Remove(int node, int[] shapes, ref int count) => Slack += _tree.Remove(node, shapes, ref count);

    /// <summary>Sizes, slack and places after a change.</summary>
    public void Refresh()
    {
        _tree.Measure();
        _walk.Run(Width, Height);
        double area = (double)Width * Height;
        Gathered = _walk.Gathered / (area * area);
    }
}
