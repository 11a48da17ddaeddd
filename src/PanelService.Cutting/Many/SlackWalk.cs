// Problem: where on a sheet is how much room, when no cut is fixed yet?
// Idea:    every node of the slicing tree is as small as its parts allow, so slack lies at the end of every stack and beside
//          every part smaller than its neighbours. Walking the tree from the root gives for every node how large it is
//          by itself and how large it could be if all slack on its way to the root were moved to it. Each leaf and each stack
//          gives one place beside it.
// Source:  leftover trees: Gardeyn and Wauters, EJOR 302 (2022).
// Cost:    one pass over the nodes, about 10 ns each.
// Not:     places beside some parts of a stack: only beside one or all of them.
// Checks:  overflow checks are off in this file: see SlicingBin.
using System.Runtime.CompilerServices;
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Many;

/// <summary>Spreads a sheet's slack over its slicing tree.</summary>
/// <param name="tree">The tree; its nodes' sizes are set.</param>
/// <param name="slots">Gets the places.</param>
internal sealed class SlackWalk(SlicingTree tree, SlotTable slots)
{
    private int[] _live = new int[32];
    private SlicingNode[] _nodes = tree.Nodes;
    private int _width;
    private int _height;

    /// <summary>How many nodes the tree has.</summary>
    public int Count { get; private set; }

    /// <summary>The sum of the gaps' squared areas.</summary>
    public double Gathered { get; private set; }

    /// <summary>A node by its place in the walk, the root first.</summary>
    /// <param name="at">From 0 up to, not including, <see cref="Count"/>.</param>
    public int Live(int at) => _live[at];

    /// <summary>Makes it the same as another.</summary>
    /// <param name="other">The other.</param>
    public void CopyFrom(SlackWalk other)
    {
        (Count, Gathered) = (other.Count, other.Gathered);
        if (_live.Length < other._live.Length)
        {
            Array.Resize(ref _live, other._live.Length);
        }

        other._live.AsSpan(0, Count).CopyTo(_live);
    }

    /// <summary>Walks.</summary>
    /// <param name="width">The sheet's usable width and one kerf.</param>
    /// <param name="height">Its usable height and one kerf.</param>
    public void Run(int width, int height)
    {
        (_width, _height, Count, Gathered) = (width, height, 0, 0);
        slots.Begin((2 * tree.Made) + 4);
        if (tree.Root < 0)
        {
            slots.Add(new Slot { Node = -1, AlongX = true, GapAlong = width, GapAcross = height }, width, height);
            Gathered = Square((double)width * height);
            return;
        }

        _nodes = tree.Nodes;
        if (_live.Length < _nodes.Length)
        {
            Array.Resize(ref _live, _nodes.Length);
        }

        Spread();
    }

    private static double Square(double area) => area * area;

    /// <summary>
    /// The root's slack can be cut off along its axis or across; it is taken where the one strip is larger, and the
    /// other way stays open as a place of its own.
    /// </summary>
    [MethodImpl(Compiling.AtOnce)]
    private void Spread()
    {
        unchecked
        {
            ref var root = ref _nodes[tree.Root];
            (root.OwnWidth, root.OwnHeight, root.MostWidth, root.MostHeight) = (_width, _height, _width, _height);
            int right = _width - root.Width;
            int above = _height - root.Height;
            bool leaf = root.Kind >= 0;
            bool alongX = leaf ? (long)right * _height >= (long)above * _width : root.Kind == SlicingNode.StackX;
            var donorX = default(Donor);
            var donorY = default(Donor);
            if (alongX ? (leaf || (long)above * _width > (long)right * _height) : (long)right * _height > (long)above * _width)
            {
                // Cut across first: the strip beyond the root's need is a gap of its own.
                bool strip = leaf ? alongX : !alongX;
                if (strip)
                {
                    root.OwnWidth = root.Width;
                    donorX = new Donor(right, _height);
                    Gathered += Square((double)right * _height);
                }
                else
                {
                    root.OwnHeight = root.Height;
                    donorY = new Donor(above, _width);
                    Gathered += Square((double)above * _width);
                }
            }

            AddRootSlots(leaf, alongX, right, above);
            Walk(tree.Root, donorX, donorY, -1);
        }
    }

    private void AddRootSlots(bool leaf, bool alongX, int right, int above)
    {
        if (leaf || !alongX)
        {
            slots.Add(new Slot { Node = tree.Root, AlongX = true, GapAlong = right, GapAcross = _height }, right, _height);
        }

        if (leaf || alongX)
        {
            slots.Add(new Slot { Node = tree.Root, AlongX = false, GapAlong = above, GapAcross = _width }, _width, above);
        }
    }

    [MethodImpl(Compiling.AtOnce)]
    private void Walk(int node, Donor donorX, Donor donorY, int parent)
    {
        unchecked
        {
            ref readonly var it = ref _nodes[node];
            _live[Count++] = node;
            if (it.Kind >= 0)
            {
                WalkLeaf(node, donorX, donorY, parent);
                return;
            }

            bool alongX = it.Kind == SlicingNode.StackX;
            AddBeside(node, parent, alongX ? new Donors(donorX, donorY) : new Donors(donorY, donorX), alongX);
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

    /// <summary>A piece's place lies across the stack it stands in: along that, the stack's own end is the place.</summary>
    [MethodImpl(Compiling.AtOnce)]
    private void WalkLeaf(int node, Donor donorX, Donor donorY, int parent)
    {
        unchecked
        {
            ref readonly var it = ref _nodes[node];
            if (parent < 0)
            {
                Gathered += Square((double)(it.OwnHeight - it.Height) * it.OwnWidth) + Square((double)(it.OwnWidth - it.Width) * it.Height);
                return;
            }

            bool alongX = _nodes[parent].Kind == SlicingNode.StackY;
            AddBeside(node, parent, alongX ? new Donors(donorX, donorY) : new Donors(donorY, donorX), alongX);
        }
    }

    /// <summary>The place beside a node, along one axis: the end of a stack, or beside a piece that is smaller than its neighbours.</summary>
    [MethodImpl(Compiling.AtOnce)]
    private void AddBeside(int node, int parent, Donors donors, bool alongX)
    {
        unchecked
        {
            ref readonly var it = ref _nodes[node];
            int gap = alongX ? it.OwnWidth - it.Width : it.OwnHeight - it.Height;
            int across = alongX ? it.OwnHeight : it.OwnWidth;
            Gathered += Square((double)gap * across);
            slots.Add(
                new Slot
                {
                    Node = node,
                    AlongX = alongX,
                    GapAlong = gap,
                    GapAcross = across,
                    DonorAlong = donors.Along.Extent,
                    DepthAlong = donors.Along.Depth,
                    DonorAcross = donors.Across.Extent,
                    DepthAcross = donors.Across.Depth,
                    WasteAlong = parent < 0 ? 0 : alongX ? _nodes[parent].Height - it.Height : _nodes[parent].Width - it.Width,
                    WasteAcross = alongX ? it.Width : it.Height,
                },
                alongX ? it.MostWidth - it.Width : it.MostWidth,
                alongX ? it.MostHeight : it.MostHeight - it.Height);
        }
    }

    /// <summary>A strip of slack: its extent and how deep it is.</summary>
    private readonly record struct Donor(int Extent, int Depth);

    /// <summary>What can lengthen a gap, and what can widen it.</summary>
    private readonly record struct Donors(Donor Along, Donor Across);
}
