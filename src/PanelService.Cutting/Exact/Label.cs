using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace PanelService.Cutting.Exact;

/// <summary>How a label's pattern came about.</summary>
internal enum LabelKind : byte
{
    /// <summary>A single piece.</summary>
    Shape,

    /// <summary>Two labels side by side.</summary>
    AlongX,

    /// <summary>Two labels one above the other.</summary>
    AlongY,
}

/// <summary>Along which axis a label may stand as the first, smallest part of a stack: one that is itself such a stack may not.</summary>
[Flags]
internal enum Ends : byte
{
    /// <summary>Along the width.</summary>
    X = 1,

    /// <summary>Along the height.</summary>
    Y = 2,

    /// <summary>Along both.</summary>
    Either = X | Y,
}

/// <summary>A pattern of a rectangle, known by what it counts.</summary>
/// <param name="Key">The counts; see <see cref="CountKey"/>.</param>
/// <param name="Loss">How much less than the rectangle's best value it is worth.</param>
/// <param name="First">The shape, or the nearer label.</param>
/// <param name="Second">The farther label.</param>
/// <param name="Kind">Which of these.</param>
/// <param name="Ends">Where it may stand first.</param>
internal readonly record struct Label(Vector256<ulong> Key, int Loss, int First, int Second, LabelKind Kind, Ends Ends);

/// <summary>Collects the labels of one rectangle: of those with the same counts the one that loses least.</summary>
internal sealed class LabelSet
{
    // Most rectangles have few labels: clearing a large table for each would cost more than making it again.
    private const int Fewest = 64;
    private const int MostKept = 1024;

    private readonly List<Label> _labels = [];
    private int[] _slots = new int[Fewest];

    /// <summary>How many there are.</summary>
    public int Count => _labels.Count;

    /// <summary>Starts anew.</summary>
    public void Clear()
    {
        _labels.Clear();
        if (_slots.Length > MostKept)
        {
            _slots = new int[Fewest];
        }
        else
        {
            Array.Clear(_slots);
        }
    }

    /// <summary>Adds a label, or improves the one with its counts.</summary>
    /// <param name="label">The label.</param>
    public void Add(in Label label)
    {
        int slot = Slot(label.Key);
        int at = _slots[slot] - 1;
        if (at < 0)
        {
            _labels.Add(label);
            _slots[slot] = _labels.Count;
            if (2 * _labels.Count > _slots.Length)
            {
                Grow();
            }

            return;
        }

        var known = _labels[at];
        if (label.Loss < known.Loss)
        {
            _labels[at] = label;
        }
        else if (label.Loss == known.Loss)
        {
            _labels[at] = known with { Ends = known.Ends | label.Ends };
        }
    }

    /// <summary>Hands the labels over, those that lose least first.</summary>
    /// <param name="all">Where they are added.</param>
    public void AppendTo(List<Label> all)
    {
        _labels.Sort(static (a, b) => a.Loss.CompareTo(b.Loss));
        all.AddRange(CollectionsMarshal.AsSpan(_labels));
    }

    private void Grow()
    {
        _slots = new int[4 * _slots.Length];
        for (int at = 0; at < _labels.Count; at++)
        {
            _slots[Slot(_labels[at].Key)] = at + 1;
        }
    }

    private int Slot(Vector256<ulong> key)
    {
        unchecked
        {
            ulong hash = (key[0] * 0x9E3779B97F4A7C15UL) ^ (key[1] * 0xC2B2AE3D27D4EB4FUL) ^ (key[2] * 0x165667B19E3779F9UL) ^ (key[3] * 0xD6E8FEB86659FD93UL);
            hash ^= hash >> 32;
            hash *= 0x9E3779B97F4A7C15UL;
            int mask = _slots.Length - 1;
            int slot = (int)(hash >> 40) & mask;
            while (_slots[slot] != 0 && _labels[_slots[slot] - 1].Key != key)
            {
                slot = (slot + 1) & mask;
            }

            return slot;
        }
    }
}
