// Problem: whole uses of a relaxation's patterns leave some ten sheets, used in parts. Which patterns cover what these must hold?
// Idea:    round at random: a pattern used in part is taken whole with that part as its chance, until three sheets are left. The
//          patterns that were close in fractions stay balanced so, and a search (CoverSearch) sees in some microseconds whether
//          three of all patterns known cover the rest. No: round anew. One search of the ten sheets keeps to its first choices for
//          longer than there is time.
// Source:  randomised rounding: Raghavan and Thompson, Combinatorica 7 (1987).
// Cost:    some hundred microseconds a trial.
// Not:     a proof that there is none; patterns that no one has drawn are not found.
using PanelService.Cutting.Many;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Exact;

/// <summary>Covers what whole uses leave: all but a few sheets by chance, these by search.</summary>
internal sealed class RandomRounding
{
    /// <summary>So many stocks are left to the search.</summary>
    public const int Searched = 3;

    private const int Trials = 400;
    private const long UnitsOfSearch = 500;
    private const long UnitsOfAll = 40_000;

    // So many patterns may be drawn for a sheet of one trial: what wastes too much is drawn again.
    private const int DrawsOfSheet = 20;

    // What chance may waste of what there is to waste: the search needs room too.
    private const double WastedByChance = 0.5;

    // Chances of a pattern that was taken, or would waste too much, are cut to these parts.
    private const double AfterTaken = 0.1;
    private const double AfterRefused = 0.5;

    private readonly DualVector _vector;
    private readonly CoverSearch _search;
    private readonly WorkMeter _work;
    private readonly SeededRandom _random = new(7);

    /// <summary>Prepares trials.</summary>
    /// <param name="patterns">The patterns to choose from.</param>
    /// <param name="vector">The worth of one of each type, and the most that a pattern of each stock is worth.</param>
    /// <param name="work">Where work is counted.</param>
    public RandomRounding(IReadOnlyList<Column> patterns, DualVector vector, WorkMeter work)
    {
        (_vector, _work) = (vector, work);
        _search = new CoverSearch(patterns, vector, work) { MostUnits = UnitsOfSearch };
    }

    /// <summary>Covers a rest.</summary>
    /// <param name="rest">What whole uses leave.</param>
    /// <param name="uses">How often the relaxation uses each pattern, the whole uses among it.</param>
    /// <returns>Patterns that cover what is open, from the stocks left; null where none were found.</returns>
    public List<ColumnUse>? Cover(WholePart rest, (Column Column, double Copies)[] uses)
    {
        (Column Column, double Part)[] parts = [.. uses.Select(use => (use.Column, PartOf(use, rest))).Where(part => part.Item2 > 1e-6)];
        if (!CoverSearch.Holds(rest.Open) || parts.Length == 0)
        {
            return null;
        }

        long end = _work.Left - UnitsOfAll;
        for (int trial = 0; trial < Trials && !_work.Exhausted && _work.Left > end; trial++)
        {
            int[] open = [.. rest.Open];
            int[] left = [.. rest.Left];
            if (Round(parts, open, left) is { } taken && Spare(open, left) is >= 0 and var spare && _search.Solve(open, left, spare) == true)
            {
                return [.. taken, .. _search.Uses()];
            }
        }

        return null;
    }

    private static double PartOf((Column Column, double Copies) use, WholePart rest) =>
        use.Copies - rest.Uses.Where(whole => whole.Column == use.Column).Sum(whole => whole.Copies);

    private long Spare(int[] open, int[] left) => (long)_vector.Spare(open, left);

    /// <summary>Takes patterns by chance until <see cref="Searched"/> stocks are left.</summary>
    /// <param name="parts">How often each pattern is used in part.</param>
    /// <param name="open">What is still wanted; what is taken is taken off.</param>
    /// <param name="left">The stocks there are; likewise.</param>
    /// <returns>What was taken; null where chance came to no end.</returns>
    private List<ColumnUse>? Round((Column Column, double Part)[] parts, int[] open, int[] left)
    {
        double[] chances = [.. parts.Select(part => part.Part)];
        long mayWaste = (long)(Spare(open, left) * WastedByChance);
        var taken = new List<ColumnUse>();
        int draws = DrawsOfSheet * left.Sum();
        for (int sheets = left.Sum(); sheets > Searched && draws > 0; draws--)
        {
            int i = Pick(chances);
            var column = parts[i].Column;
            long waste = Waste(column, open);
            if (left[column.Stock] == 0 || waste > mayWaste)
            {
                chances[i] *= AfterRefused;
                continue;
            }

            chances[i] = chances[i] > 1 ? chances[i] - 1 : chances[i] * AfterTaken;
            mayWaste -= waste;
            taken.Add(new ColumnUse(column, 1));
            left[column.Stock]--;
            sheets--;
            column.TakeOff(open, copies: 1);
        }

        return draws > 0 ? taken : null;
    }

    private int Pick(double[] chances)
    {
        double at = _random.Share() * chances.Sum();
        int i = 0;
        while (i < chances.Length - 1 && at > chances[i])
        {
            at -= chances[i++];
        }

        return i;
    }

    /// <summary>What using a pattern wastes: what it is worth less than the best, and what it holds too much.</summary>
    private long Waste(Column column, int[] open)
    {
        long waste = Math.Max(0, _vector.Loss(column));
        for (int t = 0; t < open.Length; t++)
        {
            waste += (long)Math.Max(0, column.Counts[t] - open[t]) * _vector.Values[t];
        }

        return waste;
    }
}
