// Problem: just so many rectangles of each good: a plan that holds all pieces. Ruin and recreate does not see how sections
//          from edge to edge add up to a length.
// Idea:    a plan of a long rectangle is sections laid end to end; short rectangles hold one pattern each. Column generation
//          asks for the greatest multiple of the demand; under its values many parts that lose little are drawn
//          (PatternSampler), and an integer programme chooses among the best of them (PartChoice). Where that fails a part of
//          the solution in fractions is placed by chance, and what is left is asked for in the same way: it is
//          smaller, and its parts are drawn for just what is wanted. How long sections may be is
//          a choice of its own: short ones combine better, long ones lose less.
// Source:  diving with column generation: Sadykov, Vanderbeck, Pessoa, Tahiri and Uchoa, INFORMS J. Comput. 31 (2019); large
//          neighbourhoods: Shaw, CP (1998).
// Cost:    some tenths of a second; stops at a given amount of work.
// Not:     a proof: parts not drawn may be what is needed.
using PanelService.Cutting.Many;
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>Looks for a plan of fixed rectangles section by section.</summary>
internal sealed class SectionMix
{
    private const int MostRounds = 60;
    private const int LongOf = 2;
    private const int CutsOfUnit = 200;
    private const int ShareDraws = 4;

    // What a plan may waste is drawn for even where nothing is to spare: the values are not the last word.
    private const double LeastLoss = 0.002;

    private readonly Model _model;
    private readonly int[] _counts;
    private readonly WorkMeter _work;
    private readonly Pricing _pricing;
    private readonly SeededRandom _random;
    private readonly PatternSampler _sampler;
    private readonly long _longest;

    /// <summary>Makes it.</summary>
    /// <param name="model">Rectangles as stocks, and the pieces; exact grids.</param>
    /// <param name="counts">How many of each stock.</param>
    /// <param name="seed">Decides all chance.</param>
    /// <param name="work">Where work is counted.</param>
    public SectionMix(Model model, int[] counts, ulong seed, WorkMeter work)
    {
        (_model, _counts, _work) = (model, counts, work);
        _pricing = new Pricing(model, work);
        _random = new SeededRandom(seed);
        _sampler = new PatternSampler(_random);
        _longest = model.Sizes.Max(size => Math.Max(size.Width, size.Height));
    }

    /// <summary>Values under which the rectangles were the tightest; null where nothing was asked yet.</summary>
    public double[]? Tightest { get; private set; }

    /// <summary>Looks for a plan.</summary>
    /// <param name="reach">Sections are no longer than so many of the longest piece.</param>
    /// <param name="effort">How much to do.</param>
    /// <returns>What is cut from what; null where no plan was found.</returns>
    public List<ColumnUse>? Find(double reach, MixEffort effort)
    {
        var pool = new PartPool(_model, IsLong);
        var rooms = Rooms.Of(_model.Demand, [.. _counts.Select((_, s) => _model.Stock(s).Height)], _counts);
        Draw(pool, rooms, Generate(pool, rooms, reach), reach, effort.First.Draws);
        if (Fill(pool, rooms, reach, effort.First) is not ({ } solution, var full) || solution.Uses.Length == 0)
        {
            // Not even a fraction of what is wanted fits: some piece is in no part known.
            return null;
        }

        for (int i = 0; i < effort.Tries && full is null && !_work.Exhausted; i++)
        {
            full = Fill(pool, Begin(rooms, solution), reach, effort.Again).Full;
        }

        return full is null ? null : Uses(full);
    }

    private bool IsLong(int stock) => _model.Stock(stock).Height >= LongOf * _longest;

    /// <summary>Column generation without regard to how often a part may hold a piece.</summary>
    private PartSolution Generate(PartPool pool, Rooms rooms, double reach)
    {
        using var master = new PartMaster(rooms, _counts.Length, IsLong, within: false);
        var solution = new PartSolution(0, [.. _model.Demand.Select((_, t) => _model.PieceArea(t))], new double[_counts.Length], []);
        int added = 0;
        for (int round = 0; round < MostRounds && !_work.Exhausted; round++)
        {
            var vector = _pricing.Evaluate(solution.Values);
            for (int s = 0; s < _counts.Length; s++)
            {
                AddBest(pool, s, reach, solution.Rates[s] * Math.ScaleB(1, vector.Shift));
            }

            if (pool.All.Count == added)
            {
                break;
            }

            for (; added < pool.All.Count; added++)
            {
                master.Add(pool.All[added]);
            }

            _work.Spend(100 + (2 * added));
            if (master.Solve() is not { } next)
            {
                break;
            }

            solution = next;
        }

        Tightest = solution.Values;
        return solution;
    }

    private void AddBest(PartPool pool, int stock, double reach, double rate)
    {
        var (width, height, _, _) = _model.Stock(stock);
        var programme = _pricing.Programme(stock)!;
        double gain = 1e-6 * rate;
        long best = 0;
        if (!IsLong(stock))
        {
            best = programme.Value(width, height) > rate + gain + 1e-6 ? height : 0;
        }
        else
        {
            foreach (long length in programme.Grid.Y.Points)
            {
                if (length > Math.Min(height, reach * _longest))
                {
                    break;
                }

                double each = (programme.Value(width, length) - (rate * length)) / length;
                (gain, best) = each > gain ? (each, length) : (gain, best);
            }
        }

        if (best > 0 && programme.Pattern(width, best) is { } block)
        {
            pool.Add(stock, block);
        }
    }

