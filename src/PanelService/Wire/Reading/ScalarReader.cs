using System.Text.Json;
using PanelService.Planning.Measures;
using PanelService.Wire.Orders;

namespace PanelService.Wire.Reading;

/// <summary>Reads single values: text, numbers, words of a closed set, lengths and pairs of lengths.</summary>
internal sealed class ScalarReader
{
    private readonly Dictionary<Type, Func<JsonElement, string, object?>> _readers;
    private readonly LengthUnit _unit;
    private readonly Faults _faults;

    internal ScalarReader(LengthUnit unit, Faults faults)
    {
        _unit = unit;
        _faults = faults;
        _readers = new()
        {
            [typeof(string)] = Text,
            [typeof(int)] = Whole,
            [typeof(decimal)] = Number,
            [typeof(bool)] = Flag,
            [typeof(Length)] = ReadLength,
            [typeof(LengthPair)] = Pair,
            [typeof(Margin)] = ReadMargin,
            [typeof(Weight)] = ReadWeight,
            [typeof(Percents)] = ReadPercents,
        };
    }

    /// <summary>Reads a value of a type it knows; false where the type is none of those.</summary>
    internal bool TryRead(Type type, JsonElement value, string path, out object? read)
    {
        if (type.IsEnum)
        {
            read = Word(type, value, path);
            return true;
        }

        bool known = _readers.TryGetValue(type, out Func<JsonElement, string, object?>? reader);
        read = known ? reader!(value, path) : null;
        return known;
    }

    private string? Text(JsonElement value, string path)
    {
        if (value.ValueKind != JsonValueKind.String)
        {
            return Fault<string>(path, $"Expected text; this is {JsonKind.Name(value)}.");
        }

        string? text = JsonKind.TextOf(value);
        if (text is null || text.Any(c => char.IsControl(c) || c is (char)0xFFFE or (char)0xFFFF))
        {
            return Fault<string>(path, "Expected text of printable characters.");
        }

        return text.Trim();
    }

    private object? Whole(JsonElement value, string path)
    {
        if (value.ValueKind != JsonValueKind.Number)
        {
            return Fault(path, $"Expected a whole number; this is {JsonKind.Name(value)}.");
        }

        return value.TryGetDecimal(out decimal number) && number == decimal.Truncate(number) && number is >= int.MinValue and <= int.MaxValue
            ? (int)number
            : Fault(path, $"Expected a whole number; {Shown(value)} is none that can be counted with.");
    }

    private object? Number(JsonElement value, string path)
    {
        if (value.ValueKind != JsonValueKind.Number)
        {
            return Fault(path, $"Expected a number; this is {JsonKind.Name(value)}.");
        }

        return value.TryGetDecimal(out decimal number)
            ? number
            : Fault(path, $"{Shown(value)} is too large a number.");
    }

    private object? Flag(JsonElement value, string path) => value.ValueKind switch
    {
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        _ => Fault(path, $"Expected true or false; this is {JsonKind.Name(value)}."),
    };

    private object? Word(Type type, JsonElement value, string path)
    {
        string[] words = [.. Enum.GetNames(type).Select(JsonPath.Camel)];
        string expected = $"Expected one of {string.Join(", ", words.Select(w => $"\"{w}\""))}";
        if (value.ValueKind != JsonValueKind.String)
        {
            return Fault(path, $"{expected}; this is {JsonKind.Name(value)}.");
        }

        int index = Array.IndexOf(words, JsonKind.TextOf(value));
        return index >= 0
            ? Enum.GetValues(type).GetValue(index)
            : Fault(path, $"{expected}.{NearestName.Hint(JsonKind.TextOf(value) ?? "", words)}");
    }

    private object? ReadLength(JsonElement value, string path)
    {
        LengthReading reading = value.ValueKind switch
        {
            JsonValueKind.Number => FromNumber(value),
            JsonValueKind.String when JsonKind.TextOf(value) is { } text => LengthText.Parse(text, _unit),
            _ => new LengthNotRead($"Expected a length: a number of {LengthText.Abbreviation(_unit)}, or text such as \"16 1/2\" or \"41 cm\"; this is {JsonKind.Name(value)}."),
        };
        return reading is LengthRead read ? read.Length : Fault(path, ((LengthNotRead)reading).Message);
    }

    private object? ReadWeight(JsonElement value, string path) => value.ValueKind switch
    {
        JsonValueKind.Number when value.TryGetDecimal(out decimal number) && Math.Abs(number) < 1_000_000_000m => Weight.From(number, _unit),
        JsonValueKind.String when JsonKind.TextOf(value) is { } text && WeightText.Parse(text, _unit) is { } weight => weight,
        _ => Fault(path, $"Expected a weight: a number of {(_unit == LengthUnit.Inch ? "lb" : "g")}, or text such as \"20 lb\" or \"9 kg\"."),
    };

    // A bare number beyond this is no length of anything here, and might not fit one.
    private LengthReading FromNumber(JsonElement value) =>
        value.TryGetDecimal(out decimal number) && Math.Abs(number) < 1_000_000_000_000m
            ? new LengthRead(Length.From(number, _unit))
            : new LengthNotRead($"{Shown(value)} is too large a number for a length.");

    private LengthPair? Pair(JsonElement value, string path)
    {
        if (value.ValueKind != JsonValueKind.Array || value.GetArrayLength() != 2)
        {
            return Fault<LengthPair>(path, "Expected an array of two lengths, such as [4, 6].");
        }

        object? first = ReadLength(value[0], JsonPath.Element(path, 0));
        object? second = ReadLength(value[1], JsonPath.Element(path, 1));
        return first is Length a && second is Length b ? new LengthPair(a, b) : null;
    }

    private Margin? ReadMargin(JsonElement value, string path)
    {
        if (value.ValueKind == JsonValueKind.Array && value.GetArrayLength() == 4)
        {
            Length?[] sides = [.. Enumerable.Range(0, 4).Select(side => ReadLength(value[side], JsonPath.Element(path, side)) as Length?)];
            return sides is [{ } top, { } right, { } bottom, { } left] ? new Margin(left, top, right, bottom) : null;
        }

        if (value.ValueKind == JsonValueKind.Array)
        {
            return Pair(value, path) is { } pair ? new Margin(pair.First, pair.Second) : null;
        }

        return ReadLength(value, path) is Length all ? new Margin(all, all) : null;
    }

    private Percents? ReadPercents(JsonElement value, string path)
    {
        if (value.ValueKind != JsonValueKind.Array)
        {
            return Number(value, path) is decimal both ? new Percents(both, both) : null;
        }

        if (value.GetArrayLength() != 2)
        {
            return Fault<Percents>(path, "Expected one percentage or two, such as [3, 4].");
        }

        object? width = Number(value[0], JsonPath.Element(path, 0));
        object? height = Number(value[1], JsonPath.Element(path, 1));
        return width is decimal a && height is decimal b ? new Percents(a, b) : null;
    }

    private static string Shown(JsonElement value)
    {
        string raw = value.GetRawText();
        return raw.Length > 40 ? raw[..40] + "…" : raw;
    }

    private T? Fault<T>(string path, string message)
        where T : class
    {
        _faults.Add(path, message);
        return null;
    }

    private object? Fault(string path, string message) => Fault<object>(path, message);
}
