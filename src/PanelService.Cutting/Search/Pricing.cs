// Problem: the best pattern of every stock under values that a simplex proposes in floating point, and what no pattern exceeds.
// Idea:    values are rounded down to multiples of a power of two, the finest under which no sum outgrows a table. One
//          fill of a programme serves all stocks that share its grid. On a coarse grid two are asked: one whose values are
//          bounds, one whose patterns fit. Where a pattern has to keep to the demand and the best one does not, it is pruned
//          or the capped programme fills the sheet.
// Source:  pricing of Gilmore and Gomory, Operations Research 14 (1966); the bound that survives rounding: see DualVector.
// Cost:    one fill of ValueProgramme a grid (two where it is coarse); the capped programme some thirty times that.
// Not:     exact within the demand: see BoundedPattern.
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Search;

/// <summary>
/// The programmes of all grids, filled for one set of values: best value and pattern of every stock. On a coarse grid there
/// are two of each: what no pattern is worth more than is evaluated, the best pattern that fits is proposed.
/// </summary>
internal sealed class Pricing
{
    private const double WideRoom = int.MaxValue / 2;

    // Sizes rounded down let a little more onto a sheet; where it is more than this, smaller values are tried. Where a side
    // holds thousands of pieces it may be twice as many, but not more.
    private const double MoreOfNarrow = 1.1;
    private const double MoreOfCoarse = 4;

    // Under values close to the best a coarse grid promises one or two hundredths more than a stock costs.
    private const double MoreThanPrice = 1.04;
    private const double MoreAgain = 1.2;

    // About 30 ms. Patterns that hold to the demand are worth it: with a limit of 1,000,000 and pruned patterns beyond,
    // four more of the first 60 mixed orders stay open.
    private const long MostCappedWork = 16_000_000;

    // Patterns that fit are priced on a finer grid only if there is work for so many fills of it.
    private const int DearRounds = 12;
    private const int VisitsOfUnit = 5000;

    // Cell visits: some 1 or 2 ms.
    private const long FewestDear = 8_000_000;

    // On a coarse grid next to none of a thousand patterns may fit. To read one of some thousand pieces takes milliseconds.
    private const int MostPiecesRead = 100_000;

    private readonly Model _model;
    private readonly WorkMeter _work;
    private int _level;
    private bool _proposed;

    /// <summary>Makes it.</summary>
    /// <param name="model">The model.</param>
    /// <param name="work">Where its work is counted.</param>
    public Pricing(Model model, WorkMeter work) => (_model, _work) = (model, work);

    /// <summary>Rounds duals down to whole values and finds what no pattern of every stock is worth more than.</summary>
    /// <param name="duals">Values per type in price units, 0 or more.</param>
    public DualVector Evaluate(double[] duals)
    {
        for (int shift = ShiftFor(duals, IsNarrow ? MoreOfNarrow : IsCoarse ? MoreOfCoarse : 1); ; shift--)
        {
            int[] values = Rounded(duals, shift);
            long[] best = Evaluate(values);
            if (!IsOutgrown)
            {
                return new DualVector(values, shift, best);
            }
        }
    }

    /// <summary>
    /// As <see cref="Evaluate(double[])"/> for values of about what stocks cost, told as finely as a narrow table can: rounded to the
    /// nearest, and where no stock runs out raised so that the dearest fills the table.
    /// </summary>
    /// <param name="duals">Values per type in price units, 0 or more.</param>
    public DualVector Promise(double[] duals)
    {
        if (!IsNarrow || Enumerable.Range(0, _model.Stocks.Length).Any(s => _model.Stock(s).Limit is not null))
        {
            return Evaluate(duals);
        }

        double price = Enumerable.Range(0, _model.Stocks.Length).Max(s => _model.Stock(s).Price);
        for (double more = MoreThanPrice; price > 0; more *= MoreAgain)
        {
            double scale = NarrowTable.Room / (more * price);
            int[] values = [.. duals.Select(d => (int)Math.Round(d * scale))];
            long[] best = Evaluate(values);
            if (!IsOutgrown)
            {
                return new DualVector(values, (int)Math.Floor(Math.Log2(scale)), best);
            }
        }

        return Evaluate(duals);
    }

