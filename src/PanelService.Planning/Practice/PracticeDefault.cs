using PanelService.Planning.Measures;

namespace PanelService.Planning.Practice;

/// <summary>What a setting is where the painter says nothing, and where that comes from.</summary>
/// <param name="Setting">The order's field it stands for: "saw.kerf".</param>
/// <param name="Value">The value.</param>
/// <param name="Mark">How well it is founded.</param>
/// <param name="Source">The source, or what practice it is, in a few words.</param>
public sealed record PracticeDefault(string Setting, PracticeValue Value, SourceMark Mark, string Source);

/// <summary>A length, several lengths, a number with its unit, or no limit.</summary>
public abstract record PracticeValue
{
    private protected PracticeValue()
    {
    }
}

/// <summary>One length.</summary>
/// <param name="Length">The length.</param>
public sealed record PracticeLength(Length Length) : PracticeValue;

/// <summary>Two lengths that belong together: a smallest size, or the two margins.</summary>
/// <param name="First">The first: a width, or left and right.</param>
/// <param name="Second">The second: a height, or top and bottom.</param>
public sealed record PracticeSize(Length First, Length Second) : PracticeValue;

/// <summary>A number.</summary>
/// <param name="Number">The number.</param>
/// <param name="Unit">Its unit in words: "hours", "minutes", "panels".</param>
public sealed record PracticeNumber(decimal Number, string Unit) : PracticeValue;

/// <summary>No limit is set unless the painter sets one.</summary>
public sealed record PracticeNoLimit : PracticeValue;
