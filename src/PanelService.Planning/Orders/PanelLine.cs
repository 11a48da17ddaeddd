using PanelService.Planning.Measures;

namespace PanelService.Planning.Orders;

/// <summary>One line of an order: panels of one format and finish.</summary>
public sealed record PanelLine
{
    /// <summary>What is drawn on the layouts; unique within the order, wishes included.</summary>
    public required string Mark { get; init; }

    /// <summary>Nominal width as it hangs; above zero.</summary>
    public required Length Width { get; init; }

    /// <summary>Nominal height as it hangs; above zero.</summary>
    public required Length Height { get; init; }

    /// <summary>How many are wanted, 1 to 100 000.</summary>
    public required int Quantity { get; init; }

    /// <summary>Made on top, against spoiling; 0 or more.</summary>
    public int Spares { get; init; }

    /// <summary>The finish.</summary>
    public Surface Surface { get; init; }

    /// <summary>A board kind ("hardboard"), or null for any.</summary>
    public string? Board { get; init; }

    /// <summary>A cloth kind ("linen"), or null for any.</summary>
    public string? Cloth { get; init; }

    /// <summary>The nominal thickness asked for; null: at least what the thickness rule asks.</summary>
    public Length? Thickness { get; init; }

    /// <summary>Whether it may lie turned on a board without grain.</summary>
    public bool MayTurn { get; init; } = true;

    /// <summary>The id of the adhesive it must be glued with, or null for the order's cheapest.</summary>
    public string? Adhesive { get; init; }

    /// <summary>The id of the primer it must have, or null for the order's cheapest.</summary>
    public string? Primer { get; init; }

    /// <summary>Whether it is needed first: pressed before all others.</summary>
    public bool First { get; init; }

    /// <summary>Whether board and cloth are cut now, and the cloth is mounted another time; only where the surface is cloth.</summary>
    public bool MountLater { get; init; }

    /// <summary>Whether cloth is glued on in this batch.</summary>
    public bool MountsNow => Surface == Surface.Cloth && !MountLater;

    /// <summary>Whether a cradle of strips is glued to its back.</summary>
    public bool Cradle { get; init; }

    /// <summary>Whether <see cref="StrengthSettings.Brace"/> may give it a cradle that it does not ask for itself. Default true.</summary>
    public bool MayBrace { get; init; } = true;

    /// <summary>How many of it the painter carries in a pack; 0 to its quantity.</summary>
    public int Pack { get; init; }

    /// <summary>What a comparable ready-made panel costs; null where unknown.</summary>
    public Money? ShopPrice { get; init; }

    /// <summary>What one is worth to the painter where a budget decides; null: its shop price.</summary>
    public Money? Worth { get; init; }

    /// <summary>Whether it may be bought ready-made at <see cref="ShopPrice"/> where that is cheaper for the whole batch.</summary>
    public bool MayBuy { get; init; }

    /// <summary>How many are made or bought: quantity and spares.</summary>
    public int Wanted => Quantity + Spares;

    /// <summary>Whether a board is cut for it.</summary>
    public bool NeedsBoard => Surface != Surface.Loose;

    /// <summary>Whether cloth is cut for it.</summary>
    public bool NeedsCloth => Surface is Surface.Cloth or Surface.Loose;

    /// <summary>Nominal area of one.</summary>
    public Area Area => Width * Height;
}
