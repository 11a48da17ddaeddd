using PanelService.Cutting;

namespace PanelService.Planning.SawRun.Graph;

/// <summary>What must come out of a workpiece, in its one form; there is one for all that are equal.</summary>
/// <param name="parts">The parts, bands closed up and sorted.</param>
internal sealed class Arrangement(NeededPart[] parts)
{
    private readonly int _panels = parts.Count(part => part.Panels > 0);
    private BandSort[]? _columns;
    private BandSort[]? _rows;

    /// <summary>The parts, grown by one kerf.</summary>
    public NeededPart[] Parts => parts;

    /// <summary>Whether a panel is among them; where none is, they need not be parted from one another.</summary>
    public bool HoldsPanel => _panels > 0;

    /// <summary>Into how many parts it falls at least: every panel, and all the rest as one.</summary>
    public int LeastParts => _panels + (_panels < parts.Length ? 1 : 0);

    /// <summary>Its bands along an axis, each sort once; made when first asked for.</summary>
    /// <param name="axis">The axis.</param>
    /// <param name="make">Makes them.</param>
    public BandSort[] Sorts(Axis axis, Func<NeededPart[], Axis, BandSort[]> make) =>
        axis == Axis.X ? _columns ??= make(parts, axis) : _rows ??= make(parts, axis);
}

/// <summary>Bands that are alike.</summary>
/// <param name="Number">The number by which they are known.</param>
/// <param name="Band">One of them, moved to the beginning.</param>
/// <param name="Extent">How far it goes along the axis.</param>
/// <param name="Count">How many there are.</param>
internal sealed record BandSort(int Number, NeededPart[] Band, long Extent, int Count);
