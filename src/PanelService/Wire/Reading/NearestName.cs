namespace PanelService.Wire.Reading;

/// <summary>The known name a mistyped one was probably meant to be.</summary>
internal static class NearestName
{
    /// <summary>A sentence with the nearest known name; empty where none is near.</summary>
    internal static string Hint(string name, IReadOnlyCollection<string> known) =>
        Find(name, known) is { } nearest ? $" Did you mean \"{nearest}\"?" : "";

    /// <summary>A sentence with the nearest known name, or with all of them where none is near.</summary>
    internal static string Suggestion(string name, IReadOnlyCollection<string> known)
    {
        string? nearest = Find(name, known);
        return nearest is null
            ? $"Known here: {string.Join(", ", known)}."
            : $"Did you mean \"{nearest}\"?";
    }

    private static string? Find(string name, IReadOnlyCollection<string> known)
    {
        string lower = name.ToLowerInvariant();
        if (lower.Length is 0 or > 40)
        {
            return null;
        }

        (string Name, int Distance) best = known
            .Select(k => (Name: k, Distance: Distance(lower, k.ToLowerInvariant())))
            .MinBy(k => k.Distance);
        return best.Distance <= Math.Max(1, lower.Length / 3) ? best.Name : null;
    }

    // Levenshtein's distance with neighbouring letters swapped counted as one slip (optimal string alignment).
    private static int Distance(string a, string b)
    {
        int[,] cost = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++)
        {
            cost[i, 0] = i;
        }

        for (int j = 0; j <= b.Length; j++)
        {
            cost[0, j] = j;
        }

        for (int i = 1; i <= a.Length; i++)
        {
            for (int j = 1; j <= b.Length; j++)
            {
                int changed = cost[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                int best = Math.Min(changed, Math.Min(cost[i - 1, j], cost[i, j - 1]) + 1);
                bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
                cost[i, j] = swapped ? Math.Min(best, cost[i - 2, j - 2] + 1) : best;
            }
        }

        return cost[a.Length, b.Length];
    }
}
