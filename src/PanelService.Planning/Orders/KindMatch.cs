namespace PanelService.Planning.Orders;

/// <summary>Whether a good serves a line that may ask for a kind.</summary>
internal static class KindMatch
{
    /// <summary>Compares without regard to case; who asks for none takes any, and a good without kind serves nobody else.</summary>
    /// <param name="asked">The kind asked for; null: any.</param>
    /// <param name="offered">The good's kind; null: nothing is said.</param>
    public static bool Serves(string? asked, string? offered) =>
        asked is null || string.Equals(asked, offered, StringComparison.OrdinalIgnoreCase);
}
