using System.Text.Json;
using FluentValidation;
using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Store.Cuts;
using PanelService.Validation;
using PanelService.Wire.Reading;
using PanelService.Wire.Studio;

namespace PanelService.Http;

/// <summary>How a batch came out; no body at all says that everything did as planned.</summary>
internal sealed class CutBody
{
    private CutBody(Spoilage spoiled, ProblemHttpResult? problem)
    {
        Spoiled = spoiled;
        Problem = problem;
    }

    /// <summary>What was spoiled.</summary>
    public Spoilage Spoiled { get; }

    /// <summary>What is wrong with the body; null where nothing is.</summary>
    public ProblemHttpResult? Problem { get; }

    /// <summary>Binds: found by its name by the framework.</summary>
    /// <param name="context">The request.</param>
    public static async ValueTask<CutBody> BindAsync(HttpContext context)
    {
        if (context.Request.ContentLength is 0 || (context.Request.ContentLength is null && context.Request.ContentType is null))
        {
            return new CutBody(Spoilage.None, null);
        }

        (JsonDocument? document, ProblemHttpResult? problem) = await BodyReader.ReadAsync(context.Request, context.RequestAborted);
        using (document)
        {
            return document is null ? new CutBody(Spoilage.None, problem) : Read(document.RootElement, context.RequestServices.GetRequiredService<IValidator<CutRequest>>());
        }
    }

    private static CutBody Read(JsonElement document, IValidator<CutRequest> rules)
    {
        var faults = new Faults();
        CutRequest? request = new JsonBinder(Defaults.Units, faults).Read<CutRequest>(document);
        var measures = new OrderMeasures(Defaults.Units, Defaults.Currency);
        foreach (FluentValidation.Results.ValidationFailure failure in request is null ? [] : rules.Validate(measures.ContextFor(request)).Errors)
        {
            string path = JsonPath.FromProperty(failure.PropertyName);
            if (!faults.At(path))
            {
                faults.Add(path, failure.ErrorMessage);
            }
        }

        return faults.Any ? new CutBody(Spoilage.None, Problems.Invalid(faults)) : new CutBody(SpoilageOf(request), null);
    }

    private static Spoilage SpoilageOf(CutRequest? request) => new(
        [.. (request?.Spoiled ?? []).OfType<SpoiledRequest>().Select(one => new Spoiling(one.Mark!, one.Count!.Value))],
        [.. (request?.SpoiledSheets ?? []).OfType<SpoiledSheetRequest>().Select(one => new SpoiledSheet(one.Sheet!.Value, one.Count!.Value))]);
}
