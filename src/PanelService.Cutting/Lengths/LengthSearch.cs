// The way of a search:
//   1. relax the whole problem: values of the pieces, and from these the first inequalities (RootRelaxation);
//   2. the cheapest counts of goods that no inequality forbids (GoodsChoice), relaxed for just these counts
//      (CoverRelaxation): no room, and they are forbidden by a new inequality; else a plan is looked for (FixedGoods: by
//      ruin and recreate, section by section, by lists of all good patterns).
//      Found: it is the cheapest, unless cheaper counts were left open;
//   3. where the first few counts stay open, a plan from counts with some room to spare says how far to look;
//   4. counts left open are looked at again with more and more work, the cheapest first.
// Source:  Benders decomposition (Numerische Mathematik 4, 1962) over counts of goods.
// Cost:    the work allowed; a plan with room to spare, and sections where a jigsaw stays open, by work of their own.
// Not:     always proven: counts that stay open to the end hold the bound down to their price.
using PanelService.Cutting.Exact;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>Searches the least price.</summary>
internal sealed class LengthSearch
{
    private const int MostRounds = 400;
    private const int FirstTries = 3;
    private const int LastRounds = 4;

    // Percent of the work that the first relaxations leave for making plans.
    private const long KeptBack = 60;

    // With more than this to spare there are too many patterns to list them all, unless there are few pieces.
    private const double MostShare = 1.04;
    private const int FewPieces = 30;
    private const double TightShare = 1.0025;

    private static readonly double[] _margins = [0.01, 0.02, 0.04, 0.07, 0.12, 0.2, 0.35, 0.6, 1];
    private static readonly long[] _look = [20_000, 100_000, 300_000];
    // Sections of middle length find most plans at once; some need long ones, some come out of short ones alone.
    private static readonly double[][] _reaches = [[4], [4, 100, 2], [4, 100, 1.5]];

    private static readonly MixEffort[] _mix =
    [
        new(new FillEffort(2, 300, 400, 0.05), new FillEffort(1, 200, 300, 0.03), 3),
        new(new FillEffort(3, 500, 600, 0.1), new FillEffort(2, 200, 300, 0.05), 12),
        new(new FillEffort(4, 800, 1000, 0.3), new FillEffort(2, 300, 400, 0.1), 16),
    ];

    private static readonly JigsawEffort[] _jigsaw = [new(1000, 300), new(3000, 0)];

    // A jigsaw that was not put together without waste: as much more of the cloth, in thousandths, until sections do.
    private static readonly int[] _rooms = [10, 15, 30];
    private const long SectionUnits = 2_500_000;
    private static readonly TightEffort[] _decide = [new(150_000, 500_000), new(400_000, 1_500_000), new(700_000, 3_000_000)];

    private readonly GoodsModel _goods;
    private readonly WorkMeter _work;
    private readonly IProgress<CuttingProgress>? _progress;
    private readonly SectionPool _pool;
    private readonly CoverRelaxation _relaxation;
    private readonly GoodsChoice _choice;
    private readonly List<OpenCounts> _open = [];
    private readonly List<int[]> _impossible = [];
    private long _others;
    private bool _sectionsTried;

    /// <summary>Starts.</summary>
    /// <param name="goods">The goods.</param>
    /// <param name="below">Only plans cheaper than this are of interest.</param>
    /// <param name="work">The work allowed.</param>
    /// <param name="progress">Told whenever plan or bound gets better; null: nobody listens.</param>
    public LengthSearch(GoodsModel goods, long below, WorkMeter work, IProgress<CuttingProgress>? progress)
    {
        (_goods, _work, _progress, Spent) = (goods, work, progress, below);
        _pool = new SectionPool(goods);
        _relaxation = new CoverRelaxation(goods, _pool, work);
        _choice = new GoodsChoice(goods);
    }

    /// <summary>What is cut from what; null where no plan below the price known was found.</summary>
    public List<FilledGood>? Best { get; private set; }

    /// <summary>The price of the best plan, or the price known.</summary>
    public long Spent { get; private set; }

    /// <summary>No plan costs less.</summary>
    public long Bound { get; private set; }

    /// <summary>What the bound rests on.</summary>
    public LengthProof Proof => new(
        Bound,
        [.. _choice.Inequalities.Select(one => one.Stated(_goods))],
        [.. _impossible.Select(_goods.Model.ByStock)]);

    /// <summary>Runs.</summary>
    public void Run()
    {
        _work.Reserve = _work.Left * KeptBack / 100;
        var rounds = RootRelaxation.Solve(_goods, _relaxation, _pool, _work);

        // The first round's values are the areas: where nothing is wasted no later ones say more, and they may say less.
        foreach (var inequality in rounds.Take(1).Concat(rounds.TakeLast(LastRounds).Reverse()).Distinct())
        {
            _choice.Add(inequality);
        }

        bool complete = TryCheapest(FirstTries);
        _work.Reserve = 0;
        if (!complete)
        {
            TryWithRoom();
            TryCheapest(int.MaxValue);
        }

        for (int level = 1; level < _look.Length; level++)
        {
            TryOpen(level);
        }
    }

    /// <summary>Tries counts, the cheapest first.</summary>
    /// <param name="most">Ends when so many are open.</param>
    /// <returns>Whether no cheaper counts are left but those open.</returns>
    private bool TryCheapest(int most)
    {
        for (int round = 0; round < MostRounds && !_work.Exhausted; round++)
        {
            var choice = _choice.Cheapest(Spent);
            _others = choice.Bound;
            RaiseBound();
            if (choice.Counts is not { } counts)
            {
                return choice.Complete;
            }

            if (Relax(counts) is not { } answer)
            {
                continue;
            }

            if (TryLevel(new OpenCounts(counts, choice.Bound, answer, new FixedGoods(_goods, counts)), 0))
            {
                RaiseBound();
                return true;
            }

            if (_open.Count >= most)
            {
                return false;
            }
        }

        return false;
    }