    /// <summary>Draws parts for what is left to do and chooses among them.</summary>
    /// <returns>The solution in fractions, null where what is wanted does not fit even so; and the rooms full, null where no choice was found.</returns>
    private (PartSolution? Solution, Rooms? Full) Fill(PartPool pool, Rooms rooms, double reach, FillEffort effort)
    {
        if (rooms.Demand.All(d => d == 0))
        {
            return (null, rooms);
        }

        using var master = new PartMaster(rooms, _counts.Length, IsLong, within: true);
        int added = 0;
        PartSolution? solution = null;
        for (int round = 0; round <= effort.Rounds && !_work.Exhausted; round++)
        {
            for (; added < pool.All.Count; added++)
            {
                master.Add(pool.All[added]);
            }

            _work.Spend(100 + (3 * added));
            if ((solution = master.Solve()) is null)
            {
                return (null, null);
            }

            if (round < effort.Rounds)
            {
                Draw(pool, rooms, solution, reach, effort.Draws);
            }
        }

        if (solution is null || solution.Share < 1 - 1e-9)
        {
            return (solution, null);
        }

        var last = solution;
        List<Part> parts = [.. pool.All.Where(rooms.Wants).OrderBy(part => last.Loss(part, IsLong(part.Stock))).Take(effort.Parts)];
        return (solution, PartChoice.Find(rooms, parts, IsLong, effort.Time, _work));
    }

    private void Draw(PartPool pool, Rooms rooms, PartSolution solution, double reach, int draws)
    {
        var vector = _pricing.Evaluate(solution.Values);
        double scale = Math.ScaleB(1, vector.Shift);
        double most = Math.Max(LeastLoss, solution.Share - 1) * scale;
        long before = _sampler.Looked;
        for (int s = 0; s < _counts.Length; s++)
        {
            long free = Enumerable.Range(0, rooms.Stocks.Length).Where(r => rooms.Stocks[r] == s).Select(r => rooms.Free[r]).DefaultIfEmpty(0).Max();
            if (free > 0)
            {
                DrawFor(s, IsLong(s) ? (long)Math.Min(free, reach * _longest) : 0);
            }
        }

        _work.Spend((_sampler.Looked - before) / CutsOfUnit);

        void DrawFor(int stock, long longest)
        {
            var programme = _pricing.Programme(stock)!;
            var (width, height, _, _) = _model.Stock(stock);
            double rate = solution.Rates[stock] * scale;
            var lengths = new List<(long Length, double Lost)>();
            foreach (long length in programme.Grid.Y.Points)
            {
                double lost = (rate * length) - programme.Value(width, length);
                if (length <= longest && lost <= most)
                {
                    lengths.Add((length, lost));
                }
            }

            int times = IsLong(stock) ? lengths.Count == 0 ? 0 : draws : draws / ShareDraws;
            for (int i = 0; i < times; i++)
            {
                var (length, lost) = IsLong(stock) ? lengths[_random.Below(lengths.Count)] : (height, 0);
                if (_sampler.Draw(programme, vector.Values, (width, length), [.. rooms.Demand], (int)Math.Max(0, most - lost)) is { } block)
                {
                    pool.Add(stock, block);
                }
            }
        }
    }

    /// <summary>Places parts of a solution by chance, until about half of what is wanted is left.</summary>
    private Rooms Begin(Rooms rooms, PartSolution solution)
    {
        var begun = rooms.Copy();
        double left = 0.3 + (0.4 * _random.Share());
        for (int i = 0; i < 200 && Worth(begun) > left; i++)
        {
            double at = _random.Share() * solution.Uses.Sum(use => use.Times);
            var part = solution.Uses[0].Part;
            foreach (var (next, times) in solution.Uses)
            {
                part = next;
                at -= times;
                if (at <= 0)
                {
                    break;
                }
            }

            int rectangle = begun.Wants(part) ? begun.RoomFor(part) : -1;
            if (rectangle >= 0)
            {
                begun.Place(rectangle, part, whole: !IsLong(part.Stock));
            }
        }

        return begun;

        double Worth(Rooms some) => some.Demand.Select((d, t) => d * solution.Values[t]).Sum();
    }

    private List<ColumnUse> Uses(Rooms full)
    {
        int[] open = [.. _model.Demand];
        var uses = new List<ColumnUse>();
        foreach (var rectangle in full.Placed.GroupBy(placed => placed.Rectangle).OrderBy(group => group.Key))
        {
            var block = rectangle.Select(placed => placed.Part.Block).Aggregate((a, b) => BlockMath.Join(Axis.Y, a, b));
            if (BlockMath.Prune(block, open) is { } kept)
            {
                int stock = full.Stocks[rectangle.Key];
                uses.Add(new ColumnUse(new Column(stock, BlockMath.Counts(kept, open.Length), kept), 1));
            }
        }

        return uses;
    }
}

/// <summary>How much a search section by section does.</summary>
/// <param name="First">At first, for everything.</param>
/// <param name="Again">Then for what is left once some of it is placed.</param>
/// <param name="Tries">How often that.</param>
internal sealed record MixEffort(FillEffort First, FillEffort Again, int Tries);

/// <summary>How much is done to fill rooms.</summary>
/// <param name="Rounds">How often parts are drawn.</param>
/// <param name="Draws">How many each time, of every stock.</param>
/// <param name="Parts">From so many of the best the choice is made.</param>
/// <param name="Time">Deterministic time of the choice.</param>
internal sealed record FillEffort(int Rounds, int Draws, int Parts, double Time);
