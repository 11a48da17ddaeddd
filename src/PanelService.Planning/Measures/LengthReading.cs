namespace PanelService.Planning.Measures;

/// <summary>What reading a length from text comes to: the length, or what was expected instead.</summary>
public abstract record LengthReading
{
    private protected LengthReading()
    {
    }
}

/// <summary>The text is a length.</summary>
/// <param name="Length">The length, zero or more.</param>
public sealed record LengthRead(Length Length) : LengthReading;

/// <summary>The text is no length.</summary>
/// <param name="Message">What is wrong and what would be right, for a person.</param>
public sealed record LengthNotRead(string Message) : LengthReading;
