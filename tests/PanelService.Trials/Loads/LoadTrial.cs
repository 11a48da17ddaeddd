using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using PanelService.Trials.Fuzzing;

namespace PanelService.Trials.Loads;

/// <summary>
/// Many clients plan at once; meanwhile somebody asks for the page and whether the service is up. Beside it stands how late
/// a plain timer was in the same process: what the machine's other work, and the clients' own, puts into every figure.
/// </summary>
internal static class LoadTrial
{
    private const double MostMilliseconds = 100;

    private const int BetweenMilliseconds = 20;

    // So long much of the code runs for the first time and is compiled for it: told apart.
    private static readonly TimeSpan First = TimeSpan.FromSeconds(3);

    // A fifth of what they are asked to wait.
    private const int ImpatientMilliseconds = 1000;

    internal static async Task<int> RunAsync(int clients, int seconds)
    {
        await using Service service = await Service.StartAsync();
        await WarmUpAsync(service.Client);
        using var enough = new CancellationTokenSource(TimeSpan.FromSeconds(seconds));
        var answers = new ConcurrentDictionary<int, int>();
        Task[] planning = [.. Enumerable.Range(1, clients).Select(client => PlanAsync(service.Client, client, answers, enough.Token))];
        long start = Stopwatch.GetTimestamp();
        double worstAtFirst = 0;
        var times = new List<double>();
        var late = new List<double>();
        while (!enough.IsCancellationRequested)
        {
            foreach (string address in new[] { "/health", "/" })
            {
                long began = Stopwatch.GetTimestamp();
                using HttpResponseMessage response = await service.Client.GetAsync(address);
                _ = response.EnsureSuccessStatusCode();
                double took = Stopwatch.GetElapsedTime(began).TotalMilliseconds;
                if (Stopwatch.GetElapsedTime(start, began) < First)
                {
                    worstAtFirst = Math.Max(worstAtFirst, took);
                }
                else
                {
                    times.Add(took);
                }
            }

            long slept = Stopwatch.GetTimestamp();
            await Task.Delay(BetweenMilliseconds);
            late.Add(Stopwatch.GetElapsedTime(slept).TotalMilliseconds - BetweenMilliseconds);
        }

        await Task.WhenAll(planning);
        times.Sort();
        double worst = times[^1];
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{clients} clients for {seconds} s: answers {string.Join(", ", answers.OrderBy(one => one.Key).Select(one => $"{one.Key}: {one.Value}"))}; /health and the page: median {times[times.Count / 2]:0.0} ms, 99 of 100 within {times[(int)(times.Count * 0.99)]:0.0} ms, worst {worst:0.0} ms of {times.Count}, in the first {First.TotalSeconds:0} s {worstAtFirst:0.0} ms; a timer late by {late.Max():0.0} ms at most; memory {service.Memory().Peak:0} MiB"));
        return worst <= MostMilliseconds && answers.Keys.All(status => status is 201 or 503) && answers.ContainsKey(201) ? 0 : 1;
    }

    // What is only compiled once is no load.
    private static async Task WarmUpAsync(HttpClient client)
    {
        foreach (string address in new[] { "/health", "/" })
        {
            using HttpResponseMessage response = await client.GetAsync(address);
            _ = response.EnsureSuccessStatusCode();
        }

        using var content = new StringContent(Orders.Small(new Dice(0)), Encoding.UTF8, "application/json");
        using HttpResponseMessage made = await client.PostAsync("/api/plans", content);
        _ = made.EnsureSuccessStatusCode();
    }

    private static async Task PlanAsync(HttpClient client, int seed, ConcurrentDictionary<int, int> answers, CancellationToken enough)
    {
        var dice = new Dice(seed);
        try
        {
            while (!enough.IsCancellationRequested)
            {
                using var content = new StringContent(Orders.Small(dice).Replace("\"quick\"", "\"steady\"", StringComparison.Ordinal), Encoding.UTF8, "application/json");
                using HttpResponseMessage response = await client.PostAsync("/api/plans", content, enough);
                _ = answers.AddOrUpdate((int)response.StatusCode, 1, (_, count) => count + 1);
                if (response.Headers.RetryAfter is not null)
                {
                    await Task.Delay(ImpatientMilliseconds, enough);
                }
            }
        }
        catch (OperationCanceledException) when (enough.IsCancellationRequested)
        {
            // Time is up.
        }
    }
}
