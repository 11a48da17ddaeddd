using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Practice;

namespace PanelService.Planning.Boards;

/// <summary>Which board may serve which line, and how the panel may lie on it.</summary>
internal static class BoardFit
{
    /// <summary>How a line's panels may lie on a board; none where kind or thickness do not serve.</summary>
    public static Turning TurningOn(PanelLine line, BoardSupply board)
    {
        if (!IsOfKind(line, board) || !IsThickEnough(line, board))
        {
            return Turning.None;
        }

        return board.Grain == Grain.Height || !line.MayTurn ? Turning.Upright : Turning.Either;
    }

    /// <summary>Whether a line's kind is met; a board without kind serves only lines that ask for none.</summary>
    public static bool IsOfKind(PanelLine line, BoardSupply board) => KindMatch.Serves(line.Board, board.Kind);

    /// <summary>Whether a line's thickness is met: the one asked for, or at least what the rule asks.</summary>
    public static bool IsThickEnough(PanelLine line, BoardSupply board) => line.Thickness is { } asked
        ? ThicknessRule.CountsAs(board.Thickness, asked)
        : ThicknessRule.IsAtLeast(board.Thickness, ThicknessRule.LeastFor(line.Width, line.Height));

    /// <summary>Whether a panel of this size fits a usable size in one of the ways it may lie.</summary>
    public static bool Fits(Turning turning, (Length Width, Length Height) panel, (Length Width, Length Height) usable) =>
        (turning.HasFlag(Turning.Upright) && panel.Width <= usable.Width && panel.Height <= usable.Height)
        || (turning.HasFlag(Turning.Turned) && panel.Height <= usable.Width && panel.Width <= usable.Height);
}
