using FluentValidation;
using PanelService.Wire.Orders;

namespace PanelService.Validation;

/// <summary>What must not stand in an order twice: marks, and the ids of each sort of goods.</summary>
internal sealed class UniquenessRules : AbstractValidator<OrderRequest>
{
    /// <summary>Sets the rules out.</summary>
    public UniquenessRules() => RuleFor(o => o).Custom((order, context) =>
    {
        var marks = Named("Panels", order.Panels, p => p.Mark, "Mark").Concat(Named("Wishes", order.Wishes, w => w.Mark, "Mark"));
        Refuse(marks, "mark", context);
        Refuse(Named("Boards", order.Boards, b => b.Id, "Id"), "id of a board", context);
        Refuse(Named("Strips", order.Strips, s => s.Id, "Id"), "id of a strip", context);
        Refuse(Named("Cloths", order.Cloths, c => c.Id, "Id"), "id of a cloth", context);
        Refuse(Named("Adhesives", order.Adhesives, a => a.Id, "Id"), "id of an adhesive", context);
        Refuse(Named("Shops", order.Shops, s => s.Id, "Id"), "id of a shop", context);
        Refuse(Named("Primers", order.Primers, p => p.Id, "Id"), "id of a primer", context);
        foreach ((ClothRequest cloth, int index) in Present(order.Cloths))
        {
            Refuse(Named($"Cloths[{index}].Remnants", cloth.Remnants, r => r.Id, "Id"), "id of a remnant", context);
        }
    });

    private static IEnumerable<(string Path, string? Name)> Named<T>(string list, IReadOnlyList<T?>? items, Func<T, string?> name, string field)
        where T : class => Present(items).Select(item => ($"{list}[{item.Index}].{field}", name(item.Item)));

    private static IEnumerable<(T Item, int Index)> Present<T>(IReadOnlyList<T?>? items)
        where T : class => (items ?? []).Select((item, index) => (Item: item!, index)).Where(item => item.Item is not null);

    private static void Refuse(IEnumerable<(string Path, string? Name)> all, string what, ValidationContext<OrderRequest> context)
    {
        var first = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach ((string path, string? name) in all)
        {
            if (name is not null && !first.TryAdd(name, path))
            {
                context.AddFailure(path, $"\"{name}\" is already the {what} at {Wire.Reading.JsonPath.FromProperty(first[name])}; each must be different.");
            }
        }
    }
}