    private long WorkOf(int level) => _model.Classes.Sum(c => c.Level(level).Work) / VisitsOfUnit;

    /// <summary>Finds what no pattern of every stock is worth more than.</summary>
    /// <param name="values">Values per type, 0 to <see cref="LargestValue"/>.</param>
    public long[] Evaluate(int[] values) => Fill(values, [.. _model.Stocks.Select(_ => 1)], level => level.Upper);

    /// <summary>The same by the best patterns that are sure to fit: on a coarse grid no bound, but a pattern of every stock.</summary>
    /// <param name="duals">Values per type in price units, 0 or more.</param>
    public DualVector Propose(double[] duals)
    {
        int shift = ShiftFor(duals, more: 1);
        int[] values = Rounded(duals, shift);
        return new DualVector(values, shift, Propose(values, [.. _model.Stocks.Select(_ => 1)]));
    }

    /// <summary>Finds the best patterns that are sure to fit, of the stocks there are some of; 0 for the others.</summary>
    /// <param name="values">Values per type: see <see cref="ScaleOf"/>.</param>
    /// <param name="left">How many of each stock there are.</param>
    public long[] Propose(int[] values, int[] left)
    {
        long[] best = Fill(values, left, level => level.Lower);
        _proposed = true;
        return best;
    }

    private static int[] Rounded(double[] duals, int shift)
    {
        double scale = Math.ScaleB(1, shift);
        return [.. duals.Select(d => (int)Math.Floor(d * scale))];
    }

    private long[] Fill(int[] values, int[] left, Func<GridLevel, ValueProgramme> programmeOf)
    {
        long[] best = new long[_model.Stocks.Length];
        _proposed = false;
        IsOutgrown = false;
        foreach (var stockClass in _model.Classes)
        {
            int[] members = [.. stockClass.Members.Where(s => left[s] > 0)];
            if (members.Length == 0)
            {
                continue;
            }

            (long width, long height) = (members.Max(s => _model.Stock(s).Width), members.Max(s => _model.Stock(s).Height));
            var programme = programmeOf(stockClass.Level(_level));
            _work.Spend(20 + (programme.Fill(values, width, height, _work.Cancellation) / VisitsOfUnit));
            IsOutgrown |= programme.IsOutgrown(width, height);
            foreach (int s in members)
            {
                best[s] = programme.Value(_model.Stock(s).Width, _model.Stock(s).Height);
            }
        }

        return best;
    }

    /// <summary>Whether the values last evaluated were more than a narrow table holds.</summary>
    private bool IsOutgrown { get; set; }

    /// <summary>Whether the best patterns that are sure to fit need not be the best.</summary>
    public bool IsCoarse => _model.Classes.Any(c => !c.Level(_level).IsExact);

    /// <summary>The programme last filled for a stock; null where its patterns need not fit.</summary>
    /// <param name="stock">The stock.</param>
    public ValueProgramme? Programme(int stock) =>
        _model.Classes[_model.ClassOf[stock]].Level(_level) is { IsExact: true } level ? level.Upper : null;

    /// <summary>Whether finer grids are left to go on with, and work enough for more than a look at them.</summary>
    public bool CanRefine => _level == 0 ? HasFiner : CanGoOn(DearRounds);

    /// <summary>Whether finer grids are left, and work enough for some fills of them.</summary>
    /// <param name="fills">How many.</param>
    public bool CanGoOn(int fills) => HasFiner && (_work.Left - _work.Reserve) / fills > WorkOf(_level + 1);

    private bool HasFiner => _model.Classes.Any(c => c.HasFiner(_level));

    /// <summary>Whether it still is at the coarsest grids.</summary>
    public bool IsFirst => _level == 0;

