using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Practice;

/// <summary>How heavy board is, by its kind. Where a source gives a range, the heavier end: it is lifted.</summary>
public static class BoardDensity
{
    private const decimal GramsPerKilogram = 1000;

    /// <summary>Hardboard, and what is not known: 1000 kg/m³ (AS/NZS 1859 board data for a tested 3.2 mm board).</summary>
    public static decimal Hardboard => 1000;

    /// <summary>Thin MDF: 880 kg/m³ (860 to 880, manufacturers' data).</summary>
    public static decimal Mdf => 880;

    /// <summary>Birch plywood: 670 kg/m³ (660 at 4 mm, 670 at 6.5 mm, a manufacturer's handbook).</summary>
    public static decimal Plywood => 670;

    /// <summary>Kilograms in a cubic metre of a board.</summary>
    /// <param name="kind">The board's kind; null: unknown.</param>
    public static decimal Of(string? kind) =>
        Has(kind, "mdf") ? Mdf : Has(kind, "plywood") ? Plywood : Hardboard;

    /// <summary>What a part of a board weighs, in grams.</summary>
    /// <param name="board">The board.</param>
    /// <param name="area">The part's area.</param>
    public static decimal Grams(BoardSupply board, Area area)
    {
        ArgumentNullException.ThrowIfNull(board);
        return area.SquareMetres * GramsPerSquareMetre(board);
    }

    /// <summary>What a square metre of a board weighs, in grams.</summary>
    /// <param name="board">The board.</param>
    public static decimal GramsPerSquareMetre(BoardSupply board)
    {
        ArgumentNullException.ThrowIfNull(board);
        return board.Thickness.Millimetres / 1000 * Of(board.Kind) * GramsPerKilogram;
    }

    private static bool Has(string? kind, string word) => kind?.Contains(word, StringComparison.OrdinalIgnoreCase) == true;
}
