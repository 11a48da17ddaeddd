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

    /// <summary>Birch plywood of five plies, nominal 6.5 mm; it bends less along its face grain than across.</summary>
    public static BoardMaterial Plywood { get; } = Birch(plies: 5, density: 670, along: 12_700, across: 4_750);

    /// <summary>Of three plies, nominal 4 mm: two of them run one way.</summary>
    public static BoardMaterial ThinPlywood { get; } = Birch(plies: 3, density: 660, along: 16_500, across: 1_030);

    /// <summary>Of seven plies and more, nominal 9 mm and up.</summary>
    public static BoardMaterial ThickPlywood { get; } = Birch(plies: 7, density: 680, along: 11_400, across: 6_100);

    // Half way between the nominal thicknesses 4, 6.5 and 9 mm.
    private static readonly Length _threePlies = Length.FromMillimetres(5.25m);
    private static readonly Length _fivePlies = Length.FromMillimetres(7.75m);

    /// <summary>The table, by kind.</summary>
    public static ImmutableArray<(string Kind, BoardMaterial Material, Length BraceFrom)> All { get; } =
    [
        ("hardboard", Hardboard, Length.FromInches(12)),
        ("mdf", Mdf, Length.FromInches(18)),
        ("plywood", Plywood, Length.FromInches(20)),
    ];

    /// <summary>A board's figures: its own, else its kind's; plywood has as many plies as its thickness mostly has.</summary>
    /// <param name="board">The board.</param>
    public static BoardMaterial Of(BoardSupply board)
    {
        ArgumentNullException.ThrowIfNull(board);
        var material = board.Material ?? Row(board.Kind).Material;
        return !ReferenceEquals(material, Plywood) ? material
            : board.Thickness < _threePlies ? ThinPlywood
            : board.Thickness < _fivePlies ? Plywood : ThickPlywood;
    }

    /// <summary>From which long side on a kind is braced (common practice; sources disagree).</summary>
    /// <param name="kind">The kind; null: not said.</param>
    public static Length BraceFrom(string? kind) => Row(kind).BraceFrom;

    private static BoardMaterial Birch(int plies, decimal density, decimal along, decimal across) => new(
        density, along, 0.1m, 0.1m, SourceMark.FromMemory, $"birch plywood of {plies} plies: density of nominal 4 and 6.5 mm from a maker's handbook; both moduli from memory, within an eighth along and about a quarter across of what equal plies of yellow birch give (USDA Wood Handbook, FPL-GTR-190, table 5-3a); shear modulus, expansion and Poisson's ratio from memory")
    {
        ElasticityAcross = across,
        Shear = 620,
    };

    private static (string Kind, BoardMaterial Material, Length BraceFrom) Row(string? kind) =>
        All.FirstOrDefault(row => kind?.Contains(row.Kind, StringComparison.OrdinalIgnoreCase) == true, All[0]);
}
