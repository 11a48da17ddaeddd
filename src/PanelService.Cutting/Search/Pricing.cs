using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Search;

/// <summary>The exact programmes of all grids, filled for one set of values: best value and pattern of every stock.</summary>
internal sealed class Pricing
{
    private const double ValueRoom = int.MaxValue / 2;

    // About 30 ms. Patterns that hold to the demand are worth it: with a limit of 1,000,000 and pruned patterns beyond,
    // four more of the first 60 mixed orders stay open.
    private const long MostCappedWork = 16_000_000;

    // The last values of a coarse grid are near: a few rounds on a fine one close what they left.
    private const int DearRounds = 4;
    private const int VisitsOfUnit = 5000;

    // Cell visits: some 1 or 2 ms.
    private const long FewestDear = 8_000_000;

    // On a coarse grid next to none of a thousand patterns may fit. To read one of some thousand pieces takes milliseconds.
    private const int MostPiecesRead = 100_000;

    private readonly Model _model;
    private readonly WorkMeter _work;
    private readonly bool[] _lowerFilled;
    private int[] _values = [];
    private int _level;

    /// <summary>Makes it.</summary>
    /// <param name="model">The model.</param>
    /// <param name="work">Where its work is counted.</param>
    public Pricing(Model model, WorkMeter work)
    {
        (_model, _work) = (model, work);
        _lowerFilled = new bool[model.Classes.Length];
    }

    /// <summary>Rounds duals down to whole values and finds the best pattern value of every stock.</summary>
    /// <param name="duals">Values per type in price units, 0 or more.</param>
    public DualVector Evaluate(double[] duals)
    {
        int shift = ShiftFor(duals);
        double scale = Math.ScaleB(1, shift);
        int[] values = [.. duals.Select(d => (int)Math.Floor(d * scale))];
        return new DualVector(values, shift, Evaluate(values));
    }

    /// <summary>Finds the best pattern value of every stock.</summary>
    /// <param name="values">Values per type, 0 to <see cref="LargestValue"/>.</param>
    public long[] Evaluate(int[] values) => Evaluate(values, [.. _model.Stocks.Select(_ => 1)]);

    /// <summary>Finds the best pattern value of the stocks there are some of; 0 for the others.</summary>
    /// <param name="values">Values per type, 0 to <see cref="LargestValue"/>.</param>
    /// <param name="left">How many of each stock there are.</param>
    public long[] Evaluate(int[] values, int[] left)
    {
        long[] best = new long[_model.Stocks.Length];
        foreach (var stockClass in _model.Classes)
        {
            int[] members = [.. stockClass.Members.Where(s => left[s] > 0)];
            if (members.Length == 0)
            {
                continue;
            }

            (long width, long height) = (members.Max(s => _model.Stock(s).Width), members.Max(s => _model.Stock(s).Height));
            var upper = stockClass.Level(_level).Upper;
            _work.Spend(20 + (upper.Fill(values, width, height, _work.Cancellation) / VisitsOfUnit));
            foreach (int s in members)
            {
                best[s] = upper.Value(_model.Stock(s).Width, _model.Stock(s).Height);
            }
        }

        _values = values;
        Array.Clear(_lowerFilled);
        return best;
    }

    /// <summary>The programme last filled for a stock; null where its patterns need not fit.</summary>
    /// <param name="stock">The stock.</param>
    public ValueProgramme? Programme(int stock) =>
        _model.Classes[_model.ClassOf[stock]].Level(_level) is { IsExact: true } level ? level.Upper : null;

    /// <summary>Whether finer grids are left to go on with, and work enough for more than a look at them.</summary>
    public bool CanRefine => _model.Classes.Any(c => c.HasFiner(_level)) && (_level == 0 || CanAfford(_level + 1));

    private bool CanAfford(int level)
    {
        long left = (_work.Left - _work.Reserve) / DearRounds;
        return left > StockClass.MostWork(level - 1) / VisitsOfUnit
            && left > _model.Classes.Sum(c => c.Level(level).Upper.Grid.Work) / VisitsOfUnit;
    }

    /// <summary>Goes on with finer grids.</summary>
    public void Refine() => _level++;

    /// <summary>No pattern outgrows the programme when no piece is worth more than this, at most a million.</summary>
    public int LargestValue => (int)Math.Clamp(ValueRoom / MostPieces(_model), 1, 1_000_000);

