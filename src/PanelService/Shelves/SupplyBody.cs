using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using FluentValidation;
using PanelService.Http;
using PanelService.Planning.Measures;
using PanelService.Store.Supplies;
using PanelService.Validation;
using PanelService.Wire.Orders;
using PanelService.Wire.Reading;

namespace PanelService.Shelves;

/// <summary>
/// A good as it is sent to be saved: the shape it has in an order, with units, currency and the day of its price beside
/// the other fields. What is on hand is no matter of what can be bought: it is left out, and the answer says so.
/// </summary>
internal sealed class SupplyBody
{
    private const string Day = "yyyy-MM-dd";
    private static readonly string[] OnHandFields = ["onHand", "value", "remnants"];
    private static readonly string[] AnswerFields = ["version", "warnings"];

    private readonly Faults _faults = new();
    private readonly List<string> _leftOut = [];

    private SupplyBody()
    {
    }

    /// <summary>What is wrong with it.</summary>
    internal Faults Faults => _faults;

    /// <summary>The good; only where nothing is wrong.</summary>
    internal Supply? Supply { get; private set; }

    /// <summary>The day its price was set, where it says so.</summary>
    internal DateOnly? PricedOn { get; private set; }

    /// <summary>Fields that belong to the stock and were left out.</summary>
    internal IReadOnlyList<string> LeftOut => _leftOut;

    /// <summary>Reads a good.</summary>
    /// <param name="sort">Its sort, from the address.</param>
    /// <param name="id">Its id, from the address.</param>
    /// <param name="document">What was sent.</param>
    /// <param name="usual">The units and the currency where it names none.</param>
    internal static SupplyBody Read(SupplySort sort, string id, JsonElement document, OrderMeasures usual)
    {
        var body = new SupplyBody();
        if (document.ValueKind != JsonValueKind.Object)
        {
            body._faults.Add(JsonPath.Root, $"Expected an object: the good as it stands in an order; this is {JsonKind.Name(document)}.");
            return body;
        }

        body.ReadObject(sort, id, JsonObject.Create(document.Clone())!, usual);
        return body;
    }

    private void ReadObject(SupplySort sort, string id, JsonObject good, OrderMeasures usual)
    {
        LengthUnit units = Units(Take(good, "units")) ?? usual.Units;
        Currency currency = Money(Take(good, "currency")) ?? usual.Currency;
        PricedOn = PriceDay(Take(good, "pricedOn"));
        foreach (string field in AnswerFields)
        {
            _ = Take(good, field);
        }

        foreach (string field in OnHandFields.Where(field => Take(good, field) is { } value && !IsNothing(value)))
        {
            _leftOut.Add(field);
        }

        Name(good, id);
        var measures = new OrderMeasures(units, currency);
        Check(sort, good, measures);
        if (!_faults.Any)
        {
            Supply = new Supply(sort, id, units, currency.Code, good.ToJsonString(), default, 0);
        }
    }

    private void Name(JsonObject good, string id)
    {
        if (Take(good, "id") is { } given && !(given is JsonValue text && text.TryGetValue(out string? said) && said == id))
        {
            _faults.Add("id", $"The address says \"{id}\", and this is another id; leave it out or say the same.");
        }

        good.Insert(0, "id", id);
    }

    private void Check(SupplySort sort, JsonObject good, OrderMeasures measures)
    {
        switch (sort)
        {
            case SupplySort.Boards:
                Check(good, measures, new BoardRules());
                break;
            case SupplySort.Cloths:
                Check(good, measures, new ClothRules());
                break;
            case SupplySort.Strips:
                Check(good, measures, new StripRules());
                break;
            default:
                Check<LiquidRequest>(good, measures, new LiquidRules());
                break;
        }
    }

    private void Check<T>(JsonObject good, OrderMeasures measures, IValidator<T> rules)
        where T : class
    {
        using JsonDocument document = JsonDocument.Parse(good.ToJsonString());
        T? read = new JsonBinder(measures.Units, _faults).Read<T>(document.RootElement);
        if (read is null)
        {
            return;
        }

        foreach (FluentValidation.Results.ValidationFailure failure in rules.Validate(measures.ContextFor(read)).Errors)
        {
            string path = JsonPath.FromProperty(failure.PropertyName);
            if (!_faults.At(path))
            {
                _faults.Add(path, failure.ErrorMessage);
            }
        }
    }

    private LengthUnit? Units(JsonNode? given)
    {
        string[] words = [.. Enum.GetNames<LengthUnit>().Select(JsonPath.Camel)];
        string? word = TextOf(given);
        if (given is not null && !words.Contains(word))
        {
            _faults.Add("units", $"Expected one of {string.Join(", ", words.Select(one => $"\"{one}\""))}.");
        }

        return words.Contains(word) ? Enum.Parse<LengthUnit>(word!, ignoreCase: true) : null;
    }

    private Currency? Money(JsonNode? given)
    {
        Currency? currency = Currencies.Find(TextOf(given) ?? "");
        if (given is not null && currency is null)
        {
            _faults.Add("currency", "Expected a currency code of ISO 4217, such as \"EUR\", \"USD\" or \"JPY\".");
        }

        return currency;
    }

    private DateOnly? PriceDay(JsonNode? given)
    {
        if (given is null)
        {
            return null;
        }

        if (DateOnly.TryParseExact(TextOf(given), Day, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day))
        {
            return day;
        }

        _faults.Add("pricedOn", "Expected the day its price was set, such as \"2026-11-25\".");
        return null;
    }

    private static JsonNode? Take(JsonObject good, string field)
    {
        good.Remove(field, out JsonNode? value);
        return value;
    }

    private static string? TextOf(JsonNode? node) => node is JsonValue value && value.TryGetValue(out string? text) ? text : null;

    private static bool IsNothing(JsonNode value) => value switch
    {
        JsonArray list => list.Count == 0,
        JsonValue number => number.TryGetValue(out decimal amount) && amount == 0,
        _ => false,
    };
}
