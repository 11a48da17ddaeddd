using System.Globalization;
using System.Text;
using System.Text.Json;

namespace PanelService.Trials.Loads;

/// <summary>Orders made to be hard, each to a service of its own: planned or refused in words, within memory and time.</summary>
internal static class HostileTrial
{
    private const double MostMiB = 1536;

    internal static async Task<int> RunAsync(string part)
    {
        int faults = 0;
        foreach ((string name, string order) in Orders.Hard().Where(one => one.Name.Contains(part, StringComparison.Ordinal)))
        {
            await using Service service = await Service.StartAsync("--Logs:File", "false");
            using var content = new StringContent(order, Encoding.UTF8, "application/json");
            using HttpResponseMessage response = await service.Client.PostAsync("/api/plans", content);
            string body = await response.Content.ReadAsStringAsync();
            double peak = service.Memory().Peak;
            bool fine = peak <= MostMiB && (int)response.StatusCode is 201 or 400 or 422 or 503 && service.IsRunning;
            faults += fine ? 0 : 1;
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{(fine ? "well " : "WRONG")} {peak,6:0} MiB {service.Processor().TotalSeconds,6:0.0} s of processor  {(int)response.StatusCode} {Said(body)}  {name}"));
        }

        return faults == 0 ? 0 : 1;
    }

    private static string Said(string body)
    {
        using JsonDocument document = JsonDocument.Parse(body);
        return document.RootElement.TryGetProperty("proof", out JsonElement proof)
            ? $"spent {proof.GetProperty("spent")}, at least {proof.GetProperty("leastPossible")}"
            : document.RootElement.GetProperty("title").GetString()!;
    }
}
