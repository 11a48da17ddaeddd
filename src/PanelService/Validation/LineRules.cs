using FluentValidation;
using PanelService.Planning.Orders;
using PanelService.Wire.Orders;

namespace PanelService.Validation;

/// <summary>What holds for one line of panels.</summary>
internal sealed class PanelRules : AbstractValidator<PanelRequest>
{
    /// <summary>Sets the rules out.</summary>
    public PanelRules()
    {
        RuleFor(p => p.Mark).Word(WireLimits.MarkLength);
        RuleFor(p => p.Width).Needed("the panel's width as it hangs");
        RuleFor(p => p.Width).Size(WireLimits.Panel, WireLimits.Side);
        RuleFor(p => p.Height).Needed("the panel's height as it hangs");
        RuleFor(p => p.Height).Size(WireLimits.Panel, WireLimits.Side);
        RuleFor(p => p.Quantity).Needed($"how many, 1 to {WireLimits.Quantity}");
        RuleFor(p => p.Quantity).Count(1, WireLimits.Quantity);
        RuleFor(p => p.Spares).Count(0, WireLimits.Quantity);
        RuleFor(p => p.Board).Word(WireLimits.IdLength);
        RuleFor(p => p.Cloth).Word(WireLimits.IdLength);
        RuleFor(p => p.Adhesive).Word(WireLimits.IdLength);
        RuleFor(p => p.Primer).Word(WireLimits.IdLength);
        RuleFor(p => p.Thickness).Size(WireLimits.Thickness);
        RuleFor(p => p.Mount).Must((p, mount) => mount != MountTime.Later || p.Surface == Surface.Cloth)
            .WithMessage("Only cloth is mounted: \"later\" goes with the surface \"cloth\".");
        RuleFor(p => p.Cradle).Must((p, cradle) => cradle != true || p.Surface != Surface.Loose)
            .WithMessage("Loose cloth has no board to glue a cradle to.");
        RuleFor(p => p.Pack).Count(0, WireLimits.Quantity);
        RuleFor(p => p.Pack).Must((p, pack) => pack is not > 0 || p.Quantity is null || pack <= p.Quantity)
            .WithMessage("More than the line has panels: at most its quantity goes in a pack.");
        RuleFor(p => p.ShopPrice).Money();
        RuleFor(p => p.Worth).Money();
        RuleFor(p => p.MayBuy).Must((p, may) => may != true || p.ShopPrice is not null)
            .WithMessage("A panel that may be bought needs its shopPrice: what a comparable ready-made one costs.");
        RuleFor(p => p.ShopPrice).Must((p, price) => price is not null || p.MayBuy != true)
            .WithMessage("Required where mayBuy is true: what a comparable ready-made panel costs.");
    }
}

/// <summary>What holds for one wish.</summary>
internal sealed class WishRules : AbstractValidator<WishRequest>
{
    /// <summary>Sets the rules out.</summary>
    public WishRules()
    {
        RuleFor(w => w.Mark).Word(WireLimits.MarkLength);
        RuleFor(w => w.Width).Needed("the panel's width");
        RuleFor(w => w.Width).Size(WireLimits.Panel, WireLimits.Side);
        RuleFor(w => w.Height).Needed("the panel's height");
        RuleFor(w => w.Height).Size(WireLimits.Panel, WireLimits.Side);
        RuleFor(w => w.AtMost).Needed($"at most how many are made, 1 to {WireLimits.Quantity}");
        RuleFor(w => w.AtMost).Count(1, WireLimits.Quantity);
        RuleFor(w => w.Worth).Money();
        RuleFor(w => w.Board).Word(WireLimits.IdLength);
        RuleFor(w => w.Thickness).Size(WireLimits.Thickness);
        RuleFor(w => w.Surface).Fault(surface => surface is Surface.Cloth or Surface.Loose
            ? "Wishes fill spare board: they can be \"bare\" or \"primed\"."
            : null);
    }
}

/// <summary>What holds for one overhead.</summary>
internal sealed class OverheadRules : AbstractValidator<OverheadRequest>
{
    /// <summary>Sets the rules out.</summary>
    public OverheadRules()
    {
        RuleFor(o => o.Name).Title(WireLimits.NameLength);
        RuleFor(o => o.Cost).Money();
    }
}
