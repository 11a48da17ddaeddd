namespace PanelService.Planning.SawRun.Search;

/// <summary>Repeatable randomness (Marsaglia 2003): the same seed, the same run.</summary>
/// <param name="seed">Not zero.</param>
internal sealed class Xorshift(ulong seed)
{
    private ulong _state = seed;

    /// <summary>A number from zero up to, not including, <paramref name="below"/>.</summary>
    public int Below(int below)
    {
        _state ^= _state << 13;
        _state ^= _state >> 7;
        _state ^= _state << 17;
        return (int)(_state % (ulong)below);
    }

    /// <summary>Puts things in a random order.</summary>
    public void Shuffle<T>(IList<T> things)
    {
        for (int i = things.Count - 1; i > 0; i--)
        {
            int j = Below(i + 1);
            (things[i], things[j]) = (things[j], things[i]);
        }
    }
}
