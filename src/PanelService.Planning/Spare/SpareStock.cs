using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Boards;
using PanelService.Planning.Cloth;
using PanelService.Planning.Costing;
using PanelService.Planning.Liquids;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Spare;

/// <summary>What is left when the batch is made: kept leftovers, what was on hand and not used, what was bought beyond need.</summary>
internal sealed class SpareStock
{
    // The largest ones: the others are small, and a large batch has a great many of them.
    private const int MostSizes = 16;

    private readonly Goods _goods;
    private readonly ImmutableArray<(BoardSupply Board, Length Width, Length Height, int Count)> _boards;
    private readonly ImmutableArray<(ClothSupply Cloth, Length Width, Length Height, int Count)> _cloth;

    /// <summary>Looks at what is left.</summary>
    /// <param name="goods">What the batch uses.</param>
    public SpareStock(Goods goods)
    {
        _goods = goods;
        _boards = [.. KeptBoards().Concat(WholeBoards()).GroupBy(one => (one.Board, one.Width, one.Height))
            .Select(group => (group.Key.Board, group.Key.Width, group.Key.Height, Count: group.Sum(one => one.Count)))
            .OrderByDescending(one => (one.Width * one.Height).SquareSteps).Take(MostSizes)];
        _cloth = [.. KeptCloth().Concat(Remnants()).GroupBy(one => (one.Cloth, one.Width, one.Height))
            .Select(group => (group.Key.Cloth, group.Key.Width, group.Key.Height, Count: group.Sum(one => one.Count)))
            .OrderByDescending(one => (one.Width * one.Height).SquareSteps).Take(MostSizes)];
    }

    /// <summary>How many panels of a line's format and finish it is enough for.</summary>
    /// <param name="line">The line.</param>
    public int CountOf(PanelLine line) => new[]
    {
        line.NeedsBoard ? OnBoards(line) : int.MaxValue,
        line.NeedsCloth ? OnCloth(line) : int.MaxValue,
        line.Surface == Surface.Cloth ? Covered(line, _goods.Order.Adhesives, isAdhesive: true) : int.MaxValue,
        line.Surface == Surface.Primed ? Covered(line, _goods.Order.Primers, isAdhesive: false) : int.MaxValue,
    }.Min();

    private int OnBoards(PanelLine line)
    {
        long kerf = _goods.Order.Saw.Kerf.Steps;
        return AtMostInt(_boards.Sum(one => (long)one.Count * Packed(
            (one.Width.Steps + kerf, one.Height.Steps + kerf),
            (line.Width.Steps + kerf, line.Height.Steps + kerf),
            BoardFit.TurningOn(line, one.Board))));
    }

    private int OnCloth(PanelLine line)
    {
        var piece = ClothFit.WithMargins(new CutSize(line.Width, line.Height), _goods.Order.Bench);
        return AtMostInt(_cloth.Sum(one => (long)one.Count * Packed(
            (one.Width.Steps, one.Height.Steps), (piece.Width.Steps, piece.Height.Steps), ClothFit.TurningOn(line, one.Cloth))));
    }

    private static int AtMostInt(long count) => (int)Math.Min(int.MaxValue, count);

    // Where the order has no such liquid at all, lines are made without one.
    private int Covered(PanelLine line, ImmutableArray<LiquidSupply> supplies, bool isAdhesive) => supplies.IsEmpty
        ? int.MaxValue
        : supplies.Max(supply =>
        {
            var left = _goods.Liquids.FirstOrDefault(use => use.IsAdhesive == isAdhesive && use.Liquid.Id == supply.Id)?.Left ?? supply.OnHand;
            return (int)Math.Min(int.MaxValue, Math.Floor(left.Millilitres / LiquidDemand.VolumeFor(line.Area, supply).Millilitres));
        });

    private static int Packed((long Width, long Height) room, (long Width, long Height) piece, Turning turning)
    {
        (long Width, long Height)[] ways =
        [
            .. turning.HasFlag(Turning.Upright) ? [piece] : Array.Empty<(long, long)>(),
            .. turning.HasFlag(Turning.Turned) && piece.Width != piece.Height ? [(piece.Height, piece.Width)] : Array.Empty<(long, long)>(),
        ];
        return ways.Any(way => way.Width <= room.Width && way.Height <= room.Height) ? OneSizePacking.Count(room, ways) : 0;
    }

    private IEnumerable<(BoardSupply Board, Length Width, Length Height, int Count)> KeptBoards() =>
        from sheet in _goods.Sheets
        from offcut in sheet.Offcuts
        where offcut.Kept
        let trim = sheet.TrimOf(offcut) * 2
        select (sheet.Board, offcut.Width - trim, offcut.Height - trim, sheet.Copies);

    private IEnumerable<(BoardSupply Board, Length Width, Length Height, int Count)> WholeBoards() =>
        from board in _goods.Order.Boards
        let used = _goods.Sheets.Where(sheet => sheet.Source == Source.OnHand && sheet.Board.Id == board.Id).Sum(sheet => sheet.Copies)
        let beyond = _goods.Surplus.Where(one => one.SaleUnit == SaleUnit.Sheet && one.Id == board.Id).Sum(one => one.Quantity)
        let trim = (board.EdgeTrim ?? _goods.Order.Saw.EdgeTrim) * 2
        where board.OnHand - used + beyond > 0
        select (board, board.Width - trim, board.Height - trim, board.OnHand - used + beyond);

    // A leftover across the whole width still has its selvedges.
    private IEnumerable<(ClothSupply Cloth, Length Width, Length Height, int Count)> KeptCloth() =>
        from layout in _goods.Cloth
        from offcut in layout.Offcuts
        where offcut.Kept
        select (layout.Cloth, offcut.Width == layout.Width ? offcut.Width - (layout.Selvedge * 2) : offcut.Width, offcut.Height, layout.Copies);

    private IEnumerable<(ClothSupply Cloth, Length Width, Length Height, int Count)> Remnants() =>
        from cloth in _goods.Order.Cloths
        from remnant in cloth.Remnants
        let used = _goods.Cloth.Where(layout => layout.Cloth.Id == cloth.Id && layout.Remnant?.Id == remnant.Id).Sum(layout => layout.Copies)
        where remnant.Quantity > used
        select (cloth, remnant.Width, remnant.Length, remnant.Quantity - used);
}
