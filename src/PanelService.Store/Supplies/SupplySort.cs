namespace PanelService.Store.Supplies;

/// <summary>What sorts of goods can be bought. The names are the order's lists.</summary>
public enum SupplySort
{
    /// <summary>Board by the sheet.</summary>
    Boards,

    /// <summary>Cloth by length or by the roll.</summary>
    Cloths,

    /// <summary>Adhesives.</summary>
    Adhesives,

    /// <summary>Primers.</summary>
    Primers,

    /// <summary>Strips for cradles.</summary>
    Strips,
}
