using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using PanelService.Tests.Shared;
using PanelService.Work;

namespace PanelService.Api.Tests.Hosts;

/// <summary>The service in memory, with the real planner or another, and with settings of its own.</summary>
internal sealed class TestHost(PlanOrder? planner = null, params (string Key, string Value)[] settings)
    : WebApplicationFactory<Program>
{
    private readonly DataFolder _data = new();

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting(DataFolder.Setting, _data.Path);
        foreach ((string key, string value) in settings)
        {
            builder.UseSetting(key, value);
        }

        if (planner is not null)
        {
            builder.ConfigureTestServices(services => services.AddSingleton(planner));
        }
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        _data.Dispose();
    }
}
