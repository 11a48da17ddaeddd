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
// Checks:  overflow checks are off in this file. Sizes are below 2^30 and sums of slack never exceed the bin; with
//          checks a packing of 100 pieces ran 1.2 times as long.
namespace PanelService.Cutting.Many;

/// <summary>A stock rectangle and the slicing tree of what lies on it.</summary>
internal sealed class SlicingBin
{
    private SlicingNode[] _nodes = new SlicingNode[32];
    private int[] _free = new int[32];
    private int[] _live = new int[32];
    private Slot[] _slots = new Slot[32];
    private int[] _mostX = new int[32];
    private int[] _mostY = new int[32];
    private int _freeCount;
    private int _made;

    /// <summary>The stock's place in the model.</summary>
    public int Stock { get; private set; }

    /// <summary>The stock's usable width and one kerf.</summary>
    public int Width { get; private set; }

    /// <summary>The stock's usable height and one kerf.</summary>
    public int Height { get; private set; }

    /// <summary>The root of the tree; −1 while nothing is placed.</summary>
    public int Root { get; private set; } = -1;

    /// <summary>How many places there are.</summary>
    public int Slots { get; private set; }

    /// <summary>How many nodes the tree has.</summary>
    public int Nodes { get; private set; }

    /// <summary>Area not covered by pieces.</summary>
    public double Slack { get; private set; }

    /// <summary>How well the slack hangs together: the sum of the gaps' squared areas over the squared area of the bin.</summary>
    public double Gathered { get; private set; }

    /// <summary>The largest width any place takes.</summary>
    public int MostX { get; private set; }

    /// <summary>The largest height any place takes.</summary>
    public int MostY { get; private set; }

    /// <summary>Empties the bin and makes it one of a stock.</summary>
    /// <param name="stock">The stock's place in the model.</param>
    /// <param name="width">Its usable width and one kerf.</param>
    /// <param name="height">Its usable height and one kerf.</param>
    public void Open(int stock, int width, int height)
    {
        (Stock, Width, Height, Root, _freeCount, _made) = (stock, width, height, -1, 0, 0);
        Slack = (double)width * height;
        Refresh();
    }

    /// <summary>Makes the bin the same as another.</summary>
    /// <param name="other">The other.</param>
    public void CopyFrom(SlicingBin other)
    {
        (Stock, Width, Height, Root) = (other.Stock, other.Width, other.Height, other.Root);
        (Slots, Nodes, Slack, Gathered) = (other.Slots, other.Nodes, other.Slack, other.Gathered);
        (MostX, MostY) = (other.MostX, other.MostY);
        (_freeCount, _made) = (other._freeCount, other._made);
        if (_nodes.Length < other._nodes.Length)
        {
            Array.Resize(ref _nodes, other._nodes.Length);
            Array.Resize(ref _free, other._nodes.Length);
            Array.Resize(ref _live, other._nodes.Length);
        }

        if (_slots.Length < other._slots.Length)
        {
            GrowSlots(other._slots.Length);
        }

        other._nodes.AsSpan(0, _made).CopyTo(_nodes);
        other._free.AsSpan(0, _freeCount).CopyTo(_free);
        other._live.AsSpan(0, Nodes).CopyTo(_live);
        other._slots.AsSpan(0, Slots).CopyTo(_slots);
        other._mostX.AsSpan(0, Slots).CopyTo(_mostX);
        other._mostY.AsSpan(0, Slots).CopyTo(_mostY);
    }

    /// <summary>A node, for reading the tree.</summary>
    /// <param name="index">Its index.</param>
    public ref readonly SlicingNode Node(int index) => ref _nodes[index];

    /// <summary>A node of the tree by its place in the walk of the tree, the root first.</summary>
    /// <param name="at">From 0 up to, not including, <see cref="Nodes"/>.</param>
    public int Live(int at) => _live[at];

    /// <summary>The first place from <paramref name="from"/> on that takes a piece; −1 where there is none.</summary>
    /// <param name="from">The place to start at.</param>
    /// <param name="width">The piece's width and a kerf.</param>
    /// <param name="height">The piece's height and a kerf.</param>
    public int NextFit(int from, int width, int height)
    {
        unchecked
        {
            int count = Slots;
            int[] mostX = _mostX;
            int[] mostY = _mostY;
            for (int slot = from; slot < count; slot++)
            {
                if (mostX[slot] >= width && mostY[slot] >= height)
                {
                    return slot;
                }
            }

            return -1;
        }
    }

