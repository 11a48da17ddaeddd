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

    /// <summary>The cuts made at the supplier's; null: it comes to the saw whole.</summary>
    public FirstCuts? First { get; init; }

    /// <summary>What the saw's fence can hold; null: nothing is said of it.</summary>
    public FenceSides? Fence { get; init; }

    /// <summary>What a leftover must hold, either way round, to be kept.</summary>
    public (Length Width, Length Height) SmallestKept { get; init; }

    /// <summary>Whether there is anything that may keep a pattern from being cut.</summary>
    public bool IsLimited => First is not null || Fence is not null;

    /// <summary>Whether a piece is small enough to leave the supplier's; it may lie turned.</summary>
    /// <param name="width">Its width as cut.</param>
    /// <param name="height">Its height as cut.</param>
    public bool LetsOut(Length width, Length height) => First?.Parts.Holds(width.Steps, height.Steps, SheetEdges.None) != false;

    /// <summary>As the engine takes it.</summary>
    public Stock ToStock() => new(UsableWidth.Steps, UsableHeight.Steps, Price.Minor, Limit);

    /// <summary>As the layout takes it.</summary>
    /// <param name="kerf">What one cut turns to dust.</param>
    public SheetFrame ToFrame(Length kerf) => new(Board.Width.Steps, Board.Height.Steps, EdgeTrim.Steps, kerf.Steps)
    {
        First = First,
        Fence = Fence,
        SmallestKept = (SmallestKept.Width.Steps, SmallestKept.Height.Steps),
    };

    /// <summary>
    /// Every source of board in an order: on hand before bought, none that is empty, all trim, or in the studio though
    /// nobody can handle it.
    /// </summary>
    public static ImmutableArray<BoardStock> AllOf(Order order) =>
    [
        .. order.Boards
            .SelectMany(board => new[] { Source.OnHand, Source.Bought }.Select(source => Of(order.Saw, board, source)))
            .Where(stock => stock.Limit is null or > 0)
            .Where(stock => stock.UsableWidth > Length.Zero && stock.UsableHeight > Length.Zero)
            .Where(stock => stock.Source == Source.Bought || stock.First is null),
    ];

    /// <summary>Boards of one sort from one source, with what the order says of handling them.</summary>
    /// <param name="saw">The saw.</param>
    /// <param name="board">The board.</param>
    /// <param name="source">Where from. What is on hand and has <see cref="First"/> cannot be handled at all.</param>
    public static BoardStock Of(SawSettings saw, BoardSupply board, Source source)
    {
        var trim = board.EdgeTrim ?? saw.EdgeTrim;
        var parts = HandlingLimits.Parts(saw, board, source, trim);
        return new BoardStock(board, source, trim)
        {
            First = parts.Holds(board.Width.Steps, board.Height.Steps, SheetEdges.All) ? null : new FirstCuts(parts, saw.SupplierKerf.Steps),
            Fence = HandlingLimits.Fence(saw),
            SmallestKept = (saw.SmallestKeptWidth, saw.SmallestKeptHeight),
        };
    }
}
