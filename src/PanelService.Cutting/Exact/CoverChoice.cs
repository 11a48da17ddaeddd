// Problem: which of the patterns given, from given counts of stocks, hold every piece at least as often as wanted?
// Idea:    a few stocks are chosen for one after another (CoverSearch): it sees at once what cannot be. Where there are more, or
//          it gives up, an integer programme (PoolProgramme): it weighs all stocks together, and where no fractions of
//          the patterns cover the demand it says so at once.
// Source:  see the parts.
// Cost:    milliseconds for some hundred patterns; with thousands the programme finds little in the time it has.
// Not:     always decided.
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Exact;

/// <summary>Chooses among patterns by whichever way suits the counts.</summary>
/// <param name="counts">At most so many of each stock; none unlimited.</param>
/// <param name="work">Where work is counted.</param>
internal sealed class CoverChoice(int[] counts, WorkMeter work)
{
    /// <summary>So few stocks are chosen for one after another.</summary>
    public const int FewStocks = 10;

    // Of 500 mixed orders three or four more are proven where the programme begins at once; of 25 large ones one or two less.
    private const int MostAtOnce = 40;

    /// <summary>Whether whole uses of patterns have gone before: the order has many sheets then.</summary>
    public bool OfRest { get; init; }

    /// <summary>Chooses.</summary>
    /// <param name="patterns">The patterns to choose from.</param>
    /// <param name="vector">The worth of one of each type, and the most that a pattern of each stock is worth.</param>
    /// <param name="demand">How many of each type are wanted.</param>
    /// <param name="units">The work allowed for each way.</param>
    public CoverAnswer Choose(IReadOnlyList<Column> patterns, DualVector vector, int[] demand, long units)
    {
        long spare = (long)vector.Spare(demand, counts);
        if (counts.Sum() <= FewStocks && CoverSearch.Holds(demand))
        {
            var search = new CoverSearch(patterns, vector, work) { MostUnits = units };
            if (search.Solve(demand, counts, spare) is { } covered)
            {
                return new CoverAnswer(covered, covered ? search.Uses() : null);
            }
        }

        var effort = new PoolEffort(units * 1e-6, AtOnce: !OfRest && counts.Sum() <= MostAtOnce);
        return work.Exhausted ? new CoverAnswer(null, null) : PoolProgramme.Cover(patterns, demand, counts, effort, work);
    }
}
