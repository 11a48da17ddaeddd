using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Text;
using PanelService.Checking;
using PanelService.Outside.Tests.Orders;

namespace PanelService.Trials.Checks;

/// <summary>Random valid orders, the same for the same seeds; each plan is held against the rules by a checker that knows only the documents.</summary>
internal static class OrdersTrial
{
    private const int AtOnce = 2;
    private const int Slowest = 5;
    private const int MostTold = 40;

    internal static async Task<int> RunAsync(int count, int first)
    {
        await using Service service = await Service.StartAsync("--Logs:File", "false");
        var faults = new ConcurrentDictionary<int, string>();
        var seconds = new ConcurrentDictionary<int, double>();
        long began = Stopwatch.GetTimestamp();
        await Parallel.ForAsync(first, first + count, new ParallelOptions { MaxDegreeOfParallelism = AtOnce }, async (seed, _) =>
        {
            long asked = Stopwatch.GetTimestamp();
            if (await FaultsOfAsync(service.Client, seed) is { Length: > 0 } fault)
            {
                faults[seed] = fault;
            }

            seconds[seed] = Stopwatch.GetElapsedTime(asked).TotalSeconds;
        });

        faults.OrderBy(one => one.Key).Take(MostTold).ToList().ForEach(one => Console.WriteLine($"seed {one.Key}: {one.Value}"));
        string slowest = string.Join(", ", seconds.OrderByDescending(one => one.Value).Take(Slowest).Select(one => string.Create(CultureInfo.InvariantCulture, $"{one.Key} ({one.Value:0.0} s)")));
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{count} orders from seed {first} on, {faults.Count} at fault; {Stopwatch.GetElapsedTime(began).TotalSeconds:0} s, {service.Processor().TotalSeconds:0} s of processor; slowest seeds {slowest}; memory {service.Memory().Peak:0} MiB at most"));
        return faults.IsEmpty && service.IsRunning ? 0 : 1;
    }

    private static async Task<string> FaultsOfAsync(HttpClient client, int seed)
    {
        string order = RandomOrder.Small(seed).Json;
        using var content = new StringContent(order, Encoding.UTF8, "application/json");
        using HttpResponseMessage response = await client.PostAsync("/api/plans", content);
        string body = await response.Content.ReadAsStringAsync();
        return response.StatusCode == HttpStatusCode.Created
            ? string.Join("; ", PlanChecker.Check(order, body).Take(5))
            : $"{(int)response.StatusCode} {body}";
    }
}
