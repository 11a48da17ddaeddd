namespace PanelService.Store.Stock;

/// <summary>What sorts of things lie in the studio.</summary>
public enum StockSort
{
    /// <summary>Whole sheets of board.</summary>
    Board,

    /// <summary>Offcuts of board; their edges are clean.</summary>
    Offcut,

    /// <summary>Cloth with its selvedges: rolls and lengths.</summary>
    Cloth,

    /// <summary>Remnants of cloth; all of their width is usable.</summary>
    Remnant,

    /// <summary>Adhesive.</summary>
    Adhesive,

    /// <summary>Primer.</summary>
    Primer,

    /// <summary>Strips for cradles, whole or what was left of one.</summary>
    Strip,

    /// <summary>Finished panels.</summary>
    Panel,
}
