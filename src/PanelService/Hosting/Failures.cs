using System.Globalization;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.AspNetCore.Routing.Template;
using Microsoft.AspNetCore.WebUtilities;
using PanelService.Http;
using PanelService.Store.Faults;

namespace PanelService.Hosting;

/// <summary>Every failure that no endpoint answers itself becomes a problem document too.</summary>
internal static class Failures
{
    // Where the platform cannot bind a value it answers so, or throws, by the environment.
    private const string BadAddress = "A value in the address, in its path or after the question mark, is not of the kind expected there, a word for a number, say. What each address takes stands at /docs.";

    private static readonly Dictionary<int, string> Details = new()
    {
        [StatusCodes.Status404NotFound] = "There is nothing at this address. The addresses there are stand at /docs.",
        [StatusCodes.Status405MethodNotAllowed] = "This address does not take this method; the Allow header names those it takes.",
    };

    internal static void UseProblemAnswers(this WebApplication app)
    {
        app.UseExceptionHandler(new ExceptionHandlerOptions
        {
            ExceptionHandler = AnswerException,
            StatusCodeSelector = StatusOf,
        });
        app.UseStatusCodePages(context => AnswerStatus(context.HttpContext));
    }

    private static int StatusOf(Exception fault) =>
        fault switch
        {
            BadHttpRequestException bad => bad.StatusCode,
            StoreUnavailableException store => StoreProblems.StatusOf(store.Fault),
            _ => StatusCodes.Status500InternalServerError,
        };

    private static Task AnswerException(HttpContext http)
    {
        IExceptionHandlerFeature? handled = http.Features.Get<IExceptionHandlerFeature>();
        return handled?.Error switch
        {
            BadHttpRequestException { StatusCode: StatusCodes.Status413PayloadTooLarge } => TooLarge(http, handled.Endpoint),
            BadHttpRequestException { StatusCode: StatusCodes.Status400BadRequest, } unbound when IsOfTheAddress(unbound) => Answer(http, unbound.StatusCode, BadAddress),
            BadHttpRequestException bad => Answer(http, bad.StatusCode, Details.GetValueOrDefault(bad.StatusCode, "The request could not be read.")),
            StoreUnavailableException store => TypedResults.Problem(StoreProblems.Of(store)).ExecuteAsync(http),
            _ => TypedResults.Problem(Problems.Internal()).ExecuteAsync(http),
        };
    }

    // A body or a header that cannot be read is thrown as the same exception: only the words tell them apart.
    private static bool IsOfTheAddress(BadHttpRequestException fault) => fault.Message.StartsWith("Failed to bind parameter", StringComparison.Ordinal);

    private static Task TooLarge(HttpContext http, Endpoint? endpoint)
    {
        long most = endpoint?.Metadata.GetMetadata<IRequestSizeLimitMetadata>()?.MaxRequestBodySize ?? BodyReader.MostBytes;
        return Answer(http, StatusCodes.Status413PayloadTooLarge, string.Create(CultureInfo.InvariantCulture, $"A body may have at most {most} bytes."));
    }

    private static Task AnswerStatus(HttpContext http) => http.Response.StatusCode switch
    {
        StatusCodes.Status400BadRequest => Answer(http, StatusCodes.Status400BadRequest, BadAddress),
        StatusCodes.Status413PayloadTooLarge => TooLarge(http, http.GetEndpoint()),
        StatusCodes.Status415UnsupportedMediaType => Problems.MediaType(http.Request.ContentType, TypesFor(http)).ExecuteAsync(http),
        _ => Answer(http, http.Response.StatusCode, Details.GetValueOrDefault(http.Response.StatusCode, "The request was refused.")),
    };

    // The one endpoint that refused is not known any more: what any at this address takes.
    private static string TypesFor(HttpContext http)
    {
        string[] types = [.. http.RequestServices.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
            .Where(endpoint => Takes(endpoint, http.Request))
            .SelectMany(endpoint => endpoint.Metadata.OfType<IAcceptsMetadata>().SelectMany(accepts => accepts.ContentTypes))
            .Distinct(StringComparer.OrdinalIgnoreCase)];
        return types.Length == 0 ? Problems.Json : string.Join(" or ", types);
    }

    private static bool Takes(RouteEndpoint endpoint, HttpRequest request) =>
        endpoint.Metadata.GetMetadata<IHttpMethodMetadata>()?.HttpMethods.Contains(request.Method, StringComparer.OrdinalIgnoreCase) == true
        && new TemplateMatcher(TemplateParser.Parse(endpoint.RoutePattern.RawText!), []).TryMatch(request.Path, []);

    private static Task Answer(HttpContext http, int status, string detail) =>
        TypedResults.Problem(
            type: $"/problems/{ReasonPhrases.GetReasonPhrase(status).ToLowerInvariant().Replace(' ', '-')}",
            title: ReasonPhrases.GetReasonPhrase(status),
            detail: detail,
            statusCode: status).ExecuteAsync(http);
}
