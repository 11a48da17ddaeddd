namespace PanelService.Store.Faults;

/// <summary>The studio's memory cannot be used just now; what was asked for has not happened, in whole or in part.</summary>
public sealed class StoreUnavailableException : Exception
{
    /// <summary>Says nothing; the analyzers want it.</summary>
    public StoreUnavailableException()
    {
    }

    /// <summary>Says what is wrong.</summary>
    /// <param name="message">A sentence for a person.</param>
    public StoreUnavailableException(string message)
        : base(message)
    {
    }

    /// <summary>Says what is wrong and what was seen of it.</summary>
    /// <param name="message">A sentence for a person.</param>
    /// <param name="cause">What the database or the disk said.</param>
    public StoreUnavailableException(string message, Exception? cause)
        : base(message, cause)
    {
    }

    /// <summary>Says what is wrong.</summary>
    /// <param name="fault">Of which sort.</param>
    /// <param name="message">A sentence for a person.</param>
    /// <param name="cause">What the database or the disk said.</param>
    public StoreUnavailableException(StoreFault fault, string message, Exception? cause = null)
        : base(message, cause) => Fault = fault;

    /// <summary>Of which sort.</summary>
    public StoreFault Fault { get; }
}
