using PanelService.Drawing;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Yields;
using PanelService.Validation;
using PanelService.Wire.Orders;
using PanelService.Wire.Plans;

namespace PanelService.Wire.Yields;

/// <summary>Questions and answers about yields, from and to the wire.</summary>
internal static class YieldTranslation
{
    private const string Mark = "A";
    private const int Decimals = 6;

    // A board whose thickness nobody says is drawn as the thinnest there is by the rule of thumb.
    private static readonly Length UsualThickness = Planning.Practice.ThicknessRule.Thin;

    internal static YieldQuestion Read(YieldRequest request, OrderMeasures measures) => new()
    {
        Units = measures.Units,
        Panel = new PanelLine
        {
            Mark = Mark,
            Width = request.Panel!.Width!.Value,
            Height = request.Panel.Height!.Value,
            Quantity = 1,
            Board = request.Panel.Board,
            Thickness = request.Panel.Thickness,
            MayTurn = request.Panel.MayTurn ?? true,
        },
        Boards = new GoodsTranslation(measures).Boards(Named(request)),
        Saw = SettingsTranslation.Saw(request.Saw),
    };

    internal static YieldResponse Write(Yield yield)
    {
        Order order = yield.Drawn.Order;
        var numbers = new WireNumbers(order);
        return new(
            order.Units,
            numbers.Of(order.Panels[0].Width),
            numbers.Of(order.Panels[0].Height),
            yield.Boards.Sum(b => b.FromHand),
            yield.Boards.Any(b => b.FromAll is null) ? null : yield.Boards.Sum(b => b.FromAll),
            [.. yield.Boards.Select(b => Board(b, yield, numbers))]);
    }

    private static BoardYieldResponse Board(BoardYield board, Yield yield, WireNumbers numbers) => new(
        board.Board.Id,
        board.Count,
        Math.Round(board.ByArea, Decimals),
        numbers.Of(board.CutWidth),
        numbers.Of(board.CutHeight),
        board.FromHand,
        board.FromAll,
        board.Sheet is null ? null : new LayoutTranslation(yield.Drawn, DrawingLinks.None).Sheet(board.Sheet) with { Svg = YieldDrawing.Render(yield, board) });

    private static BoardRequest[] Named(YieldRequest request)
    {
        BoardRequest[] boards = [.. request.Board is null ? (request.Boards ?? []).OfType<BoardRequest>() : [request.Board]];
        string[] ids = Marks.GiveOutNumbered([.. boards.Select(b => b.Id)], "board");
        return [.. boards.Select((board, index) => board with
        {
            Id = ids[index],
            Thickness = board.Thickness ?? request.Panel!.Thickness ?? UsualThickness,
        })];
    }
}
