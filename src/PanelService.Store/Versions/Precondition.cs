using System.Collections.Immutable;

namespace PanelService.Store.Versions;

/// <summary>Under which version a change may be made (RFC 9110, If-Match and If-None-Match).</summary>
/// <param name="Match">Versions of which the stored one must be; null: no If-Match was sent.</param>
/// <param name="MatchAny">If-Match: * was sent: something must be stored.</param>
/// <param name="NoneMatchAny">If-None-Match: * was sent: nothing may be stored yet.</param>
public sealed record Precondition(ImmutableArray<int>? Match, bool MatchAny, bool NoneMatchAny)
{
    /// <summary>No condition at all.</summary>
    public static Precondition None { get; } = new(null, false, false);

    /// <summary>Whether a change may be made.</summary>
    /// <param name="stored">The stored version; null where nothing is stored.</param>
    /// <param name="isNeeded">Whether what is stored may only be changed under a condition.</param>
    /// <returns>Null where it may; else the refusal.</returns>
    internal SaveOutcome? Check(int? stored, bool isNeeded)
    {
        bool fails = (NoneMatchAny && stored is not null)
            || (MatchAny && stored is null)
            || (Match is { } versions && !(stored is { } version && versions.Contains(version)));
        if (fails)
        {
            return new VersionRefusal(IsMissing: false, stored);
        }

        return isNeeded && stored is not null && Match is null && !MatchAny ? new VersionRefusal(IsMissing: true, stored) : null;
    }
}
