// The way of a search:
//   1. a first whole plan at once, by ruin and recreate over a few milliseconds (ManyOrders);
//   2. relax the whole problem: a bound, good patterns, and a plan by rounding them down (Relaxation, RoundDown), which
//      waits for the first look of 4. where there is a plan already: mostly it is not needed then. Of odd sizes the bound is
//      then raised as far as coarse grids tell (CoarseBound), and what the whole part leaves, and the plan's emptiest
//      sheets, are laid out anew (ManyOrders);
//   3. orders of a few pieces are decided for good (SmallOrder);
//   4. plans within the cheapest counts of stocks that the relaxation allows, and what is open of these decided (CountPhase).
// Many different pieces, one or two of each, go another way (SearchManyPieces): bounds by dual feasible functions, tight
// numbers of sheets decided (TightCover), ruin and recreate side by side; then 3., 2. and 4. for what these leave open, and
// ruin and recreate once more.
// Source:  see the parts.
// Cost:    the work allowed; ends as soon as bound and plan meet.
// Not:     always proven.
using PanelService.Cutting.Exact;
using PanelService.Cutting.Many;

namespace PanelService.Cutting.Search;

/// <summary>One search: the relaxation's bound, whole plans from its patterns, and whatever closes the gap between them.</summary>
internal sealed class PlanSearch
{
    // So few different pieces fall into place soon or not at all: what they then need is a better bound.
    private const int FewPieces = 30;

    // The whole part of the relaxation is nearly all of a larger order's plan.
    private const int MostPutOff = 500;

    // Percent of the work that the first relaxation leaves for making whole plans of it.
    private const long KeptBack = 40;

    // Percent of the work that is left for the bound of coarse grids: where a sheet more or less is all there is to know, and
    // where prices differ, so that a bound a little higher proves nothing.
    private const int CoarsePercent = 60;
    private const int CoarsePercentOfMany = 20;

    // One look at what the relaxation's whole part leaves takes this part of the work that is left.
    private const int RestShare = 10;

    // So many of the emptiest sheets are laid out anew, for this part of the work each.
    private static readonly int[] Emptiest = [3, 5];
    private const int EmptiestShare = 30;

    // The last look for a plan of many pieces takes this part of the work that is left.
    private const int LastShare = 3;

    // A few milliseconds.
    private const long FirstPlanUnits = 2_000;

    private readonly Model _model;
    private readonly WorkMeter _work;
    private readonly ColumnPool _pool = new();
    private readonly Relaxation _relaxation;
    private readonly StockBox _box;
    private readonly ProofRecord _proof;
    private readonly Incumbent _best;
    private readonly RoundDown _rounding;
    private readonly SearchState _state;
    private readonly WithinCounts _within;
    private GoalSearch[] _looks = [];
    private double[] _duals;
    private CountsDecision? _decision;

    /// <summary>Starts a search.</summary>
    /// <param name="model">What is to be cut from what.</param>
    /// <param name="work">The work allowed.</param>
    /// <param name="progress">Told whenever plan or bound gets better.</param>
    public PlanSearch(Model model, WorkMeter work, IProgress<CuttingProgress>? progress)
    {
        (_model, _work) = (model, work);
        _relaxation = new Relaxation(model, _pool, work);
        var fill = new SequentialFill(model, _pool, work);
        _box = StockBox.Of(model);
        _proof = new ProofRecord(model);
        _best = new Incumbent(model, _proof, progress);
        _rounding = new RoundDown(model, _box, fill, _best);
        _state = new SearchState(_pool, _box, work, _best, _proof, _rounding);
        _within = new WithinCounts(model, _relaxation, fill, _state);
        _duals = [.. Enumerable.Range(0, model.Types.Length).Select(model.PieceArea)];
    }

    /// <summary>The best plan so far and the bound.</summary>
    public Incumbent Best => _best;

    /// <summary>Every pattern it came by.</summary>
    public IReadOnlyList<Column> Columns => _pool.Columns;

    /// <summary>What the bound rests on.</summary>
    public BoundProof Proof => _proof.ToProof(_relaxation.Inequalities, _box);

