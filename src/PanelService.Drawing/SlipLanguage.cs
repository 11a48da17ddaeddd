namespace PanelService.Drawing;

/// <summary>The language a slip is written in.</summary>
public enum SlipLanguage
{
    /// <summary>English.</summary>
    English,

    /// <summary>French.</summary>
    French,
}
