using Microsoft.Extensions.DependencyInjection;
using PanelService.Api.Tests.Hosts;
using PanelService.Hosting;
using PanelService.Tests.Shared;
using PanelService.Work;

namespace PanelService.Api.Tests.Operations;

/// <summary>What is held in memory, and what lies in the data folder.</summary>
public sealed class PlanMemoryTests
{
    [Fact]
    public async Task A_plan_that_memory_lets_go_of_is_still_there()
    {
        using var host = new TestHost();
        using HttpClient client = host.CreateClient();
        string id = (await client.PlanAsync(SampleOrders.Smallest)).GetProperty("id").GetString()!;
        PlanStore held = host.Services.GetRequiredService<PlanStore>();
        Assert.NotNull(held.Find(id));

        held.Shed();

        Assert.Null(held.Find(id));
        Assert.Equal(id, (await client.GetJsonAsync($"/api/plans/{id}")).GetProperty("id").GetString());
    }

    [Fact]
    public async Task An_order_in_the_making_is_not_let_go_of()
    {
        using var planner = new SamplePlanner();
        using var host = new TestHost(planner.PlanBehindGate);
        using HttpClient client = host.CreateClient();
        using HttpResponseMessage begun = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest);
        string id = begun.Headers.Location!.ToString().Split('/')[^1];

        PlanStore held = host.Services.GetRequiredService<PlanStore>();
        held.Shed();

        Assert.NotNull(held.Find(id));
        planner.Open();
    }

    [Fact]
    public void A_data_folder_that_it_makes_is_its_owners_alone()
    {
        using var folder = new DataFolder();
        string path = Path.Combine(folder.Path, "made", "here");

        Folders.MakeData(path);

        Assert.True(Directory.Exists(path));
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(path));
        }
    }
}
