namespace PanelService.Cutting.Search;

/// <summary>
/// Counts work, so that a search ends at the same point on every machine. One unit is about a thousandth of a
/// millisecond on the machine it was set on; the clock is never asked.
/// </summary>
internal sealed class WorkMeter
{
    private readonly CancellationToken _cancellation;
    private readonly long _units;
    private long _left;

    /// <summary>Starts a meter.</summary>
    /// <param name="units">The work allowed.</param>
    /// <param name="cancellation">Ends it early.</param>
    public WorkMeter(long units, CancellationToken cancellation)
    {
        _left = _units = units;
        _cancellation = cancellation;
    }

    /// <summary>Whether the work allowed is done, or a stop was asked for.</summary>
    public bool Exhausted => _left <= Reserve || Stopped;

    /// <summary>Work kept back for later: until this is lowered it counts as done.</summary>
    public long Reserve { get; set; }

    /// <summary>Whether a stop was asked for.</summary>
    public bool Stopped => _cancellation.IsCancellationRequested;

    /// <summary>The stop itself.</summary>
    public CancellationToken Cancellation => _cancellation;

    /// <summary>How many strategies may advance at the same time; it changes nothing of what they come to.</summary>
    public int Cores { get; init; } = Environment.ProcessorCount;

    /// <summary>Units left.</summary>
    public long Left => _left;

    /// <summary>Takes work off.</summary>
    /// <param name="units">How much.</param>
    public void Spend(long units) => _left -= units;

    /// <summary>A meter for a part of the work that is left, for one strategy alone.</summary>
    /// <param name="units">How much; no more than is left.</param>
    public WorkMeter Part(long units) => new(Math.Min(units, _left), _cancellation);

    /// <summary>Takes off what a part has spent.</summary>
    /// <param name="part">The part.</param>
    public void Join(WorkMeter part) => Spend(part._units - part._left);
}
