using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Store.Plans;
using PanelService.Store.Stock;

namespace PanelService.Store.Cuts;

/// <summary>Works out from a plan what moves when it is cut. Pure: the database is asked nothing.</summary>
internal sealed class CutDrafter(FinishedPlan finished, Spoilage spoilage)
{
    private const string Boards = "boards";
    private const string Cloths = "cloths";
    private const string Adhesives = "adhesives";
    private const string Primers = "primers";
    private const string Strips = "strips";

    private readonly Plan _plan = finished.Plan;
    private readonly Order _order = finished.Plan.Order;
    private readonly ImmutableArray<Spoiling> _spoiled = spoilage.AllPanels(finished.Plan);
    private readonly ILookup<(string List, string Good, string? Remnant), string> _links =
        finished.Links.ToLookup(link => (link.List, link.Good, link.Remnant), link => link.Stock);

    internal CutDraft Draft() => new(
        [.. DeclaredBoards(), .. DeclaredRemnants(), .. DeclaredLiquids(), .. DeclaredStrips()],
        [.. TakenBoards(), .. TakenRemnants(), .. TakenLiquids(), .. TakenStrips()],
        [.. KeptBoards(), .. BeyondBoards(), .. KeptCloth(), .. BeyondCloth(), .. LeftLiquids(), .. KeptStrips(), .. BeyondStrips()],
        [.. FinishedPanels()]);

    private IEnumerable<Declaration> DeclaredBoards() =>
        from board in _order.Boards
        where board.OnHand > 0 && !_links.Contains((Boards, board.Id, null))
        select new Declaration(
            Heap(board.EdgeTrim == Length.Zero ? StockSort.Offcut : StockSort.Board, GoodOf(board), board.OnHand, board.Value),
            UsedOf(board));

    private IEnumerable<ImmutableArray<Taking>> TakenBoards() =>
        from board in _order.Boards
        let used = UsedOf(board)
        where used > 0
        from stock in _links[(Boards, board.Id, null)]
        select ImmutableArray.Create(new Taking(stock, used, board.Width, board.Height));

    private IEnumerable<Declaration> DeclaredRemnants() =>
        from cloth in _order.Cloths
        from remnant in cloth.Remnants
        where !_links.Contains((Cloths, cloth.Id, remnant.Id))
        select new Declaration(
            Heap(StockSort.Remnant, GoodOf(cloth, remnant.Width, remnant.Length), remnant.Quantity, remnant.Value),
            UsedOf(cloth, remnant));

    private IEnumerable<ImmutableArray<Taking>> TakenRemnants() =>
        from cloth in _order.Cloths
        from remnant in cloth.Remnants
        let used = UsedOf(cloth, remnant)
        where used > 0
        from stock in _links[(Cloths, cloth.Id, remnant.Id)]
        select ImmutableArray.Create(new Taking(stock, used, remnant.Width, remnant.Length));

    private IEnumerable<Declaration> DeclaredLiquids() =>
        from liquid in Liquids()
        where StockQuantity.Of(liquid.Supply.OnHand) > 0 && !_links.Contains((liquid.List, liquid.Supply.Id, null))
        select new Declaration(
            Heap(SortOf(liquid.List), GoodOf(liquid.Supply), StockQuantity.Of(liquid.Supply.OnHand), liquid.Supply.Value),
            UsedOf(liquid.List, liquid.Supply));

    private IEnumerable<ImmutableArray<Taking>> TakenLiquids() =>
        from liquid in Liquids()
        let used = UsedOf(liquid.List, liquid.Supply)
        where used > 0 && _links.Contains((liquid.List, liquid.Supply.Id, null))
        select _links[(liquid.List, liquid.Supply.Id, null)].Select(stock => new Taking(stock, used, null, null)).ToImmutableArray();

    private IEnumerable<Declaration> DeclaredStrips() =>
        from strip in _order.Strips
        where strip.OnHand > 0 && !_links.Contains((Strips, strip.Id, null))
        select new Declaration(Heap(StockSort.Strip, GoodOf(strip, strip.Length), strip.OnHand, strip.Value), UsedOf(strip));

