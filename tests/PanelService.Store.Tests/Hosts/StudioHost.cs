using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using PanelService.Tests.Shared;

namespace PanelService.Store.Tests.Hosts;

/// <summary>The whole service in this process over one database; started again, it is another run of the program.</summary>
internal sealed class StudioHost(params (string Key, string Value)[] settings) : WebApplicationFactory<Program>
{
    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        foreach ((string key, string value) in settings)
        {
            builder.UseSetting(key, value);
        }
    }
}
