namespace PanelService.Planning.SawRun.Graph;

/// <summary>Choices of some bands from several of each sort.</summary>
internal static class BandChoices
{
    /// <summary>Every way of taking some and leaving some, of each pair of opposite ways only one.</summary>
    /// <param name="counts">How many there are of each sort.</param>
    public static IEnumerable<int[]> Of(int[] counts)
    {
        int[] taken = new int[counts.Length];
        while (Advance(taken, counts))
        {
            if (IsSmallerHalf(taken, counts))
            {
                yield return [.. taken];
            }
        }
    }

    private static bool Advance(int[] taken, int[] counts)
    {
        for (int i = 0; i < counts.Length; i++)
        {
            if (taken[i] < counts[i])
            {
                taken[i]++;
                return true;
            }

            taken[i] = 0;
        }

        return false;
    }

    private static bool IsSmallerHalf(int[] taken, int[] counts)
    {
        for (int i = 0; i < counts.Length; i++)
        {
            int order = taken[i].CompareTo(counts[i] - taken[i]);
            if (order != 0)
            {
                return order < 0;
            }
        }

        return true;
    }
}
