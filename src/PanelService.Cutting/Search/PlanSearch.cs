// The way of a search:
//   1. a first whole plan at once, by ruin and recreate over a few milliseconds (ManyOrders);
//   2. relax the whole problem: a bound, good patterns, and a plan by rounding them down (Relaxation, RoundDown), which
//      waits for the first look of 4. where there is a plan already: mostly it is not needed then. Of odd sizes the bound is
//      then raised as far as coarse grids tell (CoarseBound), and what the whole part leaves, and the plan's emptiest
//      sheets, are laid out anew (ManyOrders);
//   3. orders of a few pieces are decided for good (SmallOrder);
//   4. the cheapest counts of stocks the relaxation allows (CountSearch), and a short look for a plan within just these
//      (TightCover, CountsDecision; of a few sheets CountsPacking). Found: proven, unless cheaper counts stand open.
//   5. the counts that stand open are looked at again with what has come to the pool since, packed for longer and decided,
//      cheapest first (CountsPacking, CountsDecision), and what is then left of the work looks for a plan in the first
//      that could not be (WithinCounts).
// Many different pieces, one or two of each, go another way (SearchManyPieces): bounds by dual feasible functions, tight
// numbers of sheets decided (TightCover), ruin and recreate side by side; then 3., 2. and 4. for what these leave open, and
// ruin and recreate once more.
// Source:  see the parts.
// Cost:    the work allowed; ends as soon as bound and plan meet.
// Not:     always proven.
using System.Numerics;
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
    private const int MostMixes = 40;
    private const int MixRounds = 100;

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

    // What ruin and recreate within counts may do in each of its searches: in a look; and before they are decided, in each turn, this
    // part of the work left.
    private const long PackedInLook = 20_000;
    private const int PackingShare = 120;
    private const int PackingTurns = 3;

    private readonly Model _model;
    private readonly WorkMeter _work;
    private readonly IProgress<CuttingProgress>? _progress;
    private readonly ColumnPool _pool = new();
    private readonly Relaxation _relaxation;
    private readonly SequentialFill _fill;
    private readonly StockBox _box;
    private readonly long _priceDivisor;
    private readonly WithinCounts _within;
    private readonly ProofRecord _proof;
    private GoalSearch[] _looks = [];
    private double[] _duals;
    private CountsDecision? _decision;
    private Action? _roundDown;

    /// <summary>Starts a search.</summary>
    /// <param name="model">What is to be cut from what.</param>
    /// <param name="work">The work allowed.</param>
    /// <param name="progress">Told whenever plan or bound gets better.</param>
    public PlanSearch(Model model, WorkMeter work, IProgress<CuttingProgress>? progress)
    {
        (_model, _work, _progress) = (model, work, progress);
        _relaxation = new Relaxation(model, _pool, work);
        _fill = new SequentialFill(model, _pool, work);
        _box = StockBox.Of(model);
        _priceDivisor = PriceDivisor(model);
        _within = new WithinCounts(model, _relaxation, _fill, new SearchState(_pool, _box, work), Take);
        _proof = new ProofRecord(model);
        _duals = [.. Enumerable.Range(0, model.Types.Length).Select(model.PieceArea)];
    }

    /// <summary>The best plan so far: covers the demand unless <see cref="Missing"/>.</summary>
    public List<ColumnUse> Best { get; private set; } = [];

    /// <summary>Its price; <see cref="long.MaxValue"/> before the first whole plan.</summary>
    public long Spent { get; private set; } = long.MaxValue;

    /// <summary>No plan costs less.</summary>
    public long Bound { get; private set; }

    /// <summary>Pieces no plan found so far has a place for.</summary>
    public int Missing { get; private set; } = int.MaxValue;

    /// <summary>Every pattern it came by.</summary>
    public IReadOnlyList<Column> Columns => _pool.Columns;

    /// <summary>What the bound rests on.</summary>
    public BoundProof Proof => _proof.ToProof(_relaxation.Inequalities, _box);

    private bool Proven => Missing == 0 && Bound >= Spent;

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
            RaiseBound(ManyOrders.Bound(_model, _work, _proof));
        }

        _work.Reserve = _work.Left * KeptBack / 100;
        (_relaxation.Known, _relaxation.PriceStep) = (Bound, _priceDivisor);
        var root = _relaxation.Solve(_model.Demand, _box);
        _work.Reserve = 0;
        RaiseBound(root.Bound);
        RaiseCoarseBound(root.Solution);
        _duals = root.Solution?.Duals ?? _duals;
        _within.Duals = _duals;
        if (Proven)
        {
            return;
        }

        _roundDown = () => RoundDown(root.Solution);
        if (Missing > 0 || _decision is null || _model.HasOddSizes || _model.Demand.Sum(d => (long)d) > MostPutOff)
        {
            RoundDownOnce();
        }

        ImproveRest(root.Solution);
        ImproveEmptiest();
        SolveSmallOrder();
        SearchCounts();
    }

    /// <summary>What coarse grids can tell, where the relaxation leaves room for more than the bound known.</summary>
    private void RaiseCoarseBound(MasterSolution? solution)
    {
        if (solution is null || Proven || !_model.HasOddSizes || _priceDivisor == 0)
        {
            return;
        }

        bool one = Math.Ceiling(solution.Price / _priceDivisor) <= (Bound / _priceDivisor) + 1;
        var part = _work.Part(_work.Left * (one ? CoarsePercent : CoarsePercentOfMany) / 100);
        var coarse = new CoarseBound(_model, _box, part);
        long bound = coarse.Run(solution, _pool.Columns, Bound, _priceDivisor);
        _work.Join(part);
        _relaxation.Inequalities.AddRange(coarse.Inequalities);
        RaiseBound(bound);
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
            Take(PlainFill.Run(_model, _model.Demand, _box.Most));
        }

        RaiseBound(_relaxation.Seed(_relaxation.ByArea(), _model.Demand, _box));
        _decision = CountsDecision.Suits(_model) && !_model.IsLimited ? new CountsDecision(_model, _pool, _relaxation.Inequalities, _work) : null;
    }

    // Many different pieces, one or two of each: patterns hardly repeat, so that rounding the relaxation is of little use.
    // Quick bounds, ruin and recreate, the relaxation for its bound, and ruin and recreate again.
    private void SearchManyPieces()
    {
        RaiseBound(ManyOrders.Bound(_model, _work, _proof));
        DecideTightSheets();
        bool few = _model.Demand.Sum() <= FewPieces;
        ImproveMany(few ? ManyOrders.Share * FewPieces : ManyOrders.Share);
        SolveSmallOrder();
        if (!Proven && !_work.Exhausted)
        {
            var root = _relaxation.Solve(_model.Demand, _box, Missing == 0 ? Spent : long.MaxValue);
            RaiseBound(root.Bound);
            RaiseCoarseBound(root.Solution);
            if (Missing > 0)
            {
                RoundDown(root.Solution);
            }
        }

        // Few pieces' counts are proven soon or not at all; what they leave is for another look for a plan.
        if (_model.Stocks.Length > 1)
        {
            SearchCounts(few ? _work.Left / 2 : 0);
        }

        ImproveMany(LastShare);
    }

    private void ImproveMany(int share)
    {
        if (Proven || (Missing == 0 && _work.Exhausted))
        {
            return;
        }

        // Plan and bound change between the slices only.
        SideBySide.Run(
            _looks.Length,
            _work.Left / share / _looks.Length,
            _work,
            (look, meter) => _looks[look].Advance(Missing == 0 ? Spent : long.MaxValue, Bound, meter),
            found =>
            {
                Array.ForEach(found, TakeAll);
                return !Proven;
            });
    }

    private void TakeAll(List<List<ColumnUse>> plans)
    {
        foreach (var uses in plans)
        {
            Take(uses);
            uses.ForEach(use => _pool.Add(use.Column));
        }
    }

    private static long PriceDivisor(Model model) =>
        Enumerable.Range(0, model.Stocks.Length).Aggregate(0L, (divisor, s) =>
            (long)BigInteger.GreatestCommonDivisor(divisor, model.Stock(s).Price));

    private void RaiseBound(long bound)
    {
        // Every plan's price is a sum of prices, so a multiple of their common divisor.
        long whole = _priceDivisor <= 1 || bound == long.MaxValue ? bound : (bound + _priceDivisor - 1) / _priceDivisor * _priceDivisor;
        _proof.Claim(whole);
        if (whole > Bound)
        {
            Bound = Math.Min(whole, Spent);
            Report();
        }
    }

    /// <summary>Tells how far it is; where the demand is known to be out of reach there is neither a plan nor a price to tell.</summary>
    private void Report()
    {
        if (Bound < long.MaxValue)
        {
            _progress?.Report(new CuttingProgress(Missing == 0 ? Spent : null, Bound));
        }
    }

    /// <summary>Takes a plan if it is better than the best: fewer pieces missing, then cheaper.</summary>
    /// <returns>The price of the best; <see cref="long.MaxValue"/> while there is none.</returns>
    private long Take(IEnumerable<ColumnUse> uses)
    {
        var (whole, missing) = ExactDemand.Of(uses.Where(use => _model.CanCut(use.Column.Block)), _model);
        long price = whole.Sum(u => _model.Stock(u.Column.Stock).Price * u.Copies);
        if (missing < Missing || (missing == Missing && price < Spent))
        {
            (Best, Missing, Spent) = (whole, missing, price);
            Report();
        }

        return Missing == 0 ? Spent : long.MaxValue;
    }

    /// <summary>Rounds the relaxation's solution down where that was put off and is still of use.</summary>
    private void RoundDownOnce()
    {
        if (_roundDown is { } roundDown && !Proven)
        {
            _roundDown = null;
            roundDown();
        }
    }

    /// <summary>The whole part of the relaxation's solution, and a fill of what it leaves.</summary>
    private void RoundDown(MasterSolution? solution)
    {
        int[] open = [.. _model.Demand];
        int[] left = [.. _box.Most];
        var uses = new List<ColumnUse>();
        foreach (var (column, copies) in (solution?.Uses ?? []).OrderByDescending(u => u.Copies))
        {
            int whole = Math.Min((int)Math.Floor(copies + 1e-6), left[column.Stock]);
            uses.AddRange(whole > 0 ? [new ColumnUse(column, whole)] : []);
            StockBox.TakeOff(left, column.Stock, whole);
            column.TakeOff(open, whole);
        }

        Take([.. uses, .. _fill.Fill(open, left, _duals)]);
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
            var sheets = Best.SelectMany(use => Enumerable.Repeat(use.Column, use.Copies)).OrderByDescending(Filled);
            Improve(EmptiestShare, sheets.SkipLast(emptiest).Select(column => new ColumnUse(column, 1)));
        }
    }

    private double Filled(Column column) =>
        column.Counts.Select((count, t) => count * _model.PieceArea(t)).Sum() / _model.StockArea(column.Stock);

    private void Improve(int share, IEnumerable<ColumnUse> uses)
    {
        if (Proven || Missing > 0 || !_model.HasOddSizes || _model.IsLimited || !ManyOrders.CanHold(_model))
        {
            return;
        }

        var (kept, _) = ExactDemand.Of(uses, _model);
        ManyOrders.ImproveRest(_model, kept, new ManyRequest(Spent, Bound, _work.Left / share, Seed: 1), _work, found => Take(found));
    }

    /// <summary>Orders of a few pieces are decided for good.</summary>
    private void SolveSmallOrder()
    {
        if (Proven || _model.IsLimited || SmallOrder.Solve(_model, Missing == 0 ? Spent : long.MaxValue, _work) is not { } cheapest)
        {
            return;
        }

        if (cheapest.Count > 0)
        {
            Take(cheapest);
        }

        if (Missing == 0)
        {
            _proof.Exhausted(Spent);
        }

        RaiseBound(Missing == 0 ? Spent : Bound);
    }

    /// <summary>Where the bound's number of sheets holds next to nothing more than is wanted, it is decided for good.</summary>
    private void DecideTightSheets()
    {
        if (Proven || _model.Stocks.Length != 1 || _model.Stock(0).Price == 0)
        {
            return;
        }

        int sheets = (int)(Bound / _model.Stock(0).Price);
        if (sheets == 0 || sheets > _box.Most[0])
        {
            return;
        }

        var tight = TightCover.Solve(_model, [sheets], [], _work);
        if (tight.Plan is { } plan)
        {
            Take(plan);
        }

        if (tight.Impossible)
        {
            _proof.Exclude([sheets], ExclusionSource.AllTightPatterns);
            RaiseBound(Bound + 1);
        }
    }

    /// <summary>
    /// The cheapest counts first: a look for a plan in each. A plan found ends it, and the counts that stand open before
    /// it are then decided, cheapest first.
    /// </summary>
    private void SearchCounts(long reserve = 0)
    {
        var counts = new CountSearch(_model, _relaxation, _box, _work, _proof);
        var open = new Queue<OpenCounts>();
        long reached = 0;
        for (int tries = 0; tries < MostMixes && !Proven && !_work.Exhausted && _work.Left > reserve; tries++)
        {
            var mix = counts.Next(MixRounds);
            reached = mix.Bound;
            if (open.Count == 0)
            {
                RaiseBound(mix.Bound);
            }

            if (mix.Counts is null || (Missing == 0 && mix.Bound >= Spent))
            {
                break;
            }

            Look(mix.Counts, mix.Bound, counts, open);
            counts.Exclude(mix.Counts);
            RoundDownOnce();
        }

        RoundDownOnce();
        Decide(open, reached, reserve);
    }

    private void Look(int[] mix, long price, CountSearch counts, Queue<OpenCounts> open)
    {
        if (_model.IsLimited)
        {
            _within.Look(mix, price);
            open.Enqueue(new OpenCounts(mix, price, null, null));
            return;
        }

        var cover = TightCover.Solve(_model, mix, _relaxation.Inequalities, _work);
        if (cover.Plan is null && !cover.Impossible && _decision is null)
        {
            _within.Look(mix, price);
            open.Enqueue(new OpenCounts(mix, price, null, null));
            return;
        }

        var answer = new CountsAnswer(cover.Plan, null, cover.Impossible);
        var packing = answer.IsDecided ? null : CountsPacking.Of(_model, _pool, mix, price);
        answer = answer.IsDecided ? answer : LookCloser(mix, price, packing);
        Take(answer.Plan ?? []);
        if (answer.Tight is { } inequality)
        {
            counts.Add(inequality);
        }

        if (answer.Impossible)
        {
            _proof.Exclude(mix, ExclusionSource.AllTightPatterns);
        }
        else if (answer.Plan is null)
        {
            open.Enqueue(new OpenCounts(mix, price, answer.Tight, packing));
        }
    }

    /// <summary>
    /// A look at patterns known and drawn, then ruin and recreate and another such look, rounding where that was put off, and a look for
    /// which patterns are priced within the demand: the dearest of them.
    /// </summary>
    private CountsAnswer LookCloser(int[] mix, long price, CountsPacking? packing)
    {
        bool briefly = packing is not null || _roundDown is not null;
        var answer = _decision!.Look(mix, briefly);
        if (packing is not null && !answer.IsDecided)
        {
            answer = PackAndLook(mix, packing, PackedInLook);
        }

        if (!briefly || answer.IsDecided)
        {
            return answer;
        }

        RoundDownOnce();
        return Missing == 0 && Spent <= price ? answer : _decision.Look(mix);
    }

    /// <summary>Decides the counts that stand open, cheapest first, as long as that raises the bound.</summary>
    /// <param name="open">The counts.</param>
    /// <param name="reached">No other counts are cheaper.</param>
    /// <param name="reserve">Work to leave.</param>
    private void Decide(Queue<OpenCounts> open, long reached, long reserve)
    {
        while (_decision is not null && !Proven && !_work.Exhausted && _work.Left > reserve && open.TryDequeue(out var first))
        {
            var answer = first.Tight is { } tight ? Decide(first, tight) : CountsAnswer.Unknown;
            Take(answer.Plan ?? []);
            if (answer.Plan is not null)
            {
                return;
            }

            if (!answer.Impossible)
            {
                _within.Look(first.Counts, first.Price);
                return;
            }

            _proof.Exclude(first.Counts, ExclusionSource.AllTightPatterns);
            RaiseBound(Math.Min(Spent, open.TryPeek(out var next) ? next.Price : reached));
        }
    }

    /// <summary>
    /// Looks at counts again before they are decided: dearer counts have brought patterns to the pool since, and so does every turn of
    /// packing; often they hold a plan of these.
    /// </summary>
    private CountsAnswer Decide(OpenCounts first, DualVector tight)
    {
        var answer = _decision!.Look(first.Counts, briefly: true);
        for (int turn = 0; turn < PackingTurns && first.Packing is { } packing && !answer.IsDecided; turn++)
        {
            answer = PackAndLook(first.Counts, packing, _work.Left / PackingShare);
        }

        return answer.IsDecided ? answer : _decision.Decide(first.Counts, tight);
    }

    /// <summary>Ruin and recreate within counts, and a brief look at what it leaves in the pool.</summary>
    private CountsAnswer PackAndLook(int[] counts, CountsPacking packing, long units) => packing.Advance(units, _work) is { } packed
        ? new CountsAnswer(packed, null, false)
        : _decision!.Look(counts, briefly: true);

    /// <summary>Counts in which a plan was looked for and not found.</summary>
    /// <param name="Counts">Counts per stock.</param>
    /// <param name="Price">Their price.</param>
    /// <param name="Tight">The values under which they are tight; null where none are known.</param>
    /// <param name="Packing">Ruin and recreate within them as far as it got; null where it is not used.</param>
    private sealed record OpenCounts(int[] Counts, long Price, DualVector? Tight, CountsPacking? Packing);
}
