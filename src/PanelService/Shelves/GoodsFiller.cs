using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;
using PanelService.Store.Plans;
using PanelService.Store.Shelves;
using PanelService.Store.Stock;
using PanelService.Store.Supplies;
using PanelService.Validation;
using PanelService.Wire.Orders;
using PanelService.Wire.Reading;

namespace PanelService.Shelves;

/// <summary>Boards, cloths, adhesives and primers that an order leaves out: saved supplies to buy, and heaps in stock on hand.</summary>
internal sealed class GoodsFiller
{
    private readonly Shelf _shelf;
    private readonly OrderMeasures _measures;
    private readonly Faults _faults;
    private readonly HeapReader _heaps;
    private readonly ImmutableArray<StockLink>.Builder _links = ImmutableArray.CreateBuilder<StockLink>();
    private readonly ImmutableArray<Warning>.Builder _remarks = ImmutableArray.CreateBuilder<Warning>();

    internal GoodsFiller(Shelf shelf, OrderMeasures measures, Faults faults)
    {
        _shelf = shelf;
        _measures = measures;
        _faults = faults;
        _heaps = new HeapReader(measures);
    }

    internal Filled<OrderRequest> Fill(OrderRequest order)
    {
        OrderRequest filled = order with
        {
            Boards = order.Boards ?? Boards(GoodsNeeded.Boards(order)),
            Cloths = order.Cloths ?? Cloths(GoodsNeeded.Cloths(order)),
            Adhesives = order.Adhesives ?? Liquids(SupplySort.Adhesives, StockSort.Adhesive, "adhesives"),
            Strips = order.Strips ?? Strips(),
            Primers = order.Primers ?? Liquids(SupplySort.Primers, StockSort.Primer, "primers"),
        };
        LinkNamed(order.Boards);
        LinkNamed(order.Cloths);
        LinkNamed(order.Strips);
        LinkNamed(order.Adhesives, StockSort.Adhesive, "adhesives");
        LinkNamed(order.Primers, StockSort.Primer, "primers");
        return new Filled<OrderRequest>(filled, _links.ToImmutable(), _remarks.ToImmutable());
    }

    private List<BoardRequest?>? Boards(bool needed)
    {
        List<BoardRequest?> bought = [.. Supplies(SupplySort.Boards, SupplyReader.Board)];
        StockItem[] heaps = [.. Heaps(StockSort.Board, StockSort.Offcut).OrderByDescending(heap => (heap.Good.Width!.Value * heap.Good.Height!.Value).SquareMetres)];
        List<BoardRequest?> all = [.. bought, .. Room(heaps, bought.Count, WireLimits.Goods).Select(heap => Linked("boards", heap, _heaps.Board(heap)))];
        return all.Count > 0 ? all : None<BoardRequest>("boards", needed, SupplySort.Boards, StockSort.Board, StockSort.Offcut);
    }

    private List<ClothRequest?>? Cloths(bool needed)
    {
        List<ClothRequest?> all = [.. Supplies(SupplySort.Cloths, SupplyReader.Cloth)];
        foreach (StockItem heap in Room([.. Heaps(StockSort.Cloth, StockSort.Remnant)], all.Count, WireLimits.Goods))
        {
            int of = all.FindIndex(cloth => cloth!.Id == heap.Good.Supply);
            string cloth = of >= 0 ? all[of]!.Id! : heap.Id;
            RemnantRequest remnant = _heaps.Remnant(heap);
            if (of >= 0)
            {
                all[of] = all[of]! with { Remnants = [.. all[of]!.Remnants ?? [], remnant] };
            }
            else
            {
                all.Add(HeapReader.Cloth(heap, remnant));
            }

            _links.Add(new StockLink("cloths", cloth, heap.Id, heap.Id));
        }

        return all.Count > 0 ? all : None<ClothRequest>("cloths", needed, SupplySort.Cloths, StockSort.Cloth, StockSort.Remnant);
    }

    private List<LiquidRequest?>? Liquids(SupplySort supplies, StockSort stock, string list)
    {
        List<LiquidRequest?> all = [.. Supplies(supplies, supply => SupplyReader.Liquid(supply, _measures.Units))];
        foreach (StockItem heap in Room([.. Heaps(stock)], all.Count, WireLimits.Liquids))
        {
            int of = all.FindIndex(liquid => liquid!.Id == heap.Good.Supply);
            if (of >= 0)
            {
                all[of] = all[of]! with
                {
                    OnHand = (all[of]!.OnHand ?? 0) + _heaps.VolumeOf(heap),
                    Value = (all[of]!.Value ?? 0) + _heaps.ValueOf(heap),
                };
            }
            else if (heap.Good is { CoverageArea: not null, CoverageVolume: not null })
            {
                all.Add(_heaps.Liquid(heap));
            }
            else
            {
                continue;
            }

            _links.Add(new StockLink(list, of >= 0 ? all[of]!.Id! : heap.Id, null, heap.Id));
        }

        return all.Count > 0 ? all : null;
    }

