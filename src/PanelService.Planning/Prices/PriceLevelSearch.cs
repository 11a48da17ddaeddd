// Problem: the price of a good depends on how many of it are bought; which level of each good's prices makes a plan cheapest?
// Idea:    a level "from c on at p each" is c of them paid for whatever is cut, and any more at p. For one choice of levels that
//          is an ordinary problem of the engine, whose price is nowhere below the true one and equal to it where the
//          choice is the plan's own. So the cheapest over all choices is the cheapest there is, and the least of their bounds
//          is a bound. First everything at its lowest price, whatever the number: where the plan of that really costs so much,
//          nothing more is looked at. Choices whose paid-for part alone costs as much as the best plan are left out.
// Cost:    one run of the engine for each choice looked at.
// Not:     past a number of choices the rest is bounded by what is paid for and by the first run, and the outcome says so.
using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Prices;

/// <summary>Chooses a level of every good's prices.</summary>
/// <typeparam name="T">The material's plan.</typeparam>
internal sealed class PriceLevelSearch<T>
    where T : MaterialPlan
{
    private const int MostListed = 4000;

    private readonly ImmutableArray<PriceLevels> _goods;
    private readonly Func<LevelChoice, T> _run;
    private readonly int _mostRuns;
    private readonly CancellationToken _cancellation;

    private PriceLevelSearch(ImmutableArray<PriceLevels> goods, Func<LevelChoice, T> run, int mostRuns, CancellationToken cancellation) =>
        (_goods, _run, _mostRuns, _cancellation) = (goods, run, mostRuns, cancellation);

    /// <summary>Chooses.</summary>
    /// <param name="goods">Every good's prices.</param>
    /// <param name="run">
    /// Plans at a choice: what it spends is what the plan truly costs, its bound is of plans at this choice, paid-for
    /// goods included in both.
    /// </param>
    /// <param name="mostRuns">At most so many choices are planned.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The cheapest plan, with the bound over all choices.</returns>
    public static T Cheapest(
        ImmutableArray<PriceLevels> goods, Func<LevelChoice, T> run, int mostRuns, CancellationToken cancellation) =>
        new PriceLevelSearch<T>(goods, run, mostRuns, cancellation).Search();

    private T Search()
    {
        var best = _run(new LevelChoice([.. _goods.Select(good => new PaidLevel(0, good.Lowest))]));
        var floor = best.Outcome.LeastPossible;
        if (best.Outcome.Complete && best.Outcome.Spent == floor)
        {
            return best;
        }

        return Search(best, floor);
    }

    private T Search(T best, Money floor)
    {
        var (choices, all) = List();
        var least = new Money(long.MaxValue);
        bool open = !all;
        int runs = 0;
        foreach (var choice in choices)
        {
            if (best.Outcome.Complete && choice.Paid >= best.Outcome.Spent)
            {
                continue;
            }

            if (runs++ >= _mostRuns || _cancellation.IsCancellationRequested)
            {
                open = true;
                least = Least(least, choice.Paid);
                continue;
            }

            var plan = _run(choice);
            bool better = plan.Outcome.Complete && (!best.Outcome.Complete || plan.Outcome.Spent < best.Outcome.Spent);
            best = better ? plan : best;

            // What could not be placed may only not have been found: then nothing but what is paid for is known.
            open |= !plan.Outcome.Complete;
            least = Least(least, plan.Outcome.Complete ? plan.Outcome.LeastPossible : choice.Paid);
        }

        return WithBound(best, floor, all ? least : floor, open);
    }

    private static T WithBound(T best, Money floor, Money least, bool open)
    {
        if (!best.Outcome.Complete)
        {
            return best;
        }

        var bound = Least(best.Outcome.Spent, least < floor ? floor : least);
        return best with { Outcome = best.Outcome with { LeastPossible = bound, PricesOpen = open && bound < best.Outcome.Spent } };
    }

    private static Money Least(Money a, Money b) => a <= b ? a : b;

    /// <summary>Every choice, what is paid for rising; false where there are too many to list.</summary>
    private (List<LevelChoice> Choices, bool All) List()
    {
        List<LevelChoice> choices = [new([])];
        foreach (var good in _goods)
        {
            choices = [.. choices.SelectMany(choice => good.Levels.Select(level => choice.And(new PaidLevel(level.Count, level.Price))))];
            if (choices.Count > MostListed)
            {
                return ([new([.. _goods.Select(one => new PaidLevel(0, one.Levels[0].Price))])], false);
            }
        }

        return ([.. choices.OrderBy(choice => choice.Paid)], true);
    }
}

/// <summary>A level of one good's prices.</summary>
/// <param name="Count">So many are paid for.</param>
/// <param name="Price">The price of each, and of any more.</param>
internal sealed record PaidLevel(int Count, Money Price);

/// <summary>A level for every good.</summary>
/// <param name="Levels">Per good.</param>
internal sealed record LevelChoice(ImmutableArray<PaidLevel> Levels)
{
    /// <summary>What is paid for.</summary>
    public Money Paid { get; } = Levels.Aggregate(Money.Zero, (sum, level) => sum + (level.Price * level.Count));

    /// <summary>With one more good.</summary>
    /// <param name="level">Its level.</param>
    public LevelChoice And(PaidLevel level) => new(Levels.Add(level));
}
