namespace PanelService.Planning.Measures;

/// <summary>The unit an order's bare numbers are in.</summary>
public enum LengthUnit
{
    /// <summary>25.4 mm exactly; areas in in², volumes in US fl oz, weights in lb.</summary>
    Inch,

    /// <summary>10 mm; areas in cm², volumes in mL, weights in g.</summary>
    Centimetre,

    /// <summary>1 mm; areas in cm², volumes in mL, weights in g.</summary>
    Millimetre,
}