    /// <summary>
    /// A best pattern of a stock under the values last evaluated; null where it is worth nothing. On a coarse grid:
    /// the pattern of the bound where it truly fits, else the best that is sure to.
    /// </summary>
    /// <param name="stock">The stock.</param>
    public Column? Best(int stock)
    {
        int index = _model.ClassOf[stock];
        var level = _model.Classes[index].Level(_level);
        var (width, height) = (_model.Stock(stock).Width, _model.Stock(stock).Height);
        var block = level.Upper.Pattern(width, height);
        if (block is not null && !level.IsExact && !Fits(block, width, height))
        {
            if (!_lowerFilled[index])
            {
                _work.Spend(20 + (level.Lower.Fill(_values, long.MaxValue / 2, long.MaxValue / 2, _work.Cancellation) / VisitsOfUnit));
                _lowerFilled[index] = true;
            }

            block = level.Lower.Pattern(width, height);
        }

        return block is null ? null : new Column(stock, BlockMath.Counts(block, _model.Types.Length), block);
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
        int index = _model.ClassOf[stock];
        var level = _model.Classes[index].Level(_level);
        var programme = level.IsExact || !_lowerFilled[index] ? level.Upper : level.Lower;
        if (programme.Grid.Work < FewestDear && !cheap)
        {
            return [];
        }

        var (width, height) = (_model.Stock(stock).Width, _model.Stock(stock).Height);
        int piecesLeft = MostPiecesRead;
        return programme.Patterns(width, height, (int)Math.Clamp(above, 0, int.MaxValue))
            .TakeWhile(_ => piecesLeft > 0)
            .Select(block => new Column(stock, BlockMath.Counts(block, _model.Types.Length), block))
            .Where(column =>
            {
                piecesLeft -= column.Counts.Sum();
                return level.IsExact || Fits(column.Block, width, height);
            });
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
        return free is null || Enumerable.Range(0, open.Length).All(t => free.Counts[t] <= open[t]) ? free : Capped(stock, open, values);
    }

    /// <summary>The best pattern without what it holds too much: quick, and good while much is still wanted.</summary>
    private Column? Pruned(int stock, int[] open)
    {
        int[] room = [.. open];
        var block = Best(stock) is { } free ? BlockMath.Prune(free.Block, room) : null;
        return block is null ? null : new Column(stock, BlockMath.Counts(block, open.Length), block);
    }

    private Column? Capped(int stock, int[] open, int[] values)
    {
        int index = _model.Stocks[stock];
        Piece[] pieces = [.. _model.Types.Select((type, t) => type with { Demand = Math.Max(1, open[t]) })];
        Turning[] turning = [.. _model.Types.Select((type, t) => open[t] > 0 ? type.On[index] : Turning.None)];
        var area = new GridArea(pieces, turning, _model.Stock(stock).Width, _model.Stock(stock).Height, _model.Kerf) { MostNear = _model.MostNear };
        var grid = Grid.Within(area, up: true, 2 * MostCappedWork, _work.Cancellation);
        if (_model.Classes[_model.ClassOf[stock]].IsExact && !grid.IsExact)
        {
            return Pruned(stock, open);
        }

        _work.Spend(50 + (grid.Work / 150));
        var block = CappedProgramme.Fill(grid, open, values, _work.Cancellation).Block;
        return block is null ? null : new Column(stock, BlockMath.Counts(block, open.Length), block);
    }

    /// <summary>More pieces than any pattern of any grid can hold.</summary>
    private static double MostPieces(Model model)
    {
        double smallest = Enumerable.Range(0, model.Types.Length).Min(model.PieceArea);
        return model.Classes.Max(c => (double)(c.Area.Width + model.Kerf) * (c.Area.Height + model.Kerf)) / smallest * CoarseRoom(model);
    }

    /// <summary>Sizes rounded down let more pieces in: never so many that a side holds twice as many.</summary>
    private static double CoarseRoom(Model model) => model.HasOddSizes ? 4 : 1;

    /// <summary>The largest power of two that no pattern's value can outgrow the programme with.</summary>
    private int ShiftFor(double[] duals)
    {
        double density = 0;
        for (int i = 0; i < duals.Length; i++)
        {
            density = Math.Max(density, duals[i] / _model.PieceArea(i));
        }

        double area = Enumerable.Range(0, _model.Stocks.Length).Max(_model.StockArea);

        // The grid's corner may lie beyond every stock (a wide and a high one share it).
        foreach (var stockClass in _model.Classes)
        {
            area = Math.Max(area, (double)(stockClass.Area.Width + _model.Kerf) * (stockClass.Area.Height + _model.Kerf));
        }

        double worth = density * area * CoarseRoom(_model);
        return worth <= 0 ? 0 : Math.Clamp((int)Math.Floor(Math.Log2(ValueRoom / worth)), -30, 40);
    }
}
