using System.Text;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using PanelService.Planning;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Work;
using Serilog;
using Serilog.Core;

namespace PanelService.Benchmarks.Running;

/// <summary>
/// The demo orders: over HTTP to a real listener on a free port of this machine, and straight through the planner.
/// The first request of the process is the cold one; of the warm ones the median counts.
/// </summary>
public static class DemoRunner
{
    private const int Times = 5;

    /// <summary>Runs every demo order cold and warm, over HTTP and without.</summary>
    /// <param name="options">The command line.</param>
    public static IEnumerable<Measurement> Run(Options options)
    {
        string data = Directory.CreateTempSubdirectory("panel-service-").FullName;
        using var plain = new WebApplicationFactory<PlanDesk>();
        using var host = plain.WithWebHostBuilder(builder => builder
            .UseSetting("PanelService:DataFolder", data)
            .ConfigureServices(services => services.AddSerilog(Logger.None)));
        host.UseKestrel(0);
        host.StartServer();
        using var client = host.CreateClient();
        client.Timeout = TimeSpan.FromMinutes(5);
        string[] names = Names(client, options);
        foreach (string name in names)
        {
            string order = client.GetStringAsync(new Uri($"/api/demo/{name}", UriKind.Relative)).Result;
            var (first, read) = Send(host, client, name, order);
            yield return first with { Group = "over HTTP, first", Name = $"{name} HTTP first" };
            yield return Median([.. Enumerable.Range(0, Times).Select(_ => Plan(name, read))]);
            yield return Median([.. Enumerable.Range(0, Times).Select(_ => Send(host, client, name, order).Row)]);
        }
    }

    private static string[] Names(HttpClient client, Options options)
    {
        string list = client.GetStringAsync(new Uri("/api/demo", UriKind.Relative)).Result;
        return [.. System.Text.Json.JsonSerializer.Deserialize<string[]>(list)!
            .Where(name => options.Only is null || name.Contains(options.Only, StringComparison.Ordinal))];
    }

    private static (Measurement Row, Order Order) Send(
        WebApplicationFactory<PlanDesk> host, HttpClient client, string name, string order)
    {
        using var body = new StringContent(order, Encoding.UTF8, "application/json");
        var (answer, cpu, clock) = Timing.Of(() =>
        {
            using var response = client.PostAsync(new Uri("/api/plans", UriKind.Relative), body).Result;
            _ = response.EnsureSuccessStatusCode().Content.ReadAsStringAsync().Result;
            return response.Headers.Location!.OriginalString;
        });
        var job = host.Services.GetRequiredService<PlanDesk>().Find(answer[(answer.LastIndexOf('/') + 1)..])!;
        return (Row("over HTTP", $"{name} HTTP", job.Look().Snapshot.Plan!, cpu, clock), job.Order);
    }

    private static Measurement Plan(string name, Order order)
    {
        var (outcome, cpu, clock) = Timing.Of(() => Planner.Plan(order));
        return Row("planner alone", $"{name} planner", ((Planned)outcome).Plan, cpu, clock);
    }

    private static Measurement Row(string group, string name, Plan plan, TimeSpan cpu, TimeSpan clock) =>
        new(group, name, plan.Proof.Spent.Minor, plan.Proof.LeastPossible.Minor, cpu, clock);

    private static Measurement Median(Measurement[] rows) => rows.OrderBy(row => row.Clock).ElementAt(rows.Length / 2);
}
