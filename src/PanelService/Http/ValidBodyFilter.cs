using FluentValidation;
using PanelService.Wire.Reading;

namespace PanelService.Http;

/// <summary>Lets a request through only when its body is right; otherwise answers with everything that is wrong.</summary>
/// <typeparam name="T">The wire record the body holds.</typeparam>
internal sealed class ValidBodyFilter<T>(IValidator<T> rules) : IEndpointFilter
    where T : class, IMeasuredRequest
{
    /// <inheritdoc/>
    public async ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        RequestBody<T> body = context.Arguments.OfType<RequestBody<T>>().Single();
        return body.Refusal(rules) is { } refusal ? refusal : await next(context);
    }
}
