namespace PanelService.Planning.Practice;

/// <summary>Hands-on minutes, common practice without a source; they count only where an hour of work has a price.</summary>
public static class WorkMinutes
{
    /// <summary>To cut one panel, ease its edges and dust it.</summary>
    public const int Board = 3;

    /// <summary>To cut one cloth.</summary>
    public const int Cloth = 1;

    /// <summary>To glue, lay, press and trim one panel.</summary>
    public const int Mount = 6;

    /// <summary>To brush and sand one coat on one panel.</summary>
    public const int Coat = 3;
}
