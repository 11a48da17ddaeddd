using Microsoft.Extensions.Options;
using PanelService.Store;
using PanelService.Store.Cuts;
using PanelService.Store.Exchange;
using PanelService.Store.Jobs;
using PanelService.Store.Plans;
using PanelService.Store.Settings;
using PanelService.Store.Shelves;
using PanelService.Store.Stock;
using PanelService.Store.Supplies;

namespace PanelService.Hosting;

/// <summary>The studio's memory: where it is kept, and what speaks to it.</summary>
internal static class Memory
{
    /// <summary>The options alone, for a command that starts no service.</summary>
    internal static StoreOptions OptionsOf(IConfiguration configuration)
    {
        StoreOptions options = configuration.GetSection(StoreOptions.Section).Get<StoreOptions>() ?? new StoreOptions();
        options.DataFolder = Folders.Data(configuration);
        return options;
    }

    internal static void AddMemory(this IServiceCollection services, IConfiguration configuration)
    {
        services.AddOptions<StoreOptions>()
            .Bind(configuration.GetSection(StoreOptions.Section))
            .PostConfigure(options => options.DataFolder = Folders.Data(configuration))
            .ValidateDataAnnotations()
            .ValidateOnStart();
        services.AddSingleton(provider => new Studio(
            provider.GetRequiredService<IOptions<StoreOptions>>().Value, provider.GetRequiredService<ILogger<Studio>>()));
        services.AddSingleton<PlanBook>();
        services.AddSingleton<SupplyBook>();
        services.AddSingleton<SettingsBook>();
        services.AddSingleton<StockBook>();
        services.AddSingleton<ShelfBook>();
        services.AddSingleton<CutBook>();
        services.AddSingleton<JobBook>();
        services.AddSingleton<StudioBackup>();
        services.AddSingleton<StudioExchange>();
        services.AddHostedService<MemoryStart>();
    }
}
