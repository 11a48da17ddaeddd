using System.Reflection;
using System.Text.Json;
using PanelService.Planning.Measures;

namespace PanelService.Wire.Reading;

/// <summary>
/// Reads a JSON document into a wire record and goes on after a fault, so that all faults are reported at once: a field
/// that cannot be read is left null and noted. A serializer stops at the first; hence this one.
/// </summary>
internal sealed class JsonBinder(LengthUnit unit, Faults faults)
{
    private readonly ScalarReader _scalars = new(unit, faults);

    /// <summary>Reads a whole document; null where it is no object at all.</summary>
    internal T? Read<T>(JsonElement document)
        where T : class => (T?)ReadRecord(typeof(T), document, JsonPath.Root);

    private object? ReadRecord(Type type, JsonElement element, string path)
    {
        if (element.ValueKind != JsonValueKind.Object)
        {
            faults.Add(path, $"Expected an object with the fields {string.Join(", ", RecordShape.Of(type).Names)}; this is {JsonKind.Name(element)}.");
            return null;
        }

        RecordShape shape = RecordShape.Of(type);
        object record = Activator.CreateInstance(type)!;
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (JsonProperty property in element.EnumerateObject())
        {
            ReadField(shape, record, property, path, seen);
        }

        return record;
    }

    private void ReadField(RecordShape shape, object record, JsonProperty property, string path, HashSet<string> seen)
    {
        if (JsonKind.NameOf(property) is not { } name)
        {
            faults.Add(path, "A field's name is no valid Unicode text.");
            return;
        }

        string here = JsonPath.Field(path, name);
        if (!seen.Add(name))
        {
            faults.Add(here, "This field stands here twice; which of the two is meant cannot be known.");
        }
        else if (!shape.Fields.TryGetValue(name, out PropertyInfo? field))
        {
            faults.Add(here, $"Unknown field. {NearestName.Suggestion(name, shape.Names)}");
        }
        else if (property.Value.ValueKind != JsonValueKind.Null)
        {
            field.SetValue(record, ReadValue(field.PropertyType, property.Value, here));
        }
    }

    private object? ReadValue(Type declared, JsonElement value, string path)
    {
        Type type = Nullable.GetUnderlyingType(declared) ?? declared;
        if (_scalars.TryRead(type, value, path, out object? scalar))
        {
            return scalar;
        }

        return type.IsGenericType ? ReadList(type.GetGenericArguments()[0], value, path) : ReadRecord(type, value, path);
    }

    private Array? ReadList(Type elementType, JsonElement value, string path)
    {
        if (value.ValueKind != JsonValueKind.Array)
        {
            faults.Add(path, $"Expected an array; this is {JsonKind.Name(value)}.");
            return null;
        }

        var list = Array.CreateInstance(elementType, value.GetArrayLength());
        int index = 0;
        foreach (JsonElement element in value.EnumerateArray())
        {
            list.SetValue(ReadValue(elementType, element, JsonPath.Element(path, index)), index);
            index++;
        }

        return list;
    }
}
