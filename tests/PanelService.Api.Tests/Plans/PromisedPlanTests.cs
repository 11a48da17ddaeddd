using System.Text.Json;
using Microsoft.Data.Sqlite;
using PanelService.Api.Tests.Hosts;
using PanelService.Store;
using PanelService.Tests.Shared;
using PanelService.Work;

namespace PanelService.Api.Tests.Plans;

/// <summary>
/// An address that was given out is good whatever becomes of the process. A second service over the folder of one that is still at
/// its first plan finds there what a killed one leaves behind.
/// </summary>
public sealed class PromisedPlanTests : IDisposable
{
    private readonly DataFolder _folder = new();
    private readonly SamplePlanner _first = new();
    private readonly SamplePlanner _second = new();

    [Fact]
    public async Task Orders_left_by_a_killed_service_are_planned_by_the_next_one()
    {
        using TestHost killed = Start(_first.PlanBehindGate);
        using HttpClient client = killed.CreateClient();
        string[] addresses = [await HandInAsync(client), await HandInAsync(client)];
        await _first.BegunAsync();

        using TestHost next = Start(_second.PlanAtOnce);
        using HttpClient later = next.CreateClient();

        Assert.Equal(["done", "done"], await Task.WhenAll(addresses.Select(address => EndAsync(later, address))));
    }

    [Fact]
    public async Task Order_that_waits_when_the_service_is_stopped_is_planned_by_the_next_one()
    {
        string[] addresses;
        using (TestHost stopped = Start(_first.PlanBehindGate))
        {
            using HttpClient client = stopped.CreateClient();
            addresses = [await HandInAsync(client), await HandInAsync(client)];
            await _first.BegunAsync();
        }

        using TestHost next = Start(_second.PlanAtOnce);
        using HttpClient later = next.CreateClient();

        Assert.Equal(["done", "done"], await Task.WhenAll(addresses.Select(address => EndAsync(later, address))));
        Assert.Single(_second.Orders);
    }

    [Fact]
    public async Task Order_that_was_dropped_while_it_waited_is_not_planned_later()
    {
        using TestHost killed = Start(_first.PlanBehindGate);
        using HttpClient client = killed.CreateClient();
        string planned = await HandInAsync(client);
        await _first.BegunAsync();
        string dropped = await HandInAsync(client);
        using HttpResponseMessage gone = await client.DeleteAsync(dropped);

        using TestHost next = Start(_second.PlanAtOnce);
        using HttpClient later = next.CreateClient();
        using HttpResponseMessage asked = await later.GetAsync(dropped);

        Assert.Equal(HttpStatusCode.NoContent, gone.StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, asked.StatusCode);
        Assert.Equal("done", await EndAsync(later, planned));
        Assert.Single(_second.Orders);
    }

    [Fact]
    public async Task Order_that_was_damaged_fails_alone()
    {
        using TestHost killed = Start(_first.PlanBehindGate);
        using HttpClient client = killed.CreateClient();
        string damaged = await HandInAsync(client);
        await _first.BegunAsync();
        string whole = await HandInAsync(client);
        await using (var connection = new SqliteConnection($"Data Source={Path.Combine(_folder.Path, StoreOptions.FileName)};Pooling=false"))
        {
            await connection.OpenAsync();
            await using SqliteCommand command = connection.CreateCommand();
            command.CommandText = "UPDATE jobs SET Filled = substr(Filled, 1, 50) WHERE Id = $id";
            command.Parameters.AddWithValue("$id", damaged[(damaged.LastIndexOf('/') + 1)..]);
            Assert.Equal(1, await command.ExecuteNonQueryAsync());
        }

        using TestHost next = Start(_second.PlanAtOnce);
        using HttpClient later = next.CreateClient();

        Assert.Equal("done", await EndAsync(later, whole));
        using HttpResponseMessage asked = await later.GetAsync(damaged);
        await Json.ReadProblemAsync(asked, 503, "/problems/memory-damaged");
        Assert.Single(_second.Orders);
    }

    // Whatever takes the process down must not do so at every start.
    [Fact]
    public async Task Order_that_is_cut_short_at_every_start_fails_at_last_and_says_so_and_can_be_dropped()
    {
        using TestHost killed = Start(_first.PlanBehindGate);
        using HttpClient client = killed.CreateClient();
        string address = await HandInAsync(client);
        await _first.BegunAsync();
        TestHost[] tries = [Start(_second.PlanBehindGate), Start(_second.PlanBehindGate), Start(_second.PlanBehindGate)];
        foreach (TestHost host in tries)
        {
            host.CreateClient().Dispose();
            await _second.BegunAsync();
        }

        using TestHost last = Start(_second.PlanAtOnce);
        using HttpClient later = last.CreateClient();
        JsonElement failed = await later.GetJsonAsync(address);
        using HttpResponseMessage dropped = await later.DeleteAsync(address);
        using HttpResponseMessage asked = await later.GetAsync(address);

        Assert.Equal("failed", failed.GetProperty("state").GetString());
        Assert.Equal("/problems/no-plan-in-time", failed.GetProperty("problem").GetProperty("type").GetString());
        Assert.Equal(HttpStatusCode.NoContent, dropped.StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, asked.StatusCode);
        Assert.Equal(3, _second.Orders.Count);
        Array.ForEach(tries, host => host.Dispose());
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _first.Dispose();
        _second.Dispose();
        _folder.Dispose();
    }

    private TestHost Start(PlanOrder planner) => new(planner, (DataFolder.Setting, _folder.Path), ("Planning:Planners", "1"));

    private static async Task<string> HandInAsync(HttpClient client)
    {
        using HttpResponseMessage response = await client.PostOrderInBackgroundAsync(SampleOrders.Smallest);
        Assert.Equal(HttpStatusCode.Accepted, response.StatusCode);
        return response.Headers.Location!.OriginalString;
    }

    // The stream ends when the plan does.
    private static async Task<string> EndAsync(HttpClient client, string address)
    {
        _ = await client.GetStringAsync($"{address}/progress");
        return (await client.GetJsonAsync(address)).GetProperty("state").GetString()!;
    }
}
