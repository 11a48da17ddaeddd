using PanelService.Planning.Measures;

namespace PanelService.Planning.Practice;

/// <summary>From where on a cut wants care. Common practice; the saw's manual, local rules and an experienced person come first.</summary>
public static class SawPractice
{
    /// <summary>A part between fence and blade narrower than this wants a push stick or block: 6 in.</summary>
    public static Length NarrowPart { get; } = Length.FromInches(6);

    /// <summary>A part shorter than this along the fence is not ripped along it but goes on a sled: 10 in.</summary>
    public static Length LeastAlongFence { get; } = Length.FromInches(10);

    /// <summary>A part narrower than this never lies between fence and blade: no push stick fits there. 1/2 in.</summary>
    public static Length LeastAtFence { get; } = Length.FromInches(0.5m);

    /// <summary>How far the fence of a small table saw goes from the blade at least; many go to 30 in. 24 in.</summary>
    public static Length SmallFenceReach { get; } = Length.FromInches(24);

    /// <summary>A part shorter than this along the fence wants care: 12 in.</summary>
    public static Length ShortAlongFence { get; } = Length.FromInches(12);

    /// <summary>How far a fence may be off where a tape in inches sets it: 1/64 in.</summary>
    public static Length FenceErrorInch { get; } = Length.FromInches(0.015625m);

    /// <summary>How far a fence may be off where a metric tape sets it: 0.5 mm.</summary>
    public static Length FenceErrorMetric { get; } = Length.FromMillimetres(0.5m);

    /// <summary>How much of its length a sheet's edge may lean: 2 mm/m (EN 622-1, from memory).</summary>
    public static decimal OutOfSquareShare => 0.002m;

    /// <summary>The lip of a frame's rabbet, the narrower of the usual ones: 1/4 in.</summary>
    public static Length FrameLip { get; } = Length.FromInches(0.25m);

    /// <summary>A thin kerf: 3/32 in.</summary>
    public static Length ThinKerf { get; } = Length.FromInches(0.09375m);

    /// <summary>A full kerf: 1/8 in.</summary>
    public static Length FullKerf { get; } = Length.FromInches(0.125m);

    /// <summary>A workpiece that measures this and <see cref="LargeLong"/> wants two people: 48 in.</summary>
    public static Length LargeShort { get; } = Length.FromInches(48);

    /// <summary>The longer side of such a workpiece: 96 in.</summary>
    public static Length LargeLong { get; } = Length.FromInches(96);
}
