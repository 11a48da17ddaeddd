namespace PanelService.Cutting.Tests;

/// <summary>Orders of panels from boards of two thicknesses and three sizes; from 20 in on only the thick ones serve.</summary>
internal static class FiveBoards
{
    private static readonly (int Width, int Height, int Price, bool Thick)[] Boards =
    [
        (24, 48, 610, false), (48, 48, 1120, false), (48, 96, 2050, false), (24, 48, 940, true), (48, 96, 3180, true),
    ];

    /// <summary>An order.</summary>
    /// <param name="formats">Sizes in inches, the longer side last, and how many are wanted.</param>
    public static CuttingProblem Order(params (int Width, int Height, int Demand)[] formats) => new(
        [.. Boards.Select(board => new Stock(8 * board.Width, 8 * board.Height, board.Price, null))],
        [.. formats.Select(format => new Piece(
            8 * format.Width,
            8 * format.Height,
            format.Demand,
            [.. Boards.Select(board => board.Thick || format.Height < 20 ? Turning.Either : Turning.None)]))],
        Kerf: 1);
}
