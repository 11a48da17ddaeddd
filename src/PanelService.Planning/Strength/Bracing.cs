// Problem: "brace what needs it": which lines get a cradle that no line asks for?
// Idea:    decided before any board is planned, as a cradle's own design is: a line is braced where its panels could sag
//          too much on the weakest board that may serve it, under the heaviest cloth, adhesive and ground they may carry.
//          So no panel of whatever plan sags too much, and the batch's proof holds over all plans with these cradles.
// Cost:    one plate for each line and board; nothing where the order does not ask.
// Not:     a choice between strips and a thicker board, which StiffeningMaker weighs for orders that do not ask. A line
//          that might lie on a thin board is braced even where the plan then takes a thick one: who minds names a thickness.
using PanelService.Planning.Boards;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Strength;

/// <summary>Gives cradles to the lines that need one, where the order asks for that.</summary>
internal static class Bracing
{
    /// <summary>The order with the cradles it asks for in general put to its lines.</summary>
    /// <param name="order">The order.</param>
    public static Order Of(Order order) => order.Strength.Brace
        ? order with { Panels = [.. order.Panels.Select(line => line.MayBrace && Needs(order, line) ? line with { Cradle = true } : line)] }
        : order;

    // Too small for a cradle, or a board that nothing is said of: then nothing is put to it.
    private static bool Needs(Order order, PanelLine line) => line.NeedsBoard
        && order.Boards.Where(board => MayServe(line, board)).DistinctBy(LoadedPlate.FactsOf).Any(board => Sags(order, line, board))
        && CradleDesign.Of(order, line) is not null;

    private static bool MayServe(PanelLine line, BoardSupply board) =>
        (board.OnHand > 0 || board.ForSale != 0) && BoardFit.IsOfKind(line, board) && BoardFit.IsThickEnough(line, board);

    private static bool Sags(Order order, PanelLine line, BoardSupply board)
    {
        var plate = LoadedPlate.Of((Metres(line.Width), Metres(line.Height)), board, Coverings.MostOn(order, line), order.Strength);
        return plate.SagUnderHand(Metres(board.Thickness)) > plate.Short / (double)order.Strength.Limit;
    }

    private static double Metres(Length length) => (double)length.Millimetres / 1000;
}
