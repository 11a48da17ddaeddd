using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Practice;

namespace PanelService.Planning.Strength;

/// <summary>
/// Figures of the usual boards. A kind that is not known counts as hardboard: of those here it is the densest, and of
/// the thin ones the most often used; the plan names the figures' source, and an order may give its own.
/// </summary>
public static class BoardMaterials
{
    /// <summary>A tested 3.2 mm board.</summary>
    public static BoardMaterial Hardboard { get; } = new(
        1000, 4500, 0.3m, 0.16m, SourceMark.Published, "AS/NZS 1859 board data: a tested 3.2 mm hardboard; Poisson's ratio from memory");

    /// <summary>Medium-density fibreboard over 6 to 9 mm; the density of thin sheet.</summary>
    public static BoardMaterial Mdf { get; } = new(
        870, 2700, 0.3m, 0.33m, SourceMark.Published, "EN 622-5 (modulus), ANSI A208.2 (expansion at most), makers' data for thin sheet (density 860 to 880); Poisson's ratio from memory");

    /// <summary>Birch plywood; bent across its weaker direction.</summary>
    public static BoardMaterial Plywood { get; } = new(
        660, 5000, 0.3m, 0.1m, SourceMark.FromMemory, "a birch plywood maker's handbook (density of nominal 4 mm); modulus of the weaker direction, expansion and Poisson's ratio from memory");

    /// <summary>The table, by kind.</summary>
    public static ImmutableArray<(string Kind, BoardMaterial Material, Length BraceFrom)> All { get; } =
    [
        ("hardboard", Hardboard, Length.FromInches(12)),
        ("mdf", Mdf, Length.FromInches(18)),
        ("plywood", Plywood, Length.FromInches(20)),
    ];

    /// <summary>A board's figures: its own, else its kind's.</summary>
    /// <param name="board">The board.</param>
    public static BoardMaterial Of(BoardSupply board)
    {
        ArgumentNullException.ThrowIfNull(board);
        return board.Material ?? Row(board.Kind).Material;
    }

    /// <summary>From which long side on a kind is braced (common practice; sources disagree).</summary>
    /// <param name="kind">The kind; null: not said.</param>
    public static Length BraceFrom(string? kind) => Row(kind).BraceFrom;

    private static (string Kind, BoardMaterial Material, Length BraceFrom) Row(string? kind) =>
        All.FirstOrDefault(row => kind?.Contains(row.Kind, StringComparison.OrdinalIgnoreCase) == true, All[0]);
}
