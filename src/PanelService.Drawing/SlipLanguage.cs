namespace PanelService.Drawing;

/// <summary>The language a slip or a label is written in.</summary>
public enum SlipLanguage
{
    /// <summary>English.</summary>
    English,

    /// <summary>French.</summary>
    French,
}
