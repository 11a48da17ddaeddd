using System.Collections.Concurrent;
using System.Reflection;

namespace PanelService.Wire.Reading;

/// <summary>The fields a wire record knows, by their names on the wire.</summary>
internal sealed class RecordShape
{
    private static readonly ConcurrentDictionary<Type, RecordShape> Shapes = new();

    private RecordShape(Type type)
    {
        Fields = type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .ToDictionary(p => JsonPath.Camel(p.Name), StringComparer.Ordinal);
        Names = [.. Fields.Keys];
    }

    internal Dictionary<string, PropertyInfo> Fields { get; }

    internal string[] Names { get; }

    internal static RecordShape Of(Type type) => Shapes.GetOrAdd(type, t => new RecordShape(t));
}
