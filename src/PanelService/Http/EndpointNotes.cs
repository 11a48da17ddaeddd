using PanelService.Wire.Reading;

namespace PanelService.Http;

/// <summary>What endpoints share: the body's checks and the failures they bring.</summary>
internal static class EndpointNotes
{
    /// <summary>Takes a JSON body of a kind, refused where it is wrong.</summary>
    internal static RouteHandlerBuilder AcceptsOrder<T>(this RouteHandlerBuilder endpoint)
        where T : class, IMeasuredRequest =>
        endpoint
            .AddEndpointFilter<ValidBodyFilter<T>>()
            .Accepts<T>("application/json")
            .Produces<FaultsProblem>(StatusCodes.Status400BadRequest, "application/problem+json")
            .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
            .ProducesProblem(StatusCodes.Status415UnsupportedMediaType);
}
