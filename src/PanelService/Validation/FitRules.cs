using FluentValidation;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Wire.Orders;

namespace PanelService.Validation;

/// <summary>What must fit together across an order: trims and sheets, undersize and panels, named liquids.</summary>
internal sealed class FitRules : AbstractValidator<OrderRequest>
{
    /// <summary>Sets the rules out.</summary>
    public FitRules() => RuleFor(o => o).Custom((order, context) =>
    {
        TrimsLeaveBoard(order, context);
        UndersizeLeavesPanels(order, context);
        NamedLiquidsExist(order, context);
        NamedShopsExist(order, context);
    });

    private static void NamedShopsExist(OrderRequest order, ValidationContext<OrderRequest> context)
    {
        var named = Shops(order.Boards, "Boards", b => b.Shop)
            .Concat(Shops(order.Cloths, "Cloths", c => c.Shop))
            .Concat(Shops(order.Adhesives, "Adhesives", a => a.Shop))
            .Concat(Shops(order.Primers, "Primers", p => p.Shop))
            .Concat(Shops(order.Strips, "Strips", s => s.Shop));
        foreach ((string path, string shop) in named.Where(one => !(order.Shops ?? []).Any(shop => shop?.Id == one.Shop)))
        {
            context.AddFailure(path, $"The order has no shop with the id \"{shop}\".");
        }
    }

    private static IEnumerable<(string Path, string Shop)> Shops<T>(IReadOnlyList<T?>? goods, string list, Func<T, string?> shop)
        where T : class =>
        (goods ?? []).Select((good, index) => (Path: $"{list}[{index}].Shop", Shop: good is null ? null : shop(good)))
            .Where(one => one.Shop is not null).Select(one => (one.Path, one.Shop!));

    private static void TrimsLeaveBoard(OrderRequest order, ValidationContext<OrderRequest> context)
    {
        for (int index = 0; index < (order.Boards?.Count ?? 0); index++)
        {
            if (order.Boards![index] is { } board)
            {
                Trim.Check(board, order.Saw, $"Boards[{index}]", (path, message) => context.AddFailure(path, message));
            }
        }
    }

    private static void UndersizeLeavesPanels(OrderRequest order, ValidationContext<OrderRequest> context)
    {
        PanelRequest? gone = (order.Panels ?? []).FirstOrDefault(p =>
            p is { Width: { } width, Height: { } height }
            && order.Saw?.Undersize is { } undersize
            && undersize > Length.Zero
            && undersize >= Length.Min(width, height));
        if (gone is not null)
        {
            context.AddFailure("Saw.Undersize", "This leaves nothing of the smallest panel; a panel for a standard frame is 1/16 to 1/8 in smaller than nominal.");
        }
    }

    private static void NamedLiquidsExist(OrderRequest order, ValidationContext<OrderRequest> context)
    {
        for (int index = 0; index < (order.Panels?.Count ?? 0); index++)
        {
            if (order.Panels![index] is { } line)
            {
                Exists(line.Adhesive, order.Adhesives, $"Panels[{index}].Adhesive", "adhesive", context);
                Exists(line.Primer, order.Primers, $"Panels[{index}].Primer", "primer", context);
            }
        }
    }

    private static void Exists(
        string? id, IReadOnlyList<LiquidRequest?>? liquids, string path, string what, ValidationContext<OrderRequest> context)
    {
        if (id is not null && !(liquids ?? []).Any(liquid => liquid?.Id == id))
        {
            context.AddFailure(path, $"The order has no {what} with the id \"{id}\".");
        }
    }
}
