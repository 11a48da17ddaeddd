// Problem: which places of a sheet take a piece, and what does it spoil there?
// Idea:    what a place takes at most stands in two plain arrays, so that whether it takes a piece is two comparisons. A
//          place is worth the more the less the sum of the gaps' squared areas falls.
// Source:  the valuation: Gardeyn and Wauters, EJOR 302 (2022).
// Cost:    one comparison a place; the valuation only where the piece fits.
// Checks:  overflow checks are off in the look for a place: see SlicingBin.
using System.Runtime.CompilerServices;
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Many;

/// <summary>The places of a sheet where a piece may be put.</summary>
internal sealed class SlotTable
{
    private Slot[] _slots = new Slot[32];
    private int[] _mostX = new int[32];
    private int[] _mostY = new int[32];

    /// <summary>How many places there are.</summary>
    public int Count { get; private set; }

    /// <summary>The largest width any place takes.</summary>
    public int MostX { get; private set; }

    /// <summary>The largest height any place takes.</summary>
    public int MostY { get; private set; }

    /// <summary>A place.</summary>
    /// <param name="slot">Its index.</param>
    public ref readonly Slot this[int slot] => ref _slots[slot];

    /// <summary>Empties it.</summary>
    /// <param name="room">No more places than this will be added.</param>
    public void Begin(int room)
    {
        (Count, MostX, MostY) = (0, 0, 0);
        if (_slots.Length < room)
        {
            Grow(2 * room);
        }
    }

    /// <summary>Adds a place, if it takes anything.</summary>
    /// <param name="slot">The place.</param>
    /// <param name="mostX">The largest width it takes.</param>
    /// <param name="mostY">The largest height it takes.</param>
    [MethodImpl(Compiling.InPlace)]
    public void Add(in Slot slot, int mostX, int mostY)
    {
        if (mostX > 0 && mostY > 0)
        {
            (_slots[Count], _mostX[Count], _mostY[Count]) = (slot, mostX, mostY);
            (MostX, MostY) = (Math.Max(MostX, mostX), Math.Max(MostY, mostY));
            Count++;
        }
    }

    /// <summary>Makes it the same as another.</summary>
    /// <param name="other">The other.</param>
    public void CopyFrom(SlotTable other)
    {
        (Count, MostX, MostY) = (other.Count, other.MostX, other.MostY);
        if (_slots.Length < other._slots.Length)
        {
            Grow(other._slots.Length);
        }

        other._slots.AsSpan(0, Count).CopyTo(_slots);
        other._mostX.AsSpan(0, Count).CopyTo(_mostX);
        other._mostY.AsSpan(0, Count).CopyTo(_mostY);
    }

    /// <summary>The first place from <paramref name="from"/> on that takes a piece; −1 where there is none.</summary>
    /// <param name="from">The place to start at.</param>
    /// <param name="width">The piece's width and a kerf.</param>
    /// <param name="height">The piece's height and a kerf.</param>
    [MethodImpl(Compiling.InPlace)]
    public int NextFit(int from, int width, int height)
    {
        unchecked
        {
            int count = Count;
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

    private static double Square(double area) => area * area;

    private static double Taken(double donor, double over, double depth) =>
        Square(donor * depth) - Square(Math.Max(0, donor - over) * depth);

    private void Grow(int size)
    {
        Array.Resize(ref _slots, size);
        Array.Resize(ref _mostX, size);
        Array.Resize(ref _mostY, size);
    }
}
