using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Boards;

/// <summary>Boards of one sort from one source: what the engine knows as one stock.</summary>
/// <param name="Board">The board, as ordered.</param>
/// <param name="Source">Bought or on hand.</param>
/// <param name="EdgeTrim">Lost at each factory edge.</param>
internal sealed record BoardStock(BoardSupply Board, Source Source, Length EdgeTrim)
{
    /// <summary>Width without the trimmed edges; zero or less where nothing is left.</summary>
    public Length UsableWidth => Board.Width - (EdgeTrim * 2);

    /// <summary>Height without the trimmed edges.</summary>
    public Length UsableHeight => Board.Height - (EdgeTrim * 2);

    /// <summary>What one counts as.</summary>
    public Money Price => Source == Source.OnHand ? Board.Value : Board.Price;

    /// <summary>How many there are; null: any number.</summary>
    public int? Limit => Source == Source.OnHand ? Board.OnHand : Board.ForSale;

    /// <summary>As the engine takes it.</summary>
    public Stock ToStock() => new(UsableWidth.Steps, UsableHeight.Steps, Price.Minor, Limit);

    /// <summary>As the layout takes it.</summary>
    /// <param name="kerf">What one cut turns to dust.</param>
    public SheetFrame ToFrame(Length kerf) => new(Board.Width.Steps, Board.Height.Steps, EdgeTrim.Steps, kerf.Steps);

    /// <summary>Every source of board in an order: on hand before bought, none that is empty or all trim.</summary>
    public static ImmutableArray<BoardStock> AllOf(Order order) =>
    [
        .. order.Boards
            .SelectMany(board => new[] { Source.OnHand, Source.Bought }
                .Select(source => new BoardStock(board, source, board.EdgeTrim ?? order.Saw.EdgeTrim)))
            .Where(stock => stock.Limit is null or > 0)
            .Where(stock => stock.UsableWidth > Length.Zero && stock.UsableHeight > Length.Zero),
    ];
}
