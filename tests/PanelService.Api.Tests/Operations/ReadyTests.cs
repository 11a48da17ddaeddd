using PanelService.Api.Tests.Hosts;
using PanelService.Tests.Shared;

namespace PanelService.Api.Tests.Operations;

/// <summary>Up is not yet ready.</summary>
public sealed class ReadyTests
{
    [Fact]
    public async Task A_service_with_room_and_a_memory_is_ready()
    {
        using var host = new TestHost();
        using HttpClient client = host.CreateClient();
        Assert.Equal("ready", (await client.GetJsonAsync("/ready")).GetProperty("status").GetString());
    }

    [Fact]
    public async Task A_full_queue_is_not_ready_yet_up()
    {
        using var planner = new SamplePlanner();
        using var host = new TestHost(planner.PlanBehindGate, ("Planning:Planners", "1"), ("Planning:Waiting", "1"));
        using HttpClient client = host.CreateClient();
        using HttpResponseMessage first = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest);
        await planner.BegunAsync();
        using HttpResponseMessage second = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest);

        using HttpResponseMessage ready = await client.GetAsync("/ready");
        _ = await Json.ReadProblemAsync(ready, 503, "/problems/not-ready");
        _ = await client.GetJsonAsync("/health");
        planner.Open();
    }

    [Fact]
    public async Task A_memory_that_cannot_be_used_is_not_ready_yet_up()
    {
        using var data = new DataFolder();
        string file = Path.Combine(data.Path, "a-file");
        await File.WriteAllTextAsync(file, "in the way");
        using var host = new TestHost(null, (DataFolder.Setting, file), ("Logs:File", "false"));
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage ready = await client.GetAsync("/ready");
        _ = await Json.ReadProblemAsync(ready, 503, "/problems/not-ready");
        _ = await client.GetJsonAsync("/health");
    }
}
