using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace PanelService.Store.Documents;

/// <summary>Measures (a length, an area, an amount) are structs over one number: written as that number, exactly.</summary>
internal sealed class SingleFieldConverter : JsonConverterFactory
{
    /// <inheritdoc/>
    public override bool CanConvert(Type typeToConvert) =>
        typeToConvert is { IsValueType: true, IsPrimitive: false, IsEnum: false }
        && typeToConvert.Namespace?.StartsWith(nameof(PanelService), StringComparison.Ordinal) == true
        && Fields(typeToConvert) is [{ FieldType: var inner }]
        && (inner.IsPrimitive || inner == typeof(decimal) || inner == typeof(Int128));

    /// <inheritdoc/>
    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options)
    {
        FieldInfo field = Fields(typeToConvert)[0];
        return (JsonConverter)Activator.CreateInstance(typeof(Of<,>).MakeGenericType(typeToConvert, field.FieldType), field)!;
    }

    private static FieldInfo[] Fields(Type type) => type.GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic);

    private sealed class Of<T, TField>(FieldInfo field) : JsonConverter<T>
        where T : struct
    {
        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            object boxed = default(T);
            field.SetValue(boxed, JsonSerializer.Deserialize<TField>(ref reader, options));
            return (T)boxed;
        }

        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) =>
            JsonSerializer.Serialize(writer, (TField)field.GetValue(value)!, options);
    }
}
