namespace PanelService.Planning.Days;

/// <summary>What is done at one time.</summary>
public enum BenchTask
{
    /// <summary>The shop trip.</summary>
    Errand,

    /// <summary>Cutting the boards.</summary>
    Saw,

    /// <summary>Cutting the cloth.</summary>
    CutCloth,

    /// <summary>Easing edges and dusting.</summary>
    Prepare,

    /// <summary>Sealing or sizing what is to carry cloth.</summary>
    Seal,

    /// <summary>Gluing and laying a stack, which then stands under weight.</summary>
    Glue,

    /// <summary>Trimming what came out of the press, and its edges again.</summary>
    Trim,

    /// <summary>Gluing cradles on.</summary>
    Brace,

    /// <summary>Brushing a coat.</summary>
    Coat,

    /// <summary>The last sanding, and the labels.</summary>
    Finish,
}

/// <summary>A step as a painter counts them.</summary>
public enum BenchStep
{
    /// <summary>Cut the board.</summary>
    Cut,

    /// <summary>Cut the cloth.</summary>
    CutCloth,

    /// <summary>Ease the edges.</summary>
    Ease,

    /// <summary>Dust.</summary>
    Dust,

    /// <summary>Seal or size.</summary>
    Seal,

    /// <summary>Glue and lay.</summary>
    Glue,

    /// <summary>Under weight.</summary>
    Press,

    /// <summary>Trim.</summary>
    Trim,

    /// <summary>The edges again: what has lifted is glued down.</summary>
    Edges,

    /// <summary>Glue the cradle on.</summary>
    Brace,

    /// <summary>Brush a coat.</summary>
    Coat,

    /// <summary>Sand it.</summary>
    Sand,

    /// <summary>Label.</summary>
    Label,

    /// <summary>Leave it alone.</summary>
    Rest,
}
