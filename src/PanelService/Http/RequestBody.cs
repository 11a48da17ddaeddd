using System.Text.Json;
using FluentValidation;
using FluentValidation.Results;
using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Planning.Measures;
using PanelService.Shelves;
using PanelService.Store.Shelves;
using PanelService.Validation;
using PanelService.Wire.Reading;

namespace PanelService.Http;

/// <summary>A request's body, bound before its handler runs; <see cref="ValidBodyFilter{T}"/> lets only right ones through.</summary>
/// <typeparam name="T">The wire record it holds.</typeparam>
internal sealed class RequestBody<T>
    where T : class, IMeasuredRequest
{
    private readonly Faults _faults = new();
    private readonly ProblemHttpResult? _problem;

    private RequestBody(ProblemHttpResult? problem) => _problem = problem;

    private RequestBody(JsonElement document, IBodyFiller<T>? filler, Shelf? shelf)
    {
        Text = document.GetRawText();
        LengthUnit units = UnitsOf(document) ?? shelf?.Settings?.Units ?? Defaults.Units;
        T? read = new JsonBinder(units, _faults).Read<T>(document);
        Currency currency = Currencies.Find(read?.Currency ?? shelf?.Settings?.Currency ?? "") ?? Defaults.Currency;
        Measures = new OrderMeasures(units, currency);
        if (read is not null && filler is not null)
        {
            Filled = filler.Fill(read, Measures, shelf!, _faults);
        }

        Value = Filled?.Request ?? read;
    }

    /// <summary>What was filled in from the studio's memory; null for a request of which nothing is.</summary>
    public Filled<T>? Filled { get; }

    /// <summary>The record; never null behind the filter.</summary>
    public T? Value { get; }

    /// <summary>The document as it was sent; empty where it could not be read.</summary>
    public string Text { get; } = "";

    /// <summary>The unit and currency of its fields, defaults where it names none.</summary>
    public OrderMeasures Measures { get; } = new(Defaults.Units, Defaults.Currency);

    /// <summary>Binds: found by its name by the framework.</summary>
    /// <param name="context">The request.</param>
    public static async ValueTask<RequestBody<T>> BindAsync(HttpContext context)
    {
        (JsonDocument? document, ProblemHttpResult? problem) = await BodyReader.ReadAsync(context.Request, context.RequestAborted);
        using (document)
        {
            if (document is null)
            {
                return new RequestBody<T>(problem);
            }

            IBodyFiller<T>? filler = context.RequestServices.GetService<IBodyFiller<T>>();
            Shelf? shelf = filler is null ? null : await filler.LoadAsync(context.RequestAborted);
            return new RequestBody<T>(document.RootElement, filler, shelf);
        }
    }

    /// <summary>The problem to answer with: syntax, or all faults of shape and rules at once; null where all is well.</summary>
    internal ProblemHttpResult? Refusal(IValidator<T> rules)
    {
        if (_problem is not null)
        {
            return _problem;
        }

        if (Value is not null)
        {
            AddRuleFaults(rules.Validate(Measures.ContextFor(Value)));
        }

        return _faults.Any ? Problems.Invalid(_faults) : null;
    }

    // A field that could not be read is null by now: what the rules say of it would mislead.
    private void AddRuleFaults(ValidationResult result)
    {
        var failures = result.Errors
            .Select(failure => (Path: JsonPath.FromProperty(failure.PropertyName), failure.ErrorMessage))
            .Where(failure => !_faults.At(failure.Path))
            .ToArray();
        foreach ((string path, string message) in failures)
        {
            _faults.Add(path, message);
        }
    }

    // Read ahead: bare numbers may stand before the unit they are in.
    private static LengthUnit? UnitsOf(JsonElement document)
    {
        if (document.ValueKind != JsonValueKind.Object)
        {
            return null;
        }

        string? word = document.EnumerateObject()
            .Where(field => field.Value.ValueKind == JsonValueKind.String && JsonKind.NameOf(field) == "units")
            .Select(field => JsonKind.TextOf(field.Value))
            .FirstOrDefault();
        return Enum.TryParse(word, ignoreCase: true, out LengthUnit unit) && Enum.IsDefined(unit) ? unit : null;
    }
}