    /// <summary>Goes on with finer grids.</summary>
    public void Refine() => _level++;

    /// <summary>No pattern outgrows the programme when no piece is worth more than this, at most a million.</summary>
    public int LargestValue => (int)Math.Clamp(WideRoom / MostPieces(_model), 1, 1_000_000);

    /// <summary>What values may be multiplied with so that no pattern that fits outgrows the programme.</summary>
    /// <param name="values">Per type, 0 or more, one of them more.</param>
    public double ScaleOf(double[] values) => IsNarrow ? Room / Worth(values) : LargestValue / values.Max();

    /// <summary>
    /// The best pattern of a stock as last evaluated or proposed; null where it is worth nothing. On a coarse grid the
    /// pattern of a bound need not fit: then null, too.
    /// </summary>
    /// <param name="stock">The stock.</param>
    public Column? Best(int stock)
    {
        var (width, height) = (_model.Stock(stock).Width, _model.Stock(stock).Height);
        var block = LastFilled(stock).Pattern(width, height);
        if (block is not null && !_proposed && IsCoarse && !Fits(block, width, height))
        {
            return null;
        }

        return block is null ? null : ColumnOf(stock, block);
    }

    /// <summary>
    /// More patterns of a stock under the values last evaluated, the most valuable first: read from the same programme,
    /// so that a dear one serves several columns. 12 of them at a time made the relaxation of 75 formats on odd
    /// sizes three times as fast. Of a cheap programme none, unless they are asked for.
    /// </summary>
    /// <param name="stock">The stock.</param>
    /// <param name="above">Only patterns worth more than this, in the units of the values.</param>
    /// <param name="cheap">Whether a cheap programme's are wanted, too.</param>
    public IEnumerable<Column> More(int stock, double above, bool cheap)
    {
        var programme = LastFilled(stock);
        var (width, height) = (_model.Stock(stock).Width, _model.Stock(stock).Height);
        return programme.Grid.Work < FewestDear && !cheap
            ? []
            : Read(programme, stock, above).Where(column => _proposed || Fits(column.Block, width, height));
    }

    /// <summary>
    /// The best pattern of a stock as last evaluated and more of them, the most valuable first, whether they fit or not.
    /// </summary>
    /// <param name="stock">The stock.</param>
    public IEnumerable<Column> Promised(int stock)
    {
        var programme = LastFilled(stock);
        var (width, height) = (_model.Stock(stock).Width, _model.Stock(stock).Height);
        return programme.Pattern(width, height) is { } block
            ? Read(programme, stock, above: 0).Prepend(ColumnOf(stock, block))
            : [];
    }

    private IEnumerable<Column> Read(ValueProgramme programme, int stock, double above)
    {
        int piecesLeft = MostPiecesRead;
        foreach (var block in programme.Patterns(_model.Stock(stock).Width, _model.Stock(stock).Height, (int)Math.Clamp(above, 0, int.MaxValue)))
        {
            var column = ColumnOf(stock, block);
            yield return column;
            piecesLeft -= column.Counts.Sum();
            if (piecesLeft <= 0)
            {
                yield break;
            }
        }
    }

    private Column ColumnOf(int stock, Block block) => new(stock, BlockMath.Counts(block, _model.Types.Length), block);

    private ValueProgramme LastFilled(int stock)
    {
        var level = _model.Classes[_model.ClassOf[stock]].Level(_level);
        return _proposed ? level.Lower : level.Upper;
    }

    private bool Fits(Block block, long width, long height)
    {
        var size = BlockMath.Size(block, _model.Sizes, _model.Kerf);
        return size.Width <= width && size.Height <= height && _model.CanCut(block);
    }