    /// <summary>How much a piece breaks up the slack in a place: the fall of the sum of squared gaps, lower is better.</summary>
    /// <param name="slot">A place that takes it.</param>
    /// <param name="width">The piece's width and a kerf.</param>
    /// <param name="height">The piece's height and a kerf.</param>
    public double Loss(int slot, int width, int height)
    {
        ref readonly var place = ref _slots[slot];
        double along = place.AlongX ? width : height;
        double across = place.AlongX ? height : width;
        double overAlong = Math.Max(0, along - place.GapAlong);
        double overAcross = Math.Max(0, across - place.GapAcross);
        double gapAlong = place.GapAlong + overAlong;
        double gapAcross = place.GapAcross + overAcross;

        // What is left of the gap, parted one way or the other.
        double beyond = gapAlong - along;
        double beside = gapAcross - across;
        double left = Math.Max(
            Square(beyond * gapAcross) + Square(beside * along),
            Square(beyond * across) + Square(beside * gapAlong));
        double loss = Square((double)place.GapAlong * place.GapAcross) - left;
        if (overAlong > 0)
        {
            loss += Taken(place.DonorAlong, overAlong, place.DepthAlong) - Square(overAlong * place.WasteAlong);
        }

        if (overAcross > 0)
        {
            loss += Taken(place.DonorAcross, overAcross, place.DepthAcross) - Square(overAcross * place.WasteAcross);
        }

        return loss;
    }

    /// <summary>Puts a piece in a place.</summary>
    /// <param name="slot">The place; it takes the piece.</param>
    /// <param name="shape">The piece's shape.</param>
    /// <param name="width">Its width and a kerf.</param>
    /// <param name="height">Its height and a kerf.</param>
    public void Insert(int slot, int shape, int width, int height)
    {
        var place = _slots[slot];
        int leaf = Make(shape);
        _nodes[leaf].Width = width;
        _nodes[leaf].Height = height;
        Slack -= (double)width * height;
        int axis = place.AlongX ? SlicingNode.StackX : SlicingNode.StackY;
        if (place.Node < 0)
        {
            Root = leaf;
        }
        else if (_nodes[place.Node].Kind == axis)
        {
            Prepend(place.Node, leaf);
        }
        else
        {
            int stack = Make(axis);
            Replace(place.Node, stack);
            Prepend(stack, place.Node);
            Prepend(stack, leaf);
        }

        Refresh();
    }

    /// <summary>Takes a node and everything under it out. The places are not counted anew: see <see cref="Refresh"/>.</summary>
    /// <param name="node">The node.</param>
    /// <param name="shapes">Gets the shapes of the pieces taken out.</param>
    /// <param name="count">How many there are in <paramref name="shapes"/>; raised.</param>
    public void Remove(int node, int[] shapes, ref int count)
    {
        int parent = _nodes[node].Parent;
        if (parent < 0)
        {
            Root = -1;
        }
        else
        {
            Unlink(node);
            Tidy(parent);
        }

        Release(node, shapes, ref count);
    }

    /// <summary>Sizes, slack and places after a change.</summary>
    public void Refresh()
    {
        unchecked
        {
            (Slots, Nodes) = (0, 0);
            Gathered = 0;
            if (_mostX.Length < (2 * _made) + 4)
            {
                GrowSlots((4 * _made) + 8);
            }

            if (Root < 0)
            {
                AddEmpty();
            }
            else
            {
                Measure(Root);
                Spread();
            }

            double area = (double)Width * Height;
            Gathered /= area * area;
            (MostX, MostY) = (0, 0);
            for (int slot = 0; slot < Slots; slot++)
            {
                MostX = Math.Max(MostX, _mostX[slot]);
                MostY = Math.Max(MostY, _mostY[slot]);
            }
        }
    }

    private static double Square(double area) => area * area;

    private static double Taken(double donor, double over, double depth) =>
        Square(donor * depth) - Square(Math.Max(0, donor - over) * depth);

    private void GrowSlots(int size)
    {
        Array.Resize(ref _slots, size);
        Array.Resize(ref _mostX, size);
        Array.Resize(ref _mostY, size);
    }

    private int Make(int kind)
    {
        int node;
        if (_freeCount > 0)
        {
            node = _free[--_freeCount];
        }
        else
        {
            if (_made == _nodes.Length)
            {
                Array.Resize(ref _nodes, 2 * _made);
                Array.Resize(ref _free, 2 * _made);
                Array.Resize(ref _live, 2 * _made);
            }

            node = _made++;
        }

        ref var made = ref _nodes[node];
        made.Kind = kind;
        made.Parent = made.First = made.Next = made.Previous = -1;
        return node;
    }

    private void Prepend(int stack, int part)
    {
        int first = _nodes[stack].First;
        _nodes[part].Parent = stack;
        _nodes[part].Previous = -1;
        _nodes[part].Next = first;
        if (first >= 0)
        {
            _nodes[first].Previous = part;
        }

        _nodes[stack].First = part;
    }

