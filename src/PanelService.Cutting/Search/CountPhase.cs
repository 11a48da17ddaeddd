// Problem: which counts of the stocks does the cheapest plan use, and how are they cut?
// Idea:    the cheapest counts that the relaxation allows (CountSearch), and a short look for a plan within just these
//          (TightCover, CountsDecision; of a few sheets CountsPacking). Found: proven, unless cheaper counts stand open.
//          Those are looked at again with what has come to the pool since, packed for longer and decided, cheapest first. The
//          first that could not be is packed once more, and what is then left of the work looks for a plan in it (WithinCounts).
// Source:  see the parts.
// Cost:    the work allowed.
// Not:     always proven: counts that could not be decided hold the bound down to their price.
using PanelService.Cutting.Exact;
using PanelService.Cutting.Many;

namespace PanelService.Cutting.Search;

/// <summary>Looks for a plan within the cheapest counts of stocks, and decides those that stand open.</summary>
internal sealed class CountPhase
{
    private const int MostMixes = 40;
    private const int MixRounds = 100;

    // What ruin and recreate within counts may do in each of its searches: in a look; before they are decided, in each turn, this
    // part of the work left; and where they could not be decided.
    private const long PackedInLook = 20_000;
    private const int PackingShare = 120;
    private const int PackingTurns = 3;
    private const int LongShare = 8;
    private const int LongTurns = 2;

    private readonly Model _model;
    private readonly Relaxation _relaxation;
    private readonly ColumnPool _pool;
    private readonly StockBox _box;
    private readonly WorkMeter _work;
    private readonly ProofRecord _proof;
    private readonly Incumbent _best;
    private readonly RoundDown _rounding;
    private readonly WithinCounts _within;
    private readonly CountsDecision? _decision;

    /// <summary>Makes it.</summary>
    /// <param name="model">The model.</param>
    /// <param name="relaxation">Relaxes a box; its inequalities are used.</param>
    /// <param name="state">What the whole search shares.</param>
    /// <param name="within">The long search within counts.</param>
    /// <param name="decision">Looks at counts and decides them; null where it does not suit the order.</param>
    public CountPhase(Model model, Relaxation relaxation, SearchState state, WithinCounts within, CountsDecision? decision)
    {
        (_model, _relaxation, _within, _decision) = (model, relaxation, within, decision);
        (_pool, _box, _work, _proof, _best, _rounding) = (state.Pool, state.Box, state.Work, state.Proof, state.Best, state.Rounding);
    }

    /// <summary>
    /// The cheapest counts first: a look for a plan in each. A plan found ends it, and the counts that stand open before
    /// it are then decided, cheapest first.
    /// </summary>
    /// <param name="reserve">Work to leave.</param>
    public void Run(long reserve = 0)
    {
        var counts = new CountSearch(_model, _relaxation, _box, _work, _proof);
        var open = new Queue<OpenCounts>();
        long reached = 0;
        for (int tries = 0; tries < MostMixes && !_best.IsProven && !_work.Exhausted && _work.Left > reserve; tries++)
        {
            var mix = counts.Next(MixRounds);
            reached = mix.Bound;
            if (open.Count == 0)
            {
                _best.RaiseBound(mix.Bound);
            }

            if (mix.Counts is null || mix.Bound >= _best.Below)
            {
                break;
            }

            Look(mix.Counts, mix.Bound, counts, open);
            counts.Exclude(mix.Counts);
            _rounding.CatchUp();
        }

        _rounding.CatchUp();
        Decide(open, reached, reserve);
    }

    private void Look(int[] mix, long price, CountSearch counts, Queue<OpenCounts> open)
    {
        var answer = CoverTightly(mix);
        if (!answer.IsDecided && _decision is null)
        {
            _within.Look(mix, price);
            open.Enqueue(new OpenCounts(mix, price, null, null));
            return;
        }

        var packing = answer.IsDecided ? null : CountsPacking.Of(_model, _pool, mix, price);
        answer = answer.IsDecided ? answer : LookCloser(mix, price, packing);
        _best.Take(answer.Plan ?? []);
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

    private CountsAnswer CoverTightly(int[] mix)
    {
        if (_model.IsLimited)
        {
            return CountsAnswer.Unknown;
        }

        var cover = TightCover.Solve(_model, mix, _relaxation.Inequalities, _work);
        return new CountsAnswer(cover.Plan, null, cover.Impossible);
    }

    /// <summary>
    /// A look at patterns known and drawn, then ruin and recreate and another such look, rounding where that was put off, and a look for
    /// which patterns are priced within the demand: the dearest of them.
    /// </summary>
    private CountsAnswer LookCloser(int[] mix, long price, CountsPacking? packing)
    {
        bool briefly = packing is not null || _rounding.IsPutOff;
        var answer = _decision!.Look(mix, briefly);
        if (packing is not null && !answer.IsDecided)
        {
            answer = PackAndLook(mix, packing, PackedInLook);
        }

        if (!briefly || answer.IsDecided)
        {
            return answer;
        }

        _rounding.CatchUp();
        return _best.Below <= price ? answer : _decision.Look(mix);
    }

    /// <summary>Decides the counts that stand open, cheapest first, as long as that raises the bound.</summary>
    /// <param name="open">The counts.</param>
    /// <param name="reached">No other counts are cheaper.</param>
    /// <param name="reserve">Work to leave.</param>
    private void Decide(Queue<OpenCounts> open, long reached, long reserve)
    {
        while (_decision is not null && !_best.IsProven && !_work.Exhausted && _work.Left > reserve && open.TryDequeue(out var first))
        {
            var answer = first.Tight is { } tight ? Decide(first, tight) : CountsAnswer.Unknown;
            _best.Take(answer.Plan ?? []);
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
            _best.RaiseBound(Math.Min(_best.Spent, open.TryPeek(out var next) ? next.Price : reached));
        }
    }

    /// <summary>
    /// Looks at counts again before they are decided: dearer counts have brought patterns to the pool since, and so does every turn of
    /// packing; often they hold a plan of these. What cannot be decided is packed for longer still.
    /// </summary>
    private CountsAnswer Decide(OpenCounts first, DualVector tight)
    {
        var answer = PackOn(first, _decision!.Look(first.Counts, briefly: true), PackingTurns, PackingShare);
        answer = answer.IsDecided ? answer : _decision.Decide(first.Counts, tight);
        return PackOn(first, answer, LongTurns, LongShare);
    }

    /// <summary>Packs and looks in turns until there is a plan, or known to be none.</summary>
    private CountsAnswer PackOn(OpenCounts open, CountsAnswer answer, int turns, int share)
    {
        for (int turn = 0; turn < turns && open.Packing is { } packing && !answer.IsDecided; turn++)
        {
            answer = PackAndLook(open.Counts, packing, _work.Left / share);
        }

        return answer;
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
