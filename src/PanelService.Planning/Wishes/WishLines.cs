using PanelService.Planning.Orders;

namespace PanelService.Planning.Wishes;

/// <summary>A wish seen as a line.</summary>
internal static class WishLines
{
    /// <summary>The line a wish would be, with a quantity.</summary>
    public static PanelLine AsLine(this Wish wish, int quantity) => new()
    {
        Mark = wish.Mark,
        Width = wish.Width,
        Height = wish.Height,
        Quantity = quantity,
        Surface = wish.Surface,
        Board = wish.Board,
        Thickness = wish.Thickness,
        MayTurn = wish.MayTurn,
    };
}
