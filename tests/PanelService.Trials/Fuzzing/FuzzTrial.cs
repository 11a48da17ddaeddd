using System.Diagnostics;
using System.Globalization;

namespace PanelService.Trials.Fuzzing;

/// <summary>Walks the OpenAPI document and sends what a careless or an evil client would.</summary>
internal static class FuzzTrial
{
    private const int RawShare = 20;
    private const int MostIds = 30;

    internal static async Task<int> RunAsync(int count, int seed)
    {
        await using Service service = await Service.StartAsync("--Planning:SafetyStopSeconds", "5");
        var dice = new Dice(seed);
        var wire = new Wire(await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "panel-service.json")));
        var ids = new List<string>();
        var maker = new RequestMaker(wire, dice, ids);
        var statuses = new SortedDictionary<int, int>();
        var faults = new List<string>();
        TimeSpan slowest = TimeSpan.Zero;

        int raw = count / RawShare;
        for (int i = 0; i < count - raw; i++)
        {
            using HttpRequestMessage request = maker.Make();
            long began = Stopwatch.GetTimestamp();
            string what = $"{request.Method} {request.RequestUri}";
            try
            {
                using HttpResponseMessage response = await service.Client.SendAsync(request);
                string body = await response.Content.ReadAsStringAsync();
                statuses[(int)response.StatusCode] = statuses.GetValueOrDefault((int)response.StatusCode) + 1;
                Remember(ids, response, dice);
                if (Judge.Fault(response.StatusCode, response.Content.Headers.ContentType?.MediaType, body) is { } fault && !IsHead(request))
                {
                    string sent = request.Content is null ? "" : System.Text.Encoding.Latin1.GetString(await request.Content.ReadAsByteArrayAsync());
                    faults.Add($"{what}: {fault}: {body[..Math.Min(200, body.Length)]} | sent {sent[..Math.Min(300, sent.Length)]}");
                }
            }
            catch (Exception fault) when (fault is HttpRequestException or TaskCanceledException)
            {
                faults.Add($"{what}: no answer, {fault.Message}");
            }

            TimeSpan took = Stopwatch.GetElapsedTime(began);
            slowest = took > slowest ? took : slowest;
        }

        faults.AddRange(await RawTrial.RunAsync(service.Address, raw, dice));
        using HttpResponseMessage alive = await service.Client.GetAsync("/health");
        return Report(count, raw, statuses, faults, slowest, service, alive.IsSuccessStatusCode);
    }

    private static bool IsHead(HttpRequestMessage request) => request.Method == HttpMethod.Head;

    private static void Remember(List<string> ids, HttpResponseMessage response, Dice dice)
    {
        if (response.Headers.Location?.ToString().Split('/')[^1] is { Length: > 0 } id)
        {
            if (ids.Count < MostIds)
            {
                ids.Add(id);
            }
            else
            {
                ids[dice.Below(MostIds)] = id;
            }
        }
    }

    private static int Report(int count, int raw, SortedDictionary<int, int> statuses, List<string> faults, TimeSpan slowest, Service service, bool alive)
    {
        faults.Take(40).ToList().ForEach(Console.WriteLine);
        string answers = string.Join(", ", statuses.Select(one => $"{one.Key}: {one.Value}"));
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{count} requests ({raw} of them no right HTTP), {faults.Count} faults; answers {answers}; slowest {slowest.TotalSeconds:0.0} s; memory {service.Memory().Peak:0} MiB at most"));
        return faults.Count == 0 && alive ? 0 : 1;
    }
}
