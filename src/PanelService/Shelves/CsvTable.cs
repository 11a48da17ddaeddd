using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CsvHelper;
using PanelService.Wire.Plans;
using PanelService.Wire.Reading;

namespace PanelService.Shelves;

/// <summary>
/// Records as comma-separated values (RFC 4180), a column per field by its path: <c>sale.step</c>,
/// <c>containers[0].price</c>. Empty cells are fields left out. Text that a spreadsheet would take for a formula is disarmed
/// on the way out and armed again on the way in.
/// </summary>
internal static partial class CsvTable
{
    private const int MostRows = 100_000;

    // No field of ours lies deeper than half of this.
    private const int MostSteps = 6;

    private static readonly CsvWriterOptions Writing = CsvWriterOptions.Default with { Injection = CsvInjection.Escape };

    // Words, even where they look like numbers.
    private static readonly string[] Texts = ["id", "name", "kind", "sort", "supply", "units", "currency", "pricedOn", "grain", "warp", "sale.by", "surface", "mark", "note"];

    internal static string Write(IReadOnlyList<JsonObject> records, IReadOnlyList<string> first)
    {
        List<Dictionary<string, string>> rows = [.. records.Select(Flat)];
        string[] columns = [.. first, .. rows.SelectMany(row => row.Keys).Except(first).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = CsvWriter.Create(text, Writing, leaveOpen: true))
        {
            csv.WriteRecord(columns);
            foreach (Dictionary<string, string> row in rows)
            {
                csv.WriteRecord([.. columns.Select(column => row.GetValueOrDefault(column, ""))]);
            }
        }

        return text.ToString();
    }

    /// <summary>The records, each with the line it begins on; faults where the text is no table.</summary>
    internal static List<(long Line, JsonObject Record)> Read(string text, Faults faults)
    {
        List<(long, JsonObject)> records = [];
        long line = 1;
        try
        {
            using var csv = CsvReader.FromText(text, CsvReaderOptions.Default with { TrackLineNumbers = true });
            while (csv.Read())
            {
                line = csv.LineNumber;
                if (records.Count == MostRows)
                {
                    faults.Add(At(line), $"A table may have at most {MostRows} lines below the first.");
                    break;
                }

                if (csv.FieldCount != csv.Headers.Count)
                {
                    faults.Add(At(line), $"Expected {csv.Headers.Count} cells as in the first line; this has {csv.FieldCount}.");
                    continue;
                }

                if (Deep(csv.Headers, [.. Enumerable.Range(0, csv.FieldCount).Select(csv.GetString)], out string? wrong) is { } record)
                {
                    records.Add((line, record));
                }
                else
                {
                    faults.Add(At(line), $"The column \"{wrong}\" is no path of a field, or stands within another column that has a value.");
                }
            }
        }
        catch (CsvFormatException fault)
        {
            faults.Add(At(line), $"No comma-separated values (RFC 4180): {fault.Message}");
        }

        return records;
    }

    internal static string At(long line) => string.Create(CultureInfo.InvariantCulture, $"line {line}");

    private static Dictionary<string, string> Flat(JsonObject record)
    {
        var row = new Dictionary<string, string>(StringComparer.Ordinal);
        Flatten(record, "", row);
        return row;
    }

    private static void Flatten(JsonNode? node, string path, Dictionary<string, string> row)
    {
        switch (node)
        {
            case JsonObject record:
                foreach ((string name, JsonNode? value) in record)
                {
                    Flatten(value, path.Length == 0 ? name : $"{path}.{name}", row);
                }

                break;
            case JsonArray list:
                for (int index = 0; index < list.Count; index++)
                {
                    Flatten(list[index], JsonPath.Element(path, index), row);
                }

                break;
            case JsonValue value:
                row[path] = value.TryGetValue(out string? text) ? Formulas.Disarm(text) : value.ToJsonString();
                break;
            default:
                break;
        }
    }

    // Null where a column cannot be put in its place.
    private static JsonObject? Deep(IReadOnlyList<string> columns, string[] cells, out string? wrong)
    {
        var record = new JsonObject();
        for (int column = 0; column < columns.Count; column++)
        {
            if (cells[column].Length > 0 && !Put(record, columns[column], Value(columns[column], Formulas.Arm(cells[column]))))
            {
                wrong = columns[column];
                return null;
            }
        }

        wrong = null;
        return record;
    }

    private static bool Put(JsonObject record, string column, JsonNode value)
    {
        string[] steps = column.Split('.');
        JsonObject? here = steps.Length > MostSteps ? null : record;
        foreach (string step in steps[..^1])
        {
            here = here is null ? null : Step(here, step);
        }

        if (here is null || here.ContainsKey(steps[^1]))
        {
            return false;
        }

        here[steps[^1]] = value;
        return true;
    }

    // "containers[0]" is the first of a list; a gap in the numbers is closed up. Null where something else stands there.
    private static JsonObject? Step(JsonObject record, string step)
    {
        Match match = Element().Match(step);
        if (!match.Success)
        {
            return (record[step] ??= new JsonObject()) as JsonObject;
        }

        if ((record[match.Groups[1].Value] ??= new JsonArray()) is not JsonArray list)
        {
            return null;
        }

        int index = Math.Min(int.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture), list.Count);
        if (index == list.Count)
        {
            list.Add(new JsonObject());
        }

        return list[index] as JsonObject;
    }

    private static JsonValue Value(string column, string cell) => (Texts.Contains(column), cell) switch
    {
        (true, _) => JsonValue.Create(cell),
        (_, "true") => JsonValue.Create(true),
        (_, "false") => JsonValue.Create(false),
        _ => decimal.TryParse(cell, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal number)
            ? JsonValue.Create(number)
            : JsonValue.Create(cell),
    };

    [GeneratedRegex(@"^([A-Za-z]+)\[([0-9]{1,3})\]$")]
    private static partial Regex Element();
}
