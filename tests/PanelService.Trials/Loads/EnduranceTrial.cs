using System.Diagnostics;
using System.Globalization;
using System.Text;
using PanelService.Trials.Fuzzing;

namespace PanelService.Trials.Loads;

/// <summary>A day's plans and more in a row: memory must not grow with their number.</summary>
internal static class EnduranceTrial
{
    private const double MostGrowth = 1.25;

    internal static async Task<int> RunAsync(int count)
    {
        await using Service service = await Service.StartAsync("--Logs:File", "false");
        var dice = new Dice(3);
        var memory = new List<double>();
        long began = Stopwatch.GetTimestamp();
        for (int i = 0; i < count; i++)
        {
            using var content = new StringContent(Orders.Small(dice), Encoding.UTF8, "application/json");
            using HttpResponseMessage response = await service.Client.PostAsync("/api/plans", content);
            _ = response.EnsureSuccessStatusCode();
            if (i % Math.Max(1, count / 100) == 0)
            {
                memory.Add(service.Memory().Now);
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{i} plans, {memory[^1]:0} MiB"));
            }
        }

        // A tenth to warm up and fill what is kept; then the second half against the first.
        var steady = memory.Skip(memory.Count / 10).ToList();
        double first = steady.Take(steady.Count / 2).Max();
        double second = steady.Skip(steady.Count / 2).Max();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{count} plans in {Stopwatch.GetElapsedTime(began).TotalSeconds:0} s; memory at most {first:0} MiB in the first half, {second:0} MiB in the second, {service.Memory().Now:0} MiB at the end"));
        return second <= first * MostGrowth ? 0 : 1;
    }
}
