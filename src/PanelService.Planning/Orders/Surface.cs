namespace PanelService.Planning.Orders;

/// <summary>What a panel is finished with.</summary>
public enum Surface
{
    /// <summary>The bare board.</summary>
    Bare,

    /// <summary>Canvas or linen glued on.</summary>
    Cloth,

    /// <summary>Ground on the bare board.</summary>
    Primed,

    /// <summary>Cloth only, to be mounted later: no board.</summary>
    Loose,
}
