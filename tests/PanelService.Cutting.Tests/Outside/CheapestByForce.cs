namespace PanelService.Cutting.Tests.Outside;

/// <summary>The least price of a tiny problem over all guillotine plans, by trying every set on every stock.</summary>
internal sealed class CheapestByForce
{
    private readonly CuttingProblem problem;
    private readonly ulong[][] sets;
    private readonly Dictionary<(ulong Left, ulong Used), long?> known = [];

    /// <summary>Prepares the sets of every stock.</summary>
    public CheapestByForce(CuttingProblem problem)
    {
        this.problem = problem;
        sets = [.. problem.Stocks.Select((stock, i) =>
            new GuillotineBruteForce(problem.Pieces, i, (int)problem.Kerf).Sets((int)stock.Width, (int)stock.Height))];
    }

    /// <summary>The least price; null where the pieces cannot all be cut.</summary>
    public long? Price()
    {
        ulong all = 0;
        for (int i = 0; i < problem.Pieces.Length; i++)
        {
            all |= (ulong)problem.Pieces[i].Demand << (8 * i);
        }

        return Price(all, 0);
    }

    // Used: how many of each limited stock are gone, eight bits a stock.
    private long? Price(ulong rest, ulong used)
    {
        if (rest == 0)
        {
            return 0;
        }

        if (known.TryGetValue((rest, used), out long? price))
        {
            return price;
        }

        long? best = null;
        for (int stock = 0; stock < sets.Length; stock++)
        {
            if (problem.Stocks[stock].Limit is { } limit && GuillotineBruteForce.Count(used, stock) >= limit)
            {
                continue;
            }

            ulong usedThen = problem.Stocks[stock].Limit is null ? used : used + (1UL << (8 * stock));
            foreach (ulong left in sets[stock].Select(set => Less(rest, set)).Where(left => left != rest).Distinct())
            {
                long? then = Price(left, usedThen) + problem.Stocks[stock].Price;
                best = then is not null && (best is null || then < best) ? then : best;
            }
        }

        return known[(rest, used)] = best;
    }

    private static ulong Less(ulong rest, ulong set)
    {
        ulong left = 0;
        for (int i = 0; i < 8; i++)
        {
            left |= (ulong)Math.Max(0, GuillotineBruteForce.Count(rest, i) - GuillotineBruteForce.Count(set, i)) << (8 * i);
        }

        return left;
    }
}
