namespace PanelService.Store.Versions;

/// <summary>What saving something that has versions comes to.</summary>
public abstract record SaveOutcome
{
    private protected SaveOutcome()
    {
    }
}

/// <summary>It is saved.</summary>
/// <param name="Version">Its version now.</param>
/// <param name="IsNew">Whether there was none before.</param>
public sealed record Saved(int Version, bool IsNew) : SaveOutcome;

/// <summary>The condition does not hold, or is missing.</summary>
/// <param name="IsMissing">Whether it is missing (RFC 6585, 428), else it does not hold (412).</param>
/// <param name="Stored">The version stored; null where there is none.</param>
public sealed record VersionRefusal(bool IsMissing, int? Stored) : SaveOutcome, IRefusal;

/// <summary>There is no such thing.</summary>
public sealed record NothingThere : SaveOutcome, IRefusal;

/// <summary>Another thing bears this name already.</summary>
/// <param name="Text">In words.</param>
public sealed record NameTaken(string Text) : SaveOutcome, IRefusal;