    private void Unlink(int node)
    {
        var (parent, previous, next) = (_nodes[node].Parent, _nodes[node].Previous, _nodes[node].Next);
        if (previous >= 0)
        {
            _nodes[previous].Next = next;
        }
        else
        {
            _nodes[parent].First = next;
        }

        if (next >= 0)
        {
            _nodes[next].Previous = previous;
        }
    }

    /// <summary>Puts one node where another stands.</summary>
    private void Replace(int node, int by)
    {
        int parent = _nodes[node].Parent;
        if (parent < 0)
        {
            Root = by;
            _nodes[by].Parent = -1;
            return;
        }

        Unlink(node);
        Prepend(parent, by);
    }

    /// <summary>A stack of one part is that part; and a stack in a stack of the same axis is one with it.</summary>
    private void Tidy(int stack)
    {
        int only = _nodes[stack].First;
        if (_nodes[only].Next >= 0)
        {
            return;
        }

        int outer = _nodes[stack].Parent;
        Replace(stack, only);
        Drop(stack);
        if (outer < 0 || _nodes[only].Kind != _nodes[outer].Kind)
        {
            return;
        }

        Unlink(only);
        for (int part = _nodes[only].First; part >= 0;)
        {
            int next = _nodes[part].Next;
            Prepend(outer, part);
            part = next;
        }

        Drop(only);
    }

    private void Drop(int node) => _free[_freeCount++] = node;

    private void Release(int node, int[] shapes, ref int count)
    {
        if (_nodes[node].Kind >= 0)
        {
            shapes[count++] = _nodes[node].Kind;
            Slack += (double)_nodes[node].Width * _nodes[node].Height;
        }
        else
        {
            for (int part = _nodes[node].First; part >= 0; part = _nodes[part].Next)
            {
                Release(part, shapes, ref count);
            }
        }

        Drop(node);
    }

    private void Measure(int node)
    {
        unchecked
        {
            ref var it = ref _nodes[node];
            if (it.Kind >= 0)
            {
                return;
            }

            int along = 0;
            int across = 0;
            bool alongX = it.Kind == SlicingNode.StackX;
            for (int part = it.First; part >= 0; part = _nodes[part].Next)
            {
                Measure(part);
                ref readonly var one = ref _nodes[part];
                along += alongX ? one.Width : one.Height;
                across = Math.Max(across, alongX ? one.Height : one.Width);
            }

            (it.Width, it.Height) = alongX ? (along, across) : (across, along);
        }
    }

    private void AddEmpty()
    {
        _slots[0] = new Slot { Node = -1, AlongX = true, GapAlong = Width, GapAcross = Height };
        (_mostX[0], _mostY[0], Slots) = (Width, Height, 1);
        Gathered = Square((double)Width * Height);
    }

    /// <summary>
    /// The root's slack can be cut off along its axis or across; it is taken where the one strip is larger, and the
    /// other way stays open as a place of its own.
    /// </summary>
    private void Spread()
    {
        unchecked
        {
            ref var root = ref _nodes[Root];
            (root.OwnWidth, root.OwnHeight, root.MostWidth, root.MostHeight) = (Width, Height, Width, Height);
            int right = Width - root.Width;
            int above = Height - root.Height;
            bool leaf = root.Kind >= 0;
            bool alongX = leaf ? (long)right * Height >= (long)above * Width : root.Kind == SlicingNode.StackX;
            var donorX = default(Donor);
            var donorY = default(Donor);
            if (alongX ? (leaf || (long)above * Width > (long)right * Height) : (long)right * Height > (long)above * Width)
            {
                // Cut across first: the strip beyond the root's need is a gap of its own.
                bool strip = leaf ? alongX : !alongX;
                if (strip)
                {
                    root.OwnWidth = root.Width;
                    donorX = new Donor(right, Height);
                    Gathered += Square((double)right * Height);
                }
                else
                {
                    root.OwnHeight = root.Height;
                    donorY = new Donor(above, Width);
                    Gathered += Square((double)above * Width);
                }
            }

            AddRootSlots(leaf, alongX, right, above);
            Walk(Root, donorX, donorY, -1);
        }
    }

    private void AddRootSlots(bool leaf, bool alongX, int right, int above)
    {
        if (leaf || !alongX)
        {
            Add(new Slot { Node = Root, AlongX = true, GapAlong = right, GapAcross = Height }, right, Height);
        }

        if (leaf || alongX)
        {
            Add(new Slot { Node = Root, AlongX = false, GapAlong = above, GapAcross = Width }, Width, above);
        }
    }