    /// <summary>Runs until the plan is proven, the work is done, or a stop is asked for.</summary>
    public void Run()
    {
        try
        {
            Search();
        }
        catch (OperationCanceledException) when (_work.Stopped)
        {
            // The best plan so far stands; what was being computed is dropped half-way.
        }
    }

    private void Search()
    {
        FirstPlan();
        if (ManyOrders.Suits(_model) && !_model.IsLimited)
        {
            SearchManyPieces();
            return;
        }

        if (_model.HasOddSizes && ManyOrders.CanHold(_model) && !_model.IsLimited)
        {
            // Coarse grids promise more than a sheet has; next to no waste, and area alone says more than they do.
            _best.RaiseBound(ManyOrders.Bound(_model, _work, _proof));
        }

        _work.Reserve = _work.Left * KeptBack / 100;
        (_relaxation.Known, _relaxation.PriceStep) = (_best.Bound, _best.PriceStep);
        var root = _relaxation.Solve(_model.Demand, _box);
        _work.Reserve = 0;
        _best.RaiseBound(root.Bound);
        RaiseCoarseBound(root.Solution);
        _duals = root.Solution?.Duals ?? _duals;
        _within.Duals = _duals;
        if (_best.IsProven)
        {
            return;
        }

        _rounding.PutOff(root.Solution, _duals);
        if (_best.Missing > 0 || _decision is null || _model.HasOddSizes || _model.Demand.Sum(d => (long)d) > MostPutOff)
        {
            _rounding.CatchUp();
        }

        ImproveRest(root.Solution);
        ImproveEmptiest();
        SolveSmallOrder();
        new CountPhase(_model, _relaxation, _state, _within, _decision).Run();
    }

    /// <summary>What coarse grids can tell, where the relaxation leaves room for more than the bound known.</summary>
    private void RaiseCoarseBound(MasterSolution? solution)
    {
        if (solution is null || _best.IsProven || !_model.HasOddSizes || _best.PriceStep == 0)
        {
            return;
        }

        bool one = Math.Ceiling(solution.Price / _best.PriceStep) <= (_best.Bound / _best.PriceStep) + 1;
        var part = _work.Part(_work.Left * (one ? CoarsePercent : CoarsePercentOfMany) / 100);
        var coarse = new CoarseBound(_model, _box, part);
        long bound = coarse.Run(solution, _pool.Columns, _best.Bound, _best.PriceStep);
        _work.Join(part);
        _relaxation.Inequalities.AddRange(coarse.Inequalities);
        _best.RaiseBound(bound);
    }

    private void FirstPlan()
    {
        if (ManyOrders.CanHold(_model) && !_model.IsLimited)
        {
            _looks = ManyOrders.Searches(_model, ManyOrders.Looks);
            var meter = _work.Part(FirstPlanUnits);
            TakeAll(_looks[0].Advance(long.MaxValue, bound: 0, meter));
            _work.Join(meter);
        }
        else
        {
            _best.Take(PlainFill.Run(_model, _model.Demand, _box.Most));
        }

        _best.RaiseBound(_relaxation.Seed(_relaxation.ByArea(), _model.Demand, _box));
        _decision = CountsDecision.Suits(_model) && !_model.IsLimited ? new CountsDecision(_model, _pool, _relaxation.Inequalities, _work) : null;
    }

    // Many different pieces, one or two of each: patterns hardly repeat, so that rounding the relaxation is of little use.
    // Quick bounds, ruin and recreate, the relaxation for its bound, and ruin and recreate again.
    private void SearchManyPieces()
    {
        _best.RaiseBound(ManyOrders.Bound(_model, _work, _proof));
        DecideTightSheets();
        bool few = _model.Demand.Sum() <= FewPieces;
        ImproveMany(few ? ManyOrders.Share * FewPieces : ManyOrders.Share);
        SolveSmallOrder();
        if (!_best.IsProven && !_work.Exhausted)
        {
            var root = _relaxation.Solve(_model.Demand, _box, _best.Below);
            _best.RaiseBound(root.Bound);
            RaiseCoarseBound(root.Solution);
            if (_best.Missing > 0)
            {
                _rounding.Run(root.Solution, _duals);
            }
        }

        // Few pieces' counts are proven soon or not at all; what they leave is for another look for a plan.
        if (_model.Stocks.Length > 1)
        {
            new CountPhase(_model, _relaxation, _state, _within, _decision).Run(few ? _work.Left / 2 : 0);
        }

        ImproveMany(LastShare);
    }

