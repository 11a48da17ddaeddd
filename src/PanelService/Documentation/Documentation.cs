using Microsoft.OpenApi;

namespace PanelService.Hosting;

/// <summary>The OpenAPI document and its page at /docs.</summary>
internal static class Documentation
{
    internal const string Name = "panel-service";

    internal static void AddDocumentation(this IServiceCollection services)
    {
        services.AddEndpointsApiExplorer();
        services.AddSwaggerGen(options =>
        {
            options.SwaggerDoc(Name, new OpenApiInfo { Title = "Panel Service", Version = "1" });
        });
    }

    internal static void UseDocumentation(this WebApplication app)
    {
        app.UseSwagger(options =>
        {
            options.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1;
            options.RouteTemplate = "openapi/{documentName}.json";
        });
        app.UseSwaggerUI(options =>
        {
            options.RoutePrefix = "docs";
            options.SwaggerEndpoint($"/openapi/{Name}.json", "Panel Service");
            options.EnableTryItOutByDefault();
        });
    }
}