    /// <summary>Counts with room to spare, more and more of it until a plan is found: where none is known it may take work of its own.</summary>
    private void TryWithRoom()
    {
        foreach (double margin in _margins)
        {
            var own = Spent == long.MaxValue ? new WorkMeter(_look[1], _work.Cancellation) : _work;
            if (_choice.Cheapest(Spent, margin).Counts is { } counts
                && new FixedGoods(_goods, counts).Look(_look[1], seed: 1, own) is { } plan)
            {
                Take(plan);
                return;
            }
        }
    }

    private RelaxedCover? Relax(int[] counts)
    {
        var answer = _relaxation.Solve(counts);
        if (answer.Forbids is { } forbids)
        {
            _choice.Add(forbids);
            return null;
        }

        return answer;
    }

    /// <summary>Looks again at what is open, the cheapest first.</summary>
    private void TryOpen(int level)
    {
        bool decided = true;
        foreach (var open in _open.OrderBy(one => one.Price).ToList())
        {
            if (open.Price < Spent && !_work.Exhausted)
            {
                _open.Remove(open);
                TryLevel(open, level, decided);
                decided &= !_open.Contains(open);
            }
        }

        RaiseBound();
    }

    /// <summary>Looks for a plan within counts, and whether there can be one.</summary>
    /// <returns>Whether a plan was found.</returns>
    private bool TryLevel(OpenCounts open, int level, bool decide = true)
    {
        _choice.Exclude(open.Counts);
        var problem = open.Problem;
        if (level == 0 && PutTogether(problem) is { } whole)
        {
            Take(whole);
            return true;
        }

        if (problem.IsJigsaw)
        {
            _open.Add(open);
            TrySections(open.Counts);
            return false;
        }

        bool tight = open.Answer.Share <= TightShare;
        decide &= open.Answer.Share <= MostShare || _goods.Pieces <= FewPieces;
        if (decide && tight && Decide(problem, open, level) is { } early)
        {
            return early;
        }

        if (Look(problem, level) is { } plan)
        {
            Take(plan);
            return true;
        }

        if (decide && !tight && Decide(problem, open, level) is { } late)
        {
            return late;
        }

        _open.Add(open);
        return false;
    }

    /// <summary>A plan without waste; where nothing else will find one nothing is kept back for that.</summary>
    private List<FilledGood>? PutTogether(FixedGoods problem)
    {
        _work.Reserve = problem.IsJigsaw ? 0 : _work.Reserve;
        return _jigsaw.Select(effort => problem.PutTogether(effort, _work)).FirstOrDefault(plan => plan is not null);
    }

    /// <summary>A plan from a little more of the only good, by sections: once, for the first counts that stay open, by work of its own.</summary>
    private void TrySections(int[] counts)
    {
        if (_sectionsTried)
        {
            return;
        }

        _sectionsTried = true;
        foreach (int room in _rooms)
        {
            int[] more = [.. counts.Select((count, g) => Math.Min(_goods.Goods[g].Most, count + Math.Max(Math.Sign(count), count * room / 1000)))];
            var own = new WorkMeter(long.MaxValue, _work.Cancellation) { Cores = _work.Cores };
            if (new FixedGoods(_goods, more).PutSections(SectionUnits, own) is { } plan)
            {
                Take(plan);
                return;
            }
        }
    }

    private List<FilledGood>? Look(FixedGoods problem, int level) =>
        problem.Look(_look[level], (ulong)level + 1, _work)
        ?? problem.Mix(_reaches[level], _mix[level], (ulong)level + 1, _work);

    /// <summary>Decides whether there is a plan within counts; null where that stays unknown.</summary>
    private bool? Decide(FixedGoods problem, OpenCounts open, int level)
    {
        if (open.Answer.Solution is not { } solution)
        {
            return null;
        }

        var (plan, impossible) = problem.Decide(solution.Values, _decide[level], _work);
        if (plan is not null)
        {
            Take(plan);
            return true;
        }

        if (impossible)
        {
            _impossible.Add(open.Counts);
        }

        return impossible ? false : null;
    }

    private void Take(List<FilledGood> plan)
    {
        long price = plan.Sum(filled => filled.Price(_goods));
        if (price < Spent)
        {
            (Best, Spent) = (plan, price);
            _open.RemoveAll(open => open.Price >= price);
            Report();
        }
    }

    /// <summary>No plan is cheaper than the cheapest counts not yet looked at, or left open.</summary>
    private void RaiseBound()
    {
        long least = Math.Min(_others, _open.Select(open => open.Price).DefaultIfEmpty(long.MaxValue).Min());
        if (Math.Min(least, Spent) > Bound)
        {
            Bound = Math.Min(least, Spent);
            Report();
        }
    }

    /// <summary>Tells how far it is; where no counts are left there is neither a plan nor a price to tell.</summary>
    private void Report()
    {
        if (Bound < long.MaxValue)
        {
            _progress?.Report(new CuttingProgress(Spent == long.MaxValue ? null : Spent, Bound));
        }
    }

    private sealed record OpenCounts(int[] Counts, long Price, RelaxedCover Answer, FixedGoods Problem);
}
