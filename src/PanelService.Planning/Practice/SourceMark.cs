namespace PanelService.Planning.Practice;

/// <summary>How well a figure of the trade is founded.</summary>
public enum SourceMark
{
    /// <summary>A published source, named beside the figure ("S").</summary>
    Published,

    /// <summary>Common practice, no source ("P"): a setting the painter can change.</summary>
    CommonPractice,

    /// <summary>From memory, not read again ("M"): a setting the painter can change.</summary>
    FromMemory,
}
