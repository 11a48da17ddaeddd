using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using PanelService.Work;

namespace PanelService.Api.Tests.Hosts;

/// <summary>The service in memory, with the real planner or another, and with settings of its own.</summary>
internal sealed class TestHost(PlanOrder? planner = null, params (string Key, string Value)[] settings)
    : WebApplicationFactory<Program>
{
    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        foreach ((string key, string value) in settings)
        {
            builder.UseSetting(key, value);
        }

        if (planner is not null)
        {
            builder.ConfigureTestServices(services => services.AddSingleton(planner));
        }
    }
}
