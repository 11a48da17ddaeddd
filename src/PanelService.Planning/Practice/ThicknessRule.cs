using PanelService.Planning.Measures;

namespace PanelService.Planning.Practice;

/// <summary>
/// The rule of thumb for hardboard (common practice): 1/8 in does for a panel that fits inside 16 × 20 in and is
/// smaller than it, 3/16 in from 16 × 20 in up. A board within 0.5 mm of a nominal thickness counts as that.
/// </summary>
public static class ThicknessRule
{
    /// <summary>1/8 in.</summary>
    public static Length Thin { get; } = Length.FromInches(0.125m);

    /// <summary>3/16 in.</summary>
    public static Length Thick { get; } = Length.FromInches(0.1875m);

    /// <summary>How far a board may measure off a nominal thickness and still count as that, both ends included: 0.5 mm.</summary>
    public static Length Tolerance { get; } = Length.FromMillimetres(0.5m);

    private static readonly Length _shortSide = Length.FromInches(16);
    private static readonly Length _longSide = Length.FromInches(20);

    /// <summary>The least nominal thickness for a panel, either way round.</summary>
    /// <param name="width">Nominal width.</param>
    /// <param name="height">Nominal height.</param>
    public static Length LeastFor(Length width, Length height) => IsSmall(width, height) ? Thin : Thick;

    /// <summary>Whether a board counts as a nominal thickness.</summary>
    /// <param name="board">The board's thickness.</param>
    /// <param name="nominal">The thickness asked for.</param>
    public static bool CountsAs(Length board, Length nominal) =>
        board <= nominal + Tolerance && board >= nominal - Tolerance;

    /// <summary>Whether a board counts as a nominal thickness or is thicker.</summary>
    /// <param name="board">The board's thickness.</param>
    /// <param name="nominal">The least thickness wanted.</param>
    public static bool IsAtLeast(Length board, Length nominal) => board >= nominal - Tolerance;

    private static bool IsSmall(Length width, Length height)
    {
        var shorter = Length.Min(width, height);
        var longer = Length.Max(width, height);
        return shorter <= _shortSide && longer <= _longSide && (shorter < _shortSide || longer < _longSide);
    }
}
