using System.Text.Json;

namespace PanelService.Trials.Fuzzing;

/// <summary>Takes a document and spoils it: values put in other values' places, fields doubled, named otherwise, left out, cut off.</summary>
internal static class Spoiler
{
    internal static string Spoil(string document, Dice dice)
    {
        string text = document;
        for (int slips = dice.Below(4); slips > 0; slips--)
        {
            text = dice.Below(10) switch
            {
                0 => text[..dice.Below(text.Length + 1)],
                1 => text.Insert(dice.Below(text.Length + 1), dice.One<string>(["\0", "\"", "}", "]", ",", "\uFEFF", "\\", "é", "\u2028"])),
                2 => Replace(text, dice, Hostile.Large(dice)),
                3 => text.Replace(dice.One<string>(["\"panels\"", "\"width\"", "\"id\"", "\"units\"", "\"price\""]), dice.One<string>(["\"Panels\"", "\"wdith\"", "\"\"", "\"__proto__\""]), StringComparison.Ordinal),
                _ => Replace(text, dice, dice.One(Hostile.Tokens)),
            };
        }

        return text;
    }

    // Between two JSON values of the text, wherever they are: found by reading, so that a spoilt document can be spoilt again.
    private static string Replace(string text, Dice dice, string token)
    {
        List<(int From, int To)> values = Values(text);
        if (values.Count == 0)
        {
            return token;
        }

        (int from, int to) = dice.One(values);
        return string.Concat(text.AsSpan(0, from), token, text.AsSpan(to));
    }

    private static List<(int From, int To)> Values(string text)
    {
        var values = new List<(int, int)>();
        byte[] bytes = System.Text.Encoding.UTF8.GetBytes(text);
        if (bytes.Length != text.Length)
        {
            return values;
        }

        var reader = new Utf8JsonReader(bytes);
        var open = new Stack<int>();
        try
        {
            while (reader.Read())
            {
                switch (reader.TokenType)
                {
                    case JsonTokenType.StartObject or JsonTokenType.StartArray:
                        open.Push((int)reader.TokenStartIndex);
                        break;
                    case JsonTokenType.EndObject or JsonTokenType.EndArray:
                        values.Add((open.Pop(), (int)reader.BytesConsumed));
                        break;
                    case not JsonTokenType.PropertyName:
                        values.Add(((int)reader.TokenStartIndex, (int)reader.BytesConsumed));
                        break;
                }
            }
        }
        catch (JsonException)
        {
            // What was read so far will do.
        }

        return values;
    }
}
