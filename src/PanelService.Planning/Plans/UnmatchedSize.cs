using PanelService.Planning.Measures;

namespace PanelService.Planning.Plans;

/// <summary>One of a panel's two sizes.</summary>
public enum PanelSide
{
    /// <summary>As it hangs.</summary>
    Width,

    /// <summary>As it hangs.</summary>
    Height,
}

/// <summary>Panels of one line that do not all get one of their sizes at one setting, and so may differ by a hair.</summary>
/// <param name="Mark">The line's mark.</param>
/// <param name="Side">Which of its sizes.</param>
/// <param name="Size">As cut.</param>
/// <param name="AtOneSetting">How many get it at the setting that most get it at.</param>
/// <param name="Otherwise">How many get it at another setting, as what another cut leaves, or from the factory.</param>
public sealed record UnmatchedSize(string Mark, PanelSide Side, Length Size, int AtOneSetting, int Otherwise);
