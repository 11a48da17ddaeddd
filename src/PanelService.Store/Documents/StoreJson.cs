using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using PanelService.Store.Faults;

namespace PanelService.Store.Documents;

/// <summary>
/// The trade's records as JSON and back, whole. A field that an older document lacks keeps the record's default, and one
/// that it has too many is passed over, so that old documents stay readable when the records grow.
/// </summary>
internal static class StoreJson
{
    private const string Kind = "$is";

    internal static JsonSerializerOptions Options { get; } = Make();

    internal static string Write<T>(T value) => JsonSerializer.Serialize(value, Options);

    /// <summary>Reads what was written elsewhere.</summary>
    /// <exception cref="JsonException">It is no such document.</exception>
    internal static T Parse<T>(string json) =>
        JsonSerializer.Deserialize<T>(json, Options) ?? throw new JsonException($"A stored {typeof(T).Name} is null.");

    /// <summary>Reads what the database keeps.</summary>
    /// <exception cref="StoreUnavailableException">It is damaged.</exception>
    internal static T Read<T>(string json)
    {
        try
        {
            return Parse<T>(json);
        }
        catch (Exception fault) when (fault is JsonException or NotSupportedException or ArgumentException or InvalidOperationException)
        {
            throw new StoreUnavailableException(
                StoreFault.Damaged, "What the database keeps under this name is damaged and cannot be read; everything else in it still can. A backup may have it whole.", fault);
        }
    }

    /// <summary>A word of a closed set as it is stored: "inch".</summary>
    internal static string Word<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.CamelCase.ConvertName(value.ToString());

    /// <summary>The value of a stored word.</summary>
    internal static T Word<T>(string word)
        where T : struct, Enum => Enum.Parse<T>(word, ignoreCase: true);

    private static JsonSerializerOptions Make()
    {
        var options = new JsonSerializerOptions
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { NameKinds, AskForNothing, LeaveOutWhatFollows } },
        };
        options.Converters.Add(new SingleFieldConverter());
        options.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.CamelCase));
        return options;
    }

    // A closed family of records: which of them it is stands in the document.
    private static void NameKinds(JsonTypeInfo info)
    {
        if (!info.Type.IsAbstract || info.Kind != JsonTypeInfoKind.Object || !IsOurs(info.Type))
        {
            return;
        }

        info.PolymorphismOptions = new JsonPolymorphismOptions { TypeDiscriminatorPropertyName = Kind };
        foreach (Type member in info.Type.Assembly.GetTypes().Where(type => type.IsSubclassOf(info.Type) && !type.IsAbstract).OrderBy(type => type.Name, StringComparer.Ordinal))
        {
            info.PolymorphismOptions.DerivedTypes.Add(new JsonDerivedType(member, member.Name));
        }
    }

    private static void AskForNothing(JsonTypeInfo info)
    {
        foreach (JsonPropertyInfo property in info.Properties)
        {
            property.IsRequired = false;
        }

        // A list that an older document does not have is empty.
        if (info.Kind == JsonTypeInfoKind.Object && IsOurs(info.Type))
        {
            info.OnDeserialized = FillLists;
        }
    }

    private static void FillLists(object record)
    {
        foreach (System.Reflection.PropertyInfo property in record.GetType().GetProperties())
        {
            if (IsList(property.PropertyType) && property.SetMethod is not null && Equals(property.GetValue(record), Activator.CreateInstance(property.PropertyType)))
            {
                property.SetValue(record, property.PropertyType.GetField(nameof(ImmutableArray<int>.Empty))!.GetValue(null));
            }
        }
    }

    // Whatever a record works out from its other fields is worked out again.
    private static void LeaveOutWhatFollows(JsonTypeInfo info)
    {
        for (int index = info.Properties.Count - 1; index >= 0; index--)
        {
            JsonPropertyInfo property = info.Properties[index];
            if (property.Set is null && property.AssociatedParameter is null && IsOurs(info.Type))
            {
                info.Properties.RemoveAt(index);
            }
        }
    }

    private static bool IsList(Type type) => type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>);

    private static bool IsOurs(Type type) => type.Namespace?.StartsWith(nameof(PanelService), StringComparison.Ordinal) == true;
}