    private IEnumerable<ImmutableArray<Taking>> TakenStrips() =>
        from strip in _order.Strips
        let used = UsedOf(strip)
        where used > 0
        from stock in _links[(Strips, strip.Id, null)]
        select ImmutableArray.Create(new Taking(stock, used, null, strip.Length));

    private IEnumerable<StockDraft> KeptStrips() =>
        from layout in _plan.Strips
        where layout.RestKept
        group layout.Copies by (layout.Strip.Id, Left: layout.Rest, Value: Rounded((decimal)layout.CostEach.Minor * layout.Rest.Steps / layout.Strip.Length.Steps)) into alike
        let strip = _order.Strips.First(strip => strip.Id == alike.Key.Id)
        select Heap(StockSort.Strip, GoodOf(strip, alike.Key.Left), alike.Sum(), alike.Key.Value);

    // Alike offcuts of one board make one heap; of a spoiled sheet none is kept. One that came from the supplier with a factory
    // edge is still to be trimmed.
    private IEnumerable<StockDraft> KeptBoards() =>
        from sheet in _plan.Sheets
        let good = sheet.Copies - spoilage.CopiesOf(sheet)
        where good > 0
        from offcut in sheet.Offcuts
        where offcut.Kept
        group good by (sheet.Board.Id, offcut.Width, offcut.Height, Trim: sheet.TrimOf(offcut), Value: Share(sheet.CostEach, offcut.Area, sheet.Area)) into alike
        let board = _order.Boards.First(board => board.Id == alike.Key.Id)
        select Heap(
            StockSort.Offcut,
            GoodOf(board) with { Width = alike.Key.Width, Height = alike.Key.Height, EdgeTrim = alike.Key.Trim },
            alike.Sum(),
            alike.Key.Value);

    // Bought beyond what is cut, because that was cheaper: whole goods, at what they cost.
    private IEnumerable<StockDraft> BeyondBoards() =>
        from surplus in _plan.Surplus
        where surplus.SaleUnit == SaleUnit.Sheet
        select Heap(StockSort.Board, GoodOf(_order.Boards.First(board => board.Id == surplus.Id)), surplus.Quantity, surplus.UnitPrice);

    private IEnumerable<StockDraft> BeyondCloth() =>
        from surplus in _plan.Surplus
        where surplus.SaleUnit is SaleUnit.Step or SaleUnit.Roll
        let cloth = _order.Cloths.First(cloth => cloth.Id == surplus.Id)
        let usable = cloth.Width - (cloth.Selvedge * 2)
        select cloth.Sale is SaleByLength length
            ? Heap(StockSort.Remnant, GoodOf(cloth, usable, length.Step * surplus.Quantity), 1, surplus.Cost)
            : Heap(StockSort.Remnant, GoodOf(cloth, usable, ((SaleByRoll)cloth.Sale!).Length), surplus.Quantity, surplus.UnitPrice);

    private IEnumerable<StockDraft> BeyondStrips() =>
        from surplus in _plan.Surplus
        where surplus.SaleUnit == SaleUnit.Strip
        let strip = _order.Strips.First(strip => strip.Id == surplus.Id)
        select Heap(StockSort.Strip, GoodOf(strip, strip.Length), surplus.Quantity, surplus.UnitPrice);

    private IEnumerable<StockDraft> KeptCloth() =>
        from layout in _plan.Cloth
        from offcut in layout.Offcuts
        where offcut.Kept
        group layout.Copies by (layout.Cloth.Id, Width: layout.UsableOf(offcut), offcut.Height, Value: Share(layout.CostEach, offcut.Area, layout.Area)) into alike
        where alike.Key.Width > Length.Zero
        let cloth = _order.Cloths.First(cloth => cloth.Id == alike.Key.Id)
        select Heap(StockSort.Remnant, GoodOf(cloth, alike.Key.Width, alike.Key.Height), alike.Sum(), alike.Key.Value);

