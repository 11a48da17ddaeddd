using PanelService.Planning.Measures;

namespace PanelService.Planning.Orders;

/// <summary>Something the work wears out: a saw blade, sandpaper, knife blades.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Per">What wears it out.</param>
/// <param name="Price">What a new one (or pack) costs.</param>
/// <param name="Lasts">How much of <paramref name="Per"/> it does; above 0.</param>
public sealed record Consumable(string Name, WornBy Per, Money Price, decimal Lasts);

/// <summary>What a consumable is worn out by.</summary>
public enum WornBy
{
    /// <summary>A metre of saw cut.</summary>
    SawMetre,

    /// <summary>A foot of saw cut.</summary>
    SawFoot,

    /// <summary>A metre of cloth cut: the cuts that part the pieces, and the trimming round each mounted panel.</summary>
    ClothMetre,

    /// <summary>A foot of cloth cut.</summary>
    ClothFoot,

    /// <summary>A panel made.</summary>
    Panel,
}
