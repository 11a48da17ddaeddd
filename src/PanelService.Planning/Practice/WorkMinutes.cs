namespace PanelService.Planning.Practice;

/// <summary>Hands-on minutes, common practice without a source; they count only where an hour of work has a price.</summary>
public static class WorkMinutes
{
    /// <summary>To cut one panel, ease its edges, dust and label it.</summary>
    public const int Board = 3;

    /// <summary>The part of <see cref="Board"/> that is cutting.</summary>
    public const decimal Cut = 1.5m;

    /// <summary>The part that is easing the edges.</summary>
    public const decimal Ease = 0.75m;

    /// <summary>The part that is dusting.</summary>
    public const decimal Dust = 0.5m;

    /// <summary>The part that is labelling.</summary>
    public const decimal Label = 0.25m;

    /// <summary>To cut one cloth.</summary>
    public const int Cloth = 1;

    /// <summary>To glue, lay, press and trim one panel.</summary>
    public const int Mount = 6;

    /// <summary>The part of <see cref="Mount"/> that is gluing and laying, with the weight put on.</summary>
    public const decimal Lay = 4;

    /// <summary>The part that is trimming.</summary>
    public const decimal Trim = 1.5m;

    /// <summary>The part that is the edges again: what has lifted is glued down.</summary>
    public const decimal Edges = 0.5m;

    /// <summary>To brush and sand one coat on one panel's face.</summary>
    public const int Coat = 3;

    /// <summary>The part of <see cref="Coat"/> that is brushing.</summary>
    public const decimal Brush = 2;

    /// <summary>The part that is sanding.</summary>
    public const decimal Sand = 1;

    /// <summary>To seal one panel's back.</summary>
    public const int Seal = 2;

    /// <summary>To glue one cradle on.</summary>
    public const int Brace = 10;

    /// <summary>The shop trip.</summary>
    public const int Errand = 60;
}
