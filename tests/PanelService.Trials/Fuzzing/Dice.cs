namespace PanelService.Trials.Fuzzing;

/// <summary>Random choices from a seed, the same on every machine.</summary>
internal sealed class Dice(int seed)
{
    private ulong _state = unchecked(((ulong)seed * 0x9E3779B97F4A7C15) + 0x2545F4914F6CDD1D);

    internal int Below(int bound)
    {
        _state ^= _state << 13;
        _state ^= _state >> 7;
        _state ^= _state << 17;
        return (int)(_state % (ulong)bound);
    }

    internal bool Once(int times) => Below(times) == 0;

    internal T One<T>(IReadOnlyList<T> among) => among[Below(among.Count)];
}
