using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using FluentValidation;
using PanelService.Http;
using PanelService.Planning;
using PanelService.Shelves;
using PanelService.Validation;
using PanelService.Wire.Orders;
using PanelService.Wire.Studio;
using PanelService.Wire.Yields;
using PanelService.Work;

namespace PanelService.Hosting;

/// <summary>What the host is made of.</summary>
internal static class Services
{
    internal static void AddPlanning(this IServiceCollection services, IConfiguration configuration)
    {
        services.AddOptions<PlanningOptions>()
            .Bind(configuration.GetSection(PlanningOptions.Section))
            .ValidateDataAnnotations()
            .ValidateOnStart();
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton<PlanOrder>(Planner.Plan);
        services.AddSingleton<PlanStore>();
        services.AddSingleton<PlanKeeper>();
        services.AddSingleton<MemoryWatch>();
        services.AddSingleton<PlannerQueue>();
        services.AddHostedService(provider => provider.GetRequiredService<PlannerQueue>());
        services.AddSingleton<PromisedPlans>();
        services.AddHostedService(provider => provider.GetRequiredService<PromisedPlans>());
        if (Memory.OptionsOf(configuration).UsesPostgres && configuration.GetValue($"{PlanningOptions.Section}:{nameof(PlanningOptions.Shared)}", true))
        {
            services.AddSingleton<SharedPlanner>();
            services.AddSingleton<SharedPlans>();
            services.AddSingleton<SharedQueue>();
            services.AddHostedService(provider => provider.GetRequiredService<SharedQueue>());
        }

        services.AddHostedService<WarmUp>();
        services.AddSingleton<PlanDesk>();
        services.AddSingleton<PassingPlanner>();
        services.AddSingleton<BatchRepeater>();
        services.AddSingleton<ProgressStream>();
        services.AddBusyness();
    }

    internal static void AddWire(this IServiceCollection services)
    {
        services.AddSingleton<IBodyFiller<OrderRequest>, OrderFiller>();
        services.AddSingleton<IBodyFiller<YieldRequest>, YieldFiller>();
        services.AddSingleton<IBodyFiller<StockRequest>, MeasuresFiller<StockRequest>>();
        services.AddSingleton<IBodyFiller<StockPatchRequest>, MeasuresFiller<StockPatchRequest>>();
        services.AddSingleton<IValidator<StudioSettingsRequest>, StudioSettingsRules>();
        services.AddSingleton<IValidator<StockRequest>, StockRules>();
        services.AddSingleton<IValidator<StockPatchRequest>, StockPatchRules>();
        services.AddSingleton<IValidator<CutRequest>, CutRules>();
        services.AddSingleton<StudioMeasures>();
        services.AddSingleton<IValidator<OrderRequest>, OrderRules>();
        services.AddSingleton<IValidator<YieldRequest>, YieldRules>();
        services.ConfigureHttpJsonOptions(json => Configure(json.SerializerOptions));
    }

    private static void Configure(JsonSerializerOptions json)
    {
        json.DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull;
        json.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.CamelCase));

        // Answers are JSON documents, never parts of a page: quotes and letters may stand as they are.
        json.Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping;
    }
}