    private void ImproveMany(int share)
    {
        if (_best.IsProven || (_best.Missing == 0 && _work.Exhausted))
        {
            return;
        }

        // Plan and bound change between the slices only.
        SideBySide.Run(
            _looks.Length,
            _work.Left / share / _looks.Length,
            _work,
            (look, meter) => _looks[look].Advance(_best.Below, _best.Bound, meter),
            found =>
            {
                Array.ForEach(found, TakeAll);
                return !_best.IsProven;
            });
    }

    private void TakeAll(List<List<ColumnUse>> plans)
    {
        foreach (var uses in plans)
        {
            _best.Take(uses);
            uses.ForEach(use => _pool.Add(use.Column));
        }
    }

    /// <summary>
    /// The whole part of the relaxation's solution kept, ruin and recreate for what it leaves: where patterns are dear to
    /// price, so that the ways through more of them are long.
    /// </summary>
    private void ImproveRest(MasterSolution? solution)
    {
        if (solution is not null)
        {
            Improve(RestShare, solution.Uses.Select(use => new ColumnUse(use.Column, (int)Math.Floor(use.Copies + 1e-6))).Where(use => use.Copies > 0));
        }
    }

    /// <summary>
    /// The best plan kept but for its emptiest sheets, ruin and recreate for what these hold: where a plan has a sheet too many,
    /// a few of the last that were filled leave most of the room.
    /// </summary>
    private void ImproveEmptiest()
    {
        foreach (int emptiest in Emptiest)
        {
            var sheets = _best.Plan.SelectMany(use => Enumerable.Repeat(use.Column, use.Copies)).OrderByDescending(Filled);
            Improve(EmptiestShare, sheets.SkipLast(emptiest).Select(column => new ColumnUse(column, 1)));
        }
    }

    private double Filled(Column column) =>
        column.Counts.Select((count, t) => count * _model.PieceArea(t)).Sum() / _model.StockArea(column.Stock);

    private void Improve(int share, IEnumerable<ColumnUse> uses)
    {
        if (_best.IsProven || _best.Missing > 0 || !_model.HasOddSizes || _model.IsLimited || !ManyOrders.CanHold(_model))
        {
            return;
        }

        var (kept, _) = ExactDemand.Of(uses, _model);
        ManyOrders.ImproveRest(_model, kept, new ManyRequest(_best.Spent, _best.Bound, _work.Left / share, Seed: 1), _work, found => _best.Take(found));
    }

    /// <summary>Orders of a few pieces are decided for good.</summary>
    private void SolveSmallOrder()
    {
        if (_best.IsProven || _model.IsLimited || SmallOrder.Solve(_model, _best.Below, _work) is not { } cheapest)
        {
            return;
        }

        if (cheapest.Count > 0)
        {
            _best.Take(cheapest);
        }

        if (_best.Missing == 0)
        {
            _proof.Exhausted(_best.Spent);
        }

        _best.RaiseBound(_best.Missing == 0 ? _best.Spent : _best.Bound);
    }

    /// <summary>Where the bound's number of sheets holds next to nothing more than is wanted, it is decided for good.</summary>
    private void DecideTightSheets()
    {
        if (_best.IsProven || _model.Stocks.Length != 1 || _model.Stock(0).Price == 0)
        {
            return;
        }

        int sheets = (int)(_best.Bound / _model.Stock(0).Price);
        if (sheets == 0 || sheets > _box.Most[0])
        {
            return;
        }

        var tight = TightCover.Solve(_model, [sheets], [], _work);
        if (tight.Plan is { } plan)
        {
            _best.Take(plan);
        }

        if (tight.Impossible)
        {
            _proof.Exclude([sheets], ExclusionSource.AllTightPatterns);
            _best.RaiseBound(_best.Bound + 1);
        }
    }
}