    private void Add(in Slot slot, int mostX, int mostY)
    {
        if (mostX > 0 && mostY > 0)
        {
            (_slots[Slots], _mostX[Slots], _mostY[Slots]) = (slot, mostX, mostY);
            Slots++;
        }
    }

    private void Walk(int node, Donor donorX, Donor donorY, int parent)
    {
        unchecked
        {
            ref readonly var it = ref _nodes[node];
            _live[Nodes++] = node;
            if (it.Kind >= 0)
            {
                if (parent >= 0)
                {
                    AddBesideLeaf(node, parent, donorX, donorY);
                }
                else
                {
                    Gathered += Square((double)(it.OwnHeight - it.Height) * it.OwnWidth) + Square((double)(it.OwnWidth - it.Width) * it.Height);
                }

                return;
            }

            bool alongX = it.Kind == SlicingNode.StackX;
            AddEndOfStack(node, parent, donorX, donorY);
            int spare = alongX ? it.MostWidth - it.Width : it.MostHeight - it.Height;
            var own = alongX ? new Donor(it.OwnWidth - it.Width, it.OwnHeight) : new Donor(it.OwnHeight - it.Height, it.OwnWidth);
            for (int part = it.First; part >= 0; part = _nodes[part].Next)
            {
                ref var one = ref _nodes[part];
                if (alongX)
                {
                    (one.OwnWidth, one.OwnHeight) = (one.Width, it.OwnHeight);
                    (one.MostWidth, one.MostHeight) = (one.Width + spare, it.MostHeight);
                    Walk(part, own, donorY, node);
                }
                else
                {
                    (one.OwnWidth, one.OwnHeight) = (it.OwnWidth, one.Height);
                    (one.MostWidth, one.MostHeight) = (it.MostWidth, one.Height + spare);
                    Walk(part, donorX, own, node);
                }
            }
        }
    }

    private void AddBesideLeaf(int node, int parent, Donor donorX, Donor donorY)
    {
        ref readonly var it = ref _nodes[node];
        ref readonly var stack = ref _nodes[parent];
        if (stack.Kind == SlicingNode.StackX)
        {
            int gap = it.OwnHeight - it.Height;
            Gathered += Square((double)gap * it.OwnWidth);
            Add(
                new Slot
                {
                    Node = node,
                    AlongX = false,
                    GapAlong = gap,
                    GapAcross = it.OwnWidth,
                    DonorAlong = donorY.Extent,
                    DepthAlong = donorY.Depth,
                    DonorAcross = donorX.Extent,
                    DepthAcross = donorX.Depth,
                    WasteAlong = stack.Width - it.Width,
                    WasteAcross = it.Height,
                },
                it.MostWidth,
                it.MostHeight - it.Height);
            return;
        }

        int side = it.OwnWidth - it.Width;
        Gathered += Square((double)side * it.OwnHeight);
        Add(
            new Slot
            {
                Node = node,
                AlongX = true,
                GapAlong = side,
                GapAcross = it.OwnHeight,
                DonorAlong = donorX.Extent,
                DepthAlong = donorX.Depth,
                DonorAcross = donorY.Extent,
                DepthAcross = donorY.Depth,
                WasteAlong = stack.Height - it.Height,
                WasteAcross = it.Width,
            },
            it.MostWidth - it.Width,
            it.MostHeight);
    }

    private void AddEndOfStack(int node, int parent, Donor donorX, Donor donorY)
    {
        ref readonly var it = ref _nodes[node];
        bool alongX = it.Kind == SlicingNode.StackX;
        int gap = alongX ? it.OwnWidth - it.Width : it.OwnHeight - it.Height;
        int across = alongX ? it.OwnHeight : it.OwnWidth;
        int outer = parent < 0 ? 0 : alongX ? _nodes[parent].Height - it.Height : _nodes[parent].Width - it.Width;
        Gathered += Square((double)gap * across);
        var (along, wide) = alongX ? (donorX, donorY) : (donorY, donorX);
        Add(
            new Slot
            {
                Node = node,
                AlongX = alongX,
                GapAlong = gap,
                GapAcross = across,
                DonorAlong = along.Extent,
                DepthAlong = along.Depth,
                DonorAcross = wide.Extent,
                DepthAcross = wide.Depth,
                WasteAlong = Math.Max(0, outer),
                WasteAcross = alongX ? it.Width : it.Height,
            },
            alongX ? it.MostWidth - it.Width : it.MostWidth,
            alongX ? it.MostHeight : it.MostHeight - it.Height);
    }

    /// <summary>A strip of slack: its extent and how deep it is.</summary>
    private readonly record struct Donor(int Extent, int Depth);
}
