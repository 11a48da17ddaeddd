// Problem: the slicing tree of what lies on a sheet changes hundreds of thousands of times a second.
// Idea:    nodes in one array, linked by their places in it; nodes that fall out are used again. A stack never stands in
//          a stack of its own axis, and never holds one part alone.
// Source:  slicing trees: Wong and Liu, DAC 1986.
// Cost:    a few links a change; sizes are measured anew from the root.
// Checks:  overflow checks are off where sizes are added up: see SlicingBin.
using System.Runtime.CompilerServices;
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Many;

/// <summary>A slicing tree of pieces.</summary>
internal sealed class SlicingTree
{
    private SlicingNode[] _nodes = new SlicingNode[32];
    private int[] _free = new int[32];
    private int _freeCount;

    /// <summary>The root; −1 while the tree is empty.</summary>
    public int Root { get; private set; } = -1;

    /// <summary>How many nodes were ever made: no index reaches this.</summary>
    public int Made { get; private set; }

    /// <summary>The nodes by index; those in use are the root and what hangs on it.</summary>
    public SlicingNode[] Nodes => _nodes;

    /// <summary>Empties it.</summary>
    public void Clear() => (Root, _freeCount, Made) = (-1, 0, 0);

    /// <summary>Makes it the same as another.</summary>
    /// <param name="other">The other.</param>
    public void CopyFrom(SlicingTree other)
    {
        (Root, _freeCount, Made) = (other.Root, other._freeCount, other.Made);
        if (_nodes.Length < other._nodes.Length)
        {
            Grow(other._nodes.Length);
        }

        other._nodes.AsSpan(0, Made).CopyTo(_nodes);
        other._free.AsSpan(0, _freeCount).CopyTo(_free);
    }

    /// <summary>Puts a piece beside a node.</summary>
    /// <param name="node">The node; −1: the tree is empty.</param>
    /// <param name="axis">The axis the two follow one another on: <see cref="SlicingNode.StackX"/> or <see cref="SlicingNode.StackY"/>.</param>
    /// <param name="piece">The piece's shape and size.</param>
    public void Insert(int node, int axis, in SlicingNode piece)
    {
        int leaf = Make(piece.Kind);
        _nodes[leaf].Width = piece.Width;
        _nodes[leaf].Height = piece.Height;
        if (node < 0)
        {
            Root = leaf;
        }
        else if (_nodes[node].Kind == axis)
        {
            Prepend(node, leaf);
        }
        else
        {
            int stack = Make(axis);
            Replace(node, stack);
            Prepend(stack, node);
            Prepend(stack, leaf);
        }
    }

    /// <summary>Takes a node and everything under it out.</summary>
    /// <param name="node">The node.</param>
    /// <param name="shapes">Gets the shapes of the pieces taken out.</param>
    /// <param name="count">How many there are in <paramref name="shapes"/>; raised.</param>
    /// <returns>The pieces' area.</returns>
    public double Remove(int node, int[] shapes, ref int count)
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

        return Release(node, shapes, ref count);
    }

    /// <summary>Every stack's size from its parts'.</summary>
    public void Measure()
    {
        if (Root >= 0)
        {
            Measure(Root);
        }
    }

    private void Grow(int size)
    {
        Array.Resize(ref _nodes, size);
        Array.Resize(ref _free, size);
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
            if (Made == _nodes.Length)
            {
                Grow(2 * Made);
            }

            node = Made++;
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

    private double Release(int node, int[] shapes, ref int count)
    {
        double area = 0;
        if (_nodes[node].Kind >= 0)
        {
            shapes[count++] = _nodes[node].Kind;
            area = (double)_nodes[node].Width * _nodes[node].Height;
        }
        else
        {
            for (int part = _nodes[node].First; part >= 0; part = _nodes[part].Next)
            {
                area += Release(part, shapes, ref count);
            }
        }

        Drop(node);
        return area;
    }

    [MethodImpl(Compiling.AtOnce)]
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
}
