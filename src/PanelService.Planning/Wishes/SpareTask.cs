using System.Collections.Immutable;
using PanelService.Cutting;

namespace PanelService.Planning.Wishes;

/// <summary>What spare material is filled with.</summary>
/// <typeparam name="T">What the material is cut from.</typeparam>
/// <param name="Sizes">Per wish: width and height as cut, in steps.</param>
/// <param name="Worths">Per wish: what one is worth, in minor units.</param>
/// <param name="FirstNumber">The number of the first wish among the pieces: how many lines there are.</param>
/// <param name="Kerf">What one cut takes, in steps.</param>
/// <param name="TurningOn">How a wish may lie on a stock.</param>
internal sealed record SpareTask<T>(
    ImmutableArray<(long Width, long Height)> Sizes,
    ImmutableArray<long> Worths,
    int FirstNumber,
    long Kerf,
    Func<int, T, Turning> TurningOn)
{
    /// <summary>What the saw's fence can hold; null: every cut can be made.</summary>
    public FenceSides? Fence { get; init; }

    /// <summary>What a leftover must hold, either way round, to be kept; nothing: every one is.</summary>
    public (long Width, long Height) SmallestKept { get; init; }
}
