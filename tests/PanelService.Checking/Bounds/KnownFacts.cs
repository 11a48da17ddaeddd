namespace PanelService.Checking.Bounds;

/// <summary>What has been checked so far of the counts that a plan can have.</summary>
internal sealed class KnownFacts
{
    /// <summary>Inequalities over the counts: worth per piece, caps per stock, and what they must add up to.</summary>
    public List<(IReadOnlyList<long> Values, long[] Caps, Int128 Needed)> Inequalities { get; } = [];

    /// <summary>Counts from which there is no plan, nor from fewer.</summary>
    public List<int[]> Impossible { get; } = [];

    /// <summary>Whether counts are so few that it is known that there is no plan.</summary>
    /// <param name="counts">The counts.</param>
    public bool Forbids(int[] counts) =>
        Inequalities.Exists(known => Sum(known.Caps, counts) < known.Needed) || Impossible.Exists(most => Within(counts, most));

    /// <summary>What counts hold at the most.</summary>
    /// <param name="caps">Per stock.</param>
    /// <param name="counts">Per stock.</param>
    public static Int128 Sum(IReadOnlyList<long> caps, int[] counts)
    {
        Int128 sum = 0;
        for (int s = 0; s < counts.Length; s++)
        {
            sum += (Int128)caps[s] * counts[s];
        }

        return sum;
    }

    /// <summary>Whether counts are nowhere larger than others.</summary>
    /// <param name="counts">The counts.</param>
    /// <param name="most">The others.</param>
    public static bool Within(int[] counts, IReadOnlyList<int> most)
    {
        for (int s = 0; s < counts.Length; s++)
        {
            if (counts[s] > most[s])
            {
                return false;
            }
        }

        return true;
    }
}
