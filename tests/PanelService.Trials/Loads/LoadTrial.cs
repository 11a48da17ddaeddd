using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using PanelService.Trials.Fuzzing;

namespace PanelService.Trials.Loads;

/// <summary>
/// Many clients, in a process of their own, plan at once; meanwhile somebody asks for the page and whether the service is up. Beside
/// it stands how late a plain timer was in the process that asks: what the machine's other work puts into every figure.
/// </summary>
internal static class LoadTrial
{
    private const double MostMilliseconds = 100;

    private const int BetweenMilliseconds = 20;

    // A fifth of what they are asked to wait.
    private const int ImpatientMilliseconds = 1000;

    internal static async Task<int> RunAsync(int clients, int seconds)
    {
        await using Service service = await Service.StartAsync();
        await WarmUpAsync(service.Client);
        using Process crowd = Process.Start(new ProcessStartInfo("dotnet", [typeof(LoadTrial).Assembly.Location, "crowd", service.Address.ToString(), Text(clients), Text(seconds)])
        {
            RedirectStandardOutput = true,
        })!;

        // Its first line says that it begins.
        _ = await crowd.StandardOutput.ReadLineAsync();
        using var enough = new CancellationTokenSource(TimeSpan.FromSeconds(seconds));
        var times = new List<double>();
        var late = new List<double>();
        while (!enough.IsCancellationRequested)
        {
            foreach (string address in new[] { "/health", "/" })
            {
                long began = Stopwatch.GetTimestamp();
                using HttpResponseMessage response = await service.Client.GetAsync(address);
                _ = response.EnsureSuccessStatusCode();
                times.Add(Stopwatch.GetElapsedTime(began).TotalMilliseconds);
            }

            long slept = Stopwatch.GetTimestamp();
            await Task.Delay(BetweenMilliseconds);
            late.Add(Stopwatch.GetElapsedTime(slept).TotalMilliseconds - BetweenMilliseconds);
        }

        string answers = await crowd.StandardOutput.ReadToEndAsync();
        times.Sort();
        double worst = times[^1];
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{clients} clients for {seconds} s: answers {answers.Trim()}; /health and the page: median {times[times.Count / 2]:0.0} ms, 99 of 100 within {times[(int)(times.Count * 0.99)]:0.0} ms, worst {worst:0.0} ms of {times.Count}; a timer late by {late.Max():0.0} ms at most; memory {service.Memory().Peak:0} MiB"));
        await crowd.WaitForExitAsync();
        return worst <= MostMilliseconds && crowd.ExitCode == 0 ? 0 : 1;
    }

    /// <summary>The clients: says when they begin, at the end how often each status was answered.</summary>
    internal static async Task<int> CrowdAsync(Uri address, int clients, int seconds)
    {
        using var client = new HttpClient { BaseAddress = address };
        Console.WriteLine("begins");
        using var enough = new CancellationTokenSource(TimeSpan.FromSeconds(seconds));
        var answers = new ConcurrentDictionary<int, int>();
        await Task.WhenAll(Enumerable.Range(1, clients).Select(seed => PlanAsync(client, seed, answers, enough.Token)));
        Console.WriteLine(string.Join(", ", answers.OrderBy(one => one.Key).Select(one => string.Create(CultureInfo.InvariantCulture, $"{one.Key}: {one.Value}"))));
        return answers.Keys.All(status => status is 201 or 503) && answers.ContainsKey(201) ? 0 : 1;
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

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