    private List<StripRequest?>? Strips()
    {
        List<StripRequest?> bought = [.. Supplies(SupplySort.Strips, SupplyReader.Strip)];
        List<StripRequest?> all = [.. bought, .. Room([.. Heaps(StockSort.Strip)], bought.Count, WireLimits.Goods).Select(heap => Linked("strips", heap, _heaps.Strip(heap)))];
        return all.Count > 0 ? all : null;
    }

    private IEnumerable<T> Supplies<T>(SupplySort sort, Func<Supply, T?> read)
        where T : class =>
        _shelf.Supplies.Where(supply => supply.Sort == sort && supply.Currency == _measures.Currency.Code).Select(read).OfType<T>();

    // What a piece counts as in another currency is not known in this one; what counts as nothing does so in any.
    private IEnumerable<StockItem> Heaps(params StockSort[] sorts) =>
        _shelf.Stock.Where(item => sorts.Contains(item.Sort) && (item.Currency == _measures.Currency.Code || item.Value.Minor == 0));

    private StockItem[] Room(StockItem[] heaps, int taken, int most)
    {
        int room = Math.Max(0, most - taken);
        if (heaps.Length > room)
        {
            _remarks.Add(new Warning("stock-left-out", $"There are more heaps in stock than an order can weigh; {heaps.Length - room} of them were left out of this plan."));
        }

        return heaps[..Math.Min(room, heaps.Length)];
    }

    private T Linked<T>(string list, StockItem heap, T good)
    {
        _links.Add(new StockLink(list, heap.Id, null, heap.Id));
        return good;
    }

    // Whoever writes a heap's pencil id into an order, with its measures, means that heap.
    private void LinkNamed(IReadOnlyList<BoardRequest?>? boards)
    {
        foreach (BoardRequest board in (boards ?? []).OfType<BoardRequest>().Where(board => board.OnHand > 0))
        {
            StockItem? heap = _shelf.Stock.FirstOrDefault(item => item.Id == board.Id && item.Good.Width == board.Width && item.Good.Height == board.Height && item.Good.Thickness == board.Thickness);
            if (heap is { Sort: StockSort.Board or StockSort.Offcut })
            {
                _links.Add(new StockLink("boards", heap.Id, null, heap.Id));
            }
        }
    }

    private void LinkNamed(IReadOnlyList<ClothRequest?>? cloths)
    {
        foreach (ClothRequest cloth in (cloths ?? []).OfType<ClothRequest>())
        {
            foreach (RemnantRequest remnant in (cloth.Remnants ?? []).OfType<RemnantRequest>())
            {
                StockItem? heap = _shelf.Stock.FirstOrDefault(item => item.Id == remnant.Id && item.Good.Length == remnant.Length);
                if (heap is { Sort: StockSort.Cloth or StockSort.Remnant } && HeapReader.Usable(heap.Good) == remnant.Width)
                {
                    _links.Add(new StockLink("cloths", cloth.Id!, remnant.Id, heap.Id));
                }
            }
        }
    }

    private void LinkNamed(IReadOnlyList<StripRequest?>? strips)
    {
        foreach (StripRequest strip in (strips ?? []).OfType<StripRequest>().Where(strip => strip.OnHand > 0))
        {
            if (_shelf.Stock.FirstOrDefault(item => item.Id == strip.Id && item.Good.Length == strip.Length) is { Sort: StockSort.Strip } heap)
            {
                _links.Add(new StockLink("strips", heap.Id, null, heap.Id));
            }
        }
    }

    // Where more of it is said to be on hand than that heap holds, the rest is in the others that came from the same supply.
    private void LinkNamed(IReadOnlyList<LiquidRequest?>? liquids, StockSort sort, string list)
    {
        foreach (LiquidRequest liquid in (liquids ?? []).OfType<LiquidRequest>().Where(liquid => liquid.OnHand > 0))
        {
            if (_shelf.Stock.FirstOrDefault(item => item.Id == liquid.Id && item.Sort == sort) is not { } named)
            {
                continue;
            }

            decimal wanted = liquid.OnHand!.Value;
            StockItem[] alike = [named, .. Heaps(sort).Where(item => item != named && item.Good with { Note = null } == named.Good with { Note = null })];
            foreach (StockItem heap in alike.TakeWhile(_ => wanted > 0))
            {
                _links.Add(new StockLink(list, liquid.Id!, null, heap.Id));
                wanted -= _heaps.VolumeOf(heap);
            }
        }
    }

    // Null: the rules say that nothing is saved, where it is needed. Where something is, but in another currency, this says so.
    private List<T?>? None<T>(string list, bool needed, SupplySort supplies, params StockSort[] stock)
        where T : class
    {
        string[] currencies =
        [
            .. _shelf.Supplies.Where(supply => supply.Sort == supplies).Select(supply => supply.Currency)
                .Concat(_shelf.Stock.Where(item => stock.Contains(item.Sort)).Select(item => item.Currency))
                .Distinct(StringComparer.Ordinal),
        ];
        if (needed && currencies.Length > 0 && !_faults.At("currency"))
        {
            _faults.Add(list, $"Missing: the saved ones are priced in {string.Join(", ", currencies)} and this order is in {_measures.Currency.Code}. Name that currency, or list the goods.");
        }

        return null;
    }
}