    /// <summary>
    /// A good pattern of a stock that holds no more than is wanted: the best one where that holds to it, else what the
    /// capped programme finds.
    /// </summary>
    /// <param name="stock">The stock; worth something under the values last evaluated.</param>
    /// <param name="open">How many of each type are wanted.</param>
    /// <param name="values">The values last evaluated.</param>
    public Column? BestWithin(int stock, int[] open, int[] values)
    {
        var free = Best(stock);
        if (free is null || Enumerable.Range(0, open.Length).All(t => free.Counts[t] <= open[t]))
        {
            return free;
        }

        return open.Any(d => d > CappedProgramme.MostOfOne) && Pruned(stock, open) is { } pruned && HoldsAsMuch(pruned, open)
            ? pruned
            : Capped(stock, open, values);
    }

    /// <summary>Whether a pattern holds whatever one of the capped programme can.</summary>
    private static bool HoldsAsMuch(Column pruned, int[] open) =>
        open.Zip(pruned.Counts).All(pair => pair.Second >= Math.Min(pair.First, CappedProgramme.MostOfOne));

    /// <summary>The best pattern without what it holds too much: quick, and good while much is still wanted.</summary>
    private Column? Pruned(int stock, int[] open)
    {
        int[] room = [.. open];
        var block = Best(stock) is { } free ? BlockMath.Prune(free.Block, room) : null;
        return block is null ? null : ColumnOf(stock, block);
    }

    private Column? Capped(int stock, int[] open, int[] values)
    {
        int index = _model.Stocks[stock];
        Piece[] pieces = [.. _model.Types.Select((type, t) => type with { Demand = Math.Max(1, open[t]) })];
        Turning[] turning = [.. _model.Types.Select((type, t) => open[t] > 0 ? type.On[index] : Turning.None)];
        var area = new GridArea(pieces, turning, _model.Stock(stock).Width, _model.Stock(stock).Height, _model.Kerf) { MostNear = _model.MostNear };
        var grid = _model.Classes[_model.ClassOf[stock]].IsExact
            ? Grid.ExactWithin(area, 2 * MostCappedWork, _work.Cancellation)
            : Grid.Fitting(area, 2 * MostCappedWork, _work.Cancellation);
        if (grid is null)
        {
            return Pruned(stock, open);
        }

        _work.Spend(50 + (grid.Work / 150));
        var block = CappedProgramme.Fill(grid, open, values, _work.Cancellation).Block;
        return block is null ? null : ColumnOf(stock, block);
    }

    /// <summary>More pieces than any pattern of an exact grid can hold.</summary>
    private static double MostPieces(Model model)
    {
        double smallest = Enumerable.Range(0, model.Types.Length).Min(model.PieceArea);
        return model.Classes.Max(c => (double)(c.Area.Width + model.Kerf) * (c.Area.Height + model.Kerf)) / smallest;
    }

    /// <summary>The largest power of two that no pattern's value can outgrow the programme with.</summary>
    /// <param name="duals">Values per type.</param>
    /// <param name="more">How many times its area a grid may let onto a sheet.</param>
    private int ShiftFor(double[] duals, double more)
    {
        double worth = more * Worth(duals);
        return worth <= 0 ? 0 : Math.Clamp((int)Math.Floor(Math.Log2(Room / worth)), -30, 40);
    }

    private double Room => IsNarrow ? NarrowTable.Room : WideRoom;

    private bool IsNarrow => _model.Classes.Any(c => c.Level(_level).IsNarrow);

    /// <summary>No pattern is worth more than this.</summary>
    private double Worth(double[] values)
    {
        double density = 0;
        for (int i = 0; i < values.Length; i++)
        {
            density = Math.Max(density, values[i] / _model.PieceArea(i));
        }

        double area = Enumerable.Range(0, _model.Stocks.Length).Max(_model.StockArea);

        // The grid's corner may lie beyond every stock (a wide and a high one share it).
        foreach (var stockClass in _model.Classes)
        {
            area = Math.Max(area, (double)(stockClass.Area.Width + _model.Kerf) * (stockClass.Area.Height + _model.Kerf));
        }

        return density * area;
    }
}
