// Problem: of all plans of the same price out of the same stocks, the one whose largest kept leftovers are worth most. Of every
//          sheet the largest counts; of two plans that one is better whose dearest is dearer, then the next; of sheets that cost
//          nothing, whose largest is larger, cut or whole.
// Idea:    of a small order every plan is looked at (LeftoverChoice). Of a larger one, and of any whose sheets have limits, strips
//          right across a stock are made larger (PartSearch), and then the pieces of the sheet that leaves most are arranged anew
//          (LeftoverChoice again, of that sheet alone). Of what costs nothing small stocks are rather cut into than large ones
//          (SparedStocks), before and after. Whatever is found is laid out as it will be cut, and stands where that leaves more.
//          Arranged so for its leftover every sheet of a large order took a setting in nine more, for pieces that are not the
//          plan's largest.
// Source:  cutting stock with usable leftovers: Cherri, Arenales and Yanasse, EJOR 196 (2009), there by rules of thumb.
// Cost:    see the parts: mostly some milliseconds for a small order, up to two tenths of a second for a large one.
// Not:     the best of a large order, where pieces are exchanged between sheets only for a strip; nor other stocks of the same
//          cost together, but for those that cost nothing.
using System.Collections.Immutable;
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Leftovers;

/// <summary>Makes the largest leftovers of a plan larger at no price.</summary>
public sealed class LeftoverPlanner
{
    private const int MostStocks = 2;
    private const int MostArranged = 4;

    // About a tenth of a second.
    private const long Units = 100_000;

    private readonly CuttingProblem _problem;
    private readonly Func<int, SheetFrame?> _frameOf;
    private readonly (long Width, long Height) _smallest;
    private readonly CancellationToken _cancellation;
    private CuttingResult _given;
    private CuttingResult _best;
    private KeptPieces? _kept;

    private LeftoverPlanner(CuttingProblem problem, CuttingResult result, Func<int, SheetFrame?> frameOf, CancellationToken cancellation)
    {
        (_problem, _given, _best, _frameOf, _cancellation) = (problem, result, result, frameOf, cancellation);
        _smallest = result.Patterns.Select(use => frameOf(use.Stock)).FirstOrDefault(frame => frame is not null)?.SmallestKept ?? default;
        _kept = KeptPieces.Of(problem, result, frameOf);
    }

    /// <summary>Looks for a plan of the same price with larger leftovers.</summary>
    /// <param name="problem">What was planned.</param>
    /// <param name="result">The plan; every piece in it.</param>
    /// <param name="frameOf">The sheets that the stocks are, with what of them is kept: the same of all; null: it is not cut.</param>
    /// <param name="cancellation">Ends it; what was found so far stands.</param>
    /// <returns>A plan of the same price, out of the same stocks but for those that cost nothing; <paramref name="result"/> itself where none leaves more.</returns>
    public static CuttingResult Gather(
        CuttingProblem problem, CuttingResult result, Func<int, SheetFrame?> frameOf, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(frameOf);
        return !result.Complete || result.StoppedEarly || cancellation.IsCancellationRequested
            ? result
            : new LeftoverPlanner(problem, result, frameOf, cancellation).Gather();
    }

    private CuttingResult Gather()
    {
        Offer(SparedStocks.Spare(_problem, _best, _cancellation));
        _given = _best;

        // What the fence or the supplier's cuts leave of a plan may be less than what strips leave.
        if (!Offer(LeftoverChoice.Of(_problem, _best, _smallest, new WorkMeter(Units, _cancellation))) || IsLimited)
        {
            Offer(WithStrips());
            ArrangeDearest();
        }

        if (!ReferenceEquals(_best, _given))
        {
            Offer(SparedStocks.Spare(_problem, _best, _cancellation));
        }

        foreach (var free in _best.Patterns.Where(use => _problem.Stocks[use.Stock].Price == 0).Take(MostArranged))
        {
            Arrange(free);
        }

        return _cancellation.IsCancellationRequested ? _best with { StoppedEarly = true } : _best;
    }

    /// <summary>Whether a sheet may have to be cut otherwise than is best for its leftover.</summary>
    private bool IsLimited => _best.Patterns.Any(use => _frameOf(use.Stock) is { First: not null } or { Fence: not null });

    /// <summary>Takes a plan where it is better.</summary>
    /// <returns>Whether there was one that can be cut.</returns>
    private bool Offer(CuttingResult? plan)
    {
        if (plan is null || KeptPieces.Of(_problem, plan, _frameOf) is not { } kept)
        {
            return false;
        }

        if (_kept is null || kept.IsBetterThan(_kept))
        {
            (_best, _kept) = (plan, kept);
        }

        return true;
    }

    private CuttingResult WithStrips()
    {
        var plan = _given;
        var kept = ImmutableArray<Part>.Empty;
        int[] dearest =
        [
            .. plan.Patterns.Select(use => use.Stock).Distinct()
                .Where(s => _problem.Stocks[s].Price > 0)
                .OrderByDescending(s => _problem.Stocks[s].Price).ThenBy(s => s)
                .Take(MostStocks),
        ];
        foreach (int stock in dearest.TakeWhile(_ => !plan.StoppedEarly))
        {
            var search = new PartSearch(_problem, new Target(stock, _smallest, kept), _cancellation);
            plan = search.Gather(plan);
            kept = kept.Add(search.LargestOf(plan));
        }

        return plan with { StoppedEarly = false };
    }

    /// <summary>The sheet that leaves most, with its pieces arranged for that.</summary>
    private void ArrangeDearest()
    {
        var dearest = _best.Patterns.Where(use => _frameOf(use.Stock) is not null)
            .MaxBy(use => KeptPieces.Of(_problem, _best with { Patterns = [use] }, _frameOf)?.Worths[0] ?? 0);
        if (dearest is not null)
        {
            Arrange(dearest);
        }
    }

    private void Arrange(PatternUse use)
    {
        int[] counts = BlockMath.Counts(use.Block, _problem.Pieces.Length);
        int[] kinds = [.. Enumerable.Range(0, counts.Length).Where(i => counts[i] > 0)];
        var alone = _problem with
        {
            Stocks = [.. _problem.Stocks.Select(stock => stock with { Price = Math.Max(1, stock.Price) })],
            Pieces = [.. kinds.Select(i => _problem.Pieces[i] with { Demand = counts[i] })],
        };
        var sheet = _best with { Patterns = [use with { Copies = 1 }] };
        if (LeftoverChoice.Of(alone, sheet, _smallest, new WorkMeter(Units, _cancellation)) is { Patterns: [var other] })
        {
            Offer(_best with { Patterns = _best.Patterns.Replace(use, other with { Block = BlockMath.Renamed(other.Block, kinds), Copies = use.Copies }) });
        }
    }
}
