using System.ComponentModel.DataAnnotations;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Wire.Orders;

/// <summary>One line: panels of one format and finish.</summary>
internal sealed record PanelRequest
{
    /// <summary>Drawn on the layouts; unique, at most 16 characters. Given out A, B, … Z, AA where missing.</summary>
    public string? Mark { get; init; }

    /// <summary>Width as it hangs; 1 mm to 100 m. Required.</summary>
    [Required]
    public Length? Width { get; init; }

    /// <summary>Height as it hangs; 1 mm to 100 m. Required.</summary>
    [Required]
    public Length? Height { get; init; }

    /// <summary>How many, 1 to 100 000. Required.</summary>
    [Required]
    public int? Quantity { get; init; }

    /// <summary>Made on top, against spoiling; 0 to 100 000. Default 0.</summary>
    public int? Spares { get; init; }

    /// <summary>The finish: cloth glued on, primed, bare, or loose cloth without a board. Default bare.</summary>
    public Surface? Surface { get; init; }

    /// <summary>A board kind, or null for any.</summary>
    public string? Board { get; init; }

    /// <summary>A cloth kind, or null for any.</summary>
    public string? Cloth { get; init; }

    /// <summary>Nominal thickness; null: at least what the thickness rule asks.</summary>
    public Length? Thickness { get; init; }

    /// <summary>Whether it may lie turned on the sheet. Default true.</summary>
    public bool? MayTurn { get; init; }

    /// <summary>The id of the adhesive it must be glued with; null: the order's cheapest.</summary>
    public string? Adhesive { get; init; }

    /// <summary>The id of the primer it must have; null: the order's cheapest.</summary>
    public string? Primer { get; init; }

    /// <summary>Whether it is needed first: pressed before all others. Default false.</summary>
    public bool? First { get; init; }

    /// <summary>"later": board and cloth are cut now, gluing and pressing are planned when wanted; only where the surface is cloth. Default now.</summary>
    public MountTime? Mount { get; init; }

    /// <summary>Whether a cradle of strips is glued to its back. Where it is not said: where strength.brace asks for it and its panels need one.</summary>
    public bool? Cradle { get; init; }

    /// <summary>How many of it go in the painter's pack, at most quantity; only their weight is told. Default 0.</summary>
    public int? Pack { get; init; }

    /// <summary>Money for a comparable ready-made panel.</summary>
    public decimal? ShopPrice { get; init; }

    /// <summary>Money: what one is worth where a budget decides; null: its shopPrice, and where a line has neither all count by area.</summary>
    public decimal? Worth { get; init; }

    /// <summary>Whether it may be bought ready-made where that is cheaper for the whole batch; needs shopPrice. Default false.</summary>
    public bool? MayBuy { get; init; }
}

/// <summary>When cloth is mounted.</summary>
internal enum MountTime
{
    /// <summary>In this batch.</summary>
    Now,

    /// <summary>Another time.</summary>
    Later,
}

/// <summary>A panel to fill spare board with, cut at nominal size.</summary>
internal sealed record WishRequest
{
    /// <summary>Drawn on the layouts; unique, at most 16 characters. Given out where missing.</summary>
    public string? Mark { get; init; }

    /// <summary>Width; 1 mm to 100 m. Required.</summary>
    [Required]
    public Length? Width { get; init; }

    /// <summary>Height; 1 mm to 100 m. Required.</summary>
    [Required]
    public Length? Height { get; init; }

    /// <summary>At most so many are made, 1 to 100 000. Required.</summary>
    [Required]
    public int? AtMost { get; init; }

    /// <summary>What one is worth: the more, the sooner it is fitted in. Money. Default 0.</summary>
    public decimal? Worth { get; init; }

    /// <summary>The finish: bare or primed. Default bare.</summary>
    public Surface? Surface { get; init; }

    /// <summary>A board kind, or null for any.</summary>
    public string? Board { get; init; }

    /// <summary>Nominal thickness; null: at least what the thickness rule asks.</summary>
    public Length? Thickness { get; init; }

    /// <summary>Whether it may lie turned on the sheet. Default true.</summary>
    public bool? MayTurn { get; init; }
}
