namespace PanelService.Drawing;

/// <summary>The paper labels are printed on.</summary>
public enum LabelPaper
{
    /// <summary>210 × 297 mm (ISO 216).</summary>
    A4,

    /// <summary>8 1/2 × 11 in (ANSI Y14.1).</summary>
    Letter,
}
