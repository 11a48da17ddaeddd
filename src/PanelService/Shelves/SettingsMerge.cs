using System.Collections.Concurrent;
using System.Reflection;
using PanelService.Wire.Orders;
using PanelService.Wire.Studio;

namespace PanelService.Shelves;

/// <summary>
/// The order's settings, field by field, over the saved ones. Fields are matched by their names, so that a setting that
/// is added to both records needs nothing here.
/// </summary>
internal static class SettingsMerge
{
    private static readonly string[] Measures = [nameof(OrderRequest.Units), nameof(OrderRequest.Currency)];

    // Amounts in a currency that the order is not in mean nothing there.
    private static readonly string[] Amounts =
        [nameof(OrderRequest.Labour), nameof(OrderRequest.Overheads), nameof(OrderRequest.Consumables), nameof(OrderRequest.Tools)];

    private static readonly ConcurrentDictionary<Type, PropertyInfo[]> Fields = new();

    internal static OrderRequest Over(OrderRequest order, StudioSettingsRequest saved, bool sameCurrency)
    {
        OrderRequest merged = order with { };
        foreach (PropertyInfo field in FieldsOf(typeof(StudioSettingsRequest)).Where(field => !Measures.Contains(field.Name)))
        {
            PropertyInfo target = typeof(OrderRequest).GetProperty(field.Name)!;
            if (sameCurrency || !Amounts.Contains(field.Name))
            {
                target.SetValue(merged, Over(target.GetValue(order), field.GetValue(saved)));
            }
        }

        return merged;
    }

    private static object? Over(object? given, object? saved)
    {
        if (given is null || saved is null || !IsGroup(given.GetType()))
        {
            return given ?? saved;
        }

        object merged = Activator.CreateInstance(given.GetType())!;
        foreach (PropertyInfo field in FieldsOf(given.GetType()))
        {
            field.SetValue(merged, field.GetValue(given) ?? field.GetValue(saved));
        }

        return merged;
    }

    // A group of settings, such as the saw's; a list is one setting as a whole.
    private static bool IsGroup(Type type) => type.Namespace == typeof(SawRequest).Namespace && type.GetConstructor(Type.EmptyTypes) is not null;

    private static PropertyInfo[] FieldsOf(Type type) =>
        Fields.GetOrAdd(type, one => [.. one.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(field => field.CanWrite)]);
}