    // What was on hand goes first, so what is left of a liquid that had to be bought is all from the containers.
    private IEnumerable<StockDraft> LeftLiquids() =>
        from use in _plan.Liquids
        let left = use.BoughtVolume - Volume.Min(use.Needed - use.FromHand, use.BoughtVolume)
        where StockQuantity.Of(left) > 0
        select Heap(
            use.IsAdhesive ? StockSort.Adhesive : StockSort.Primer,
            GoodOf(use.Liquid),
            StockQuantity.Of(left),
            Rounded(use.BoughtCost.Minor * (left.Millilitres / use.BoughtVolume.Millilitres)));

    // What the spoiled ones cost is borne by the good ones.
    private IEnumerable<StockDraft> FinishedPanels() =>
        from panel in _plan.Panels
        let good = panel.Made + panel.Bought - SpoiledOf(panel.Line.Mark)
        where good > 0
        let cost = _plan.Cost.Lines.FirstOrDefault(line => line.Mark == panel.Line.Mark)?.Total ?? Money.Zero
        select Heap(
            StockSort.Panel,
            new StockGood { Mark = panel.Line.Mark, Width = panel.Line.Width, Height = panel.Line.Height, Surface = panel.Line.Surface, Name = NullIfEmpty(_order.Title) },
            good,
            Rounded((decimal)cost.Minor / good));

    private int UsedOf(BoardSupply board) =>
        _plan.Sheets.Where(sheet => sheet.Source == Source.OnHand && sheet.Board.Id == board.Id).Sum(sheet => sheet.Copies);

    private int UsedOf(ClothSupply cloth, Remnant remnant) =>
        _plan.Cloth.Where(layout => layout.Cloth.Id == cloth.Id && layout.Remnant?.Id == remnant.Id).Sum(layout => layout.Copies);

    private int UsedOf(StripSupply strip) =>
        _plan.Strips.Where(layout => layout.Source == Source.OnHand && layout.Strip.Id == strip.Id).Sum(layout => layout.Copies);

    private long UsedOf(string list, LiquidSupply liquid) => _plan.Liquids
        .Where(use => use.IsAdhesive == (list == Adhesives) && use.Liquid.Id == liquid.Id)
        .Sum(use => StockQuantity.Of(use.FromHand));

    private int SpoiledOf(string mark) => _spoiled.Where(one => one.Mark == mark).Sum(one => one.Count);

    private IEnumerable<(string List, LiquidSupply Supply)> Liquids() =>
        _order.Adhesives.Select(liquid => (Adhesives, liquid)).Concat(_order.Primers.Select(liquid => (Primers, liquid)));

    private StockDraft Heap(StockSort sort, StockGood good, long quantity, Money value) =>
        new(sort, good, quantity, value, _order.Units, _order.Currency.Code);

    private static StockSort SortOf(string list) => list == Adhesives ? StockSort.Adhesive : StockSort.Primer;

    private static StockGood GoodOf(BoardSupply board) => new()
    {
        Name = board.Name,
        Kind = board.Kind,
        Supply = board.Id,
        Thickness = board.Thickness,
        Width = board.Width,
        Height = board.Height,
        EdgeTrim = board.EdgeTrim,
        Grain = board.Grain,
    };

    private static StockGood GoodOf(ClothSupply cloth, Length width, Length length) =>
        new() { Name = cloth.Name, Kind = cloth.Kind, Supply = cloth.Id, Width = width, Length = length, Grain = cloth.Warp };

    private static StockGood GoodOf(StripSupply strip, Length length) => new() { Name = strip.Name, Supply = strip.Id, Length = length };

    private static StockGood GoodOf(LiquidSupply liquid) => new()
    {
        Name = liquid.Name,
        Supply = liquid.Id,
        CoverageArea = liquid.CoverageArea,
        CoverageVolume = liquid.CoverageVolume,
        Coats = liquid.Coats,
    };

    // Across the whole width an offcut still has its selvedges; of a remnant all is usable.
    private static Money Share(Money cost, Area part, Area whole) => Rounded(cost.Minor * (part.SquareMetres / whole.SquareMetres));

    private static Money Rounded(decimal minor) => new((long)Math.Round(minor, MidpointRounding.AwayFromZero));

    private static string? NullIfEmpty(string text) => text.Length == 0 ? null : text;
}
