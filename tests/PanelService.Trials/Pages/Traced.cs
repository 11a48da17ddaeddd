using System.Text.Json;
using Microsoft.Playwright;

namespace PanelService.Trials.Pages;

/// <summary>The browser's own trace while something goes on: how much processor time each task of the page's main thread took.</summary>
internal sealed class Traced : IAsyncDisposable
{
    private const string MainThread = "CrRendererMain";
    private const string Task = "ThreadControllerImpl::RunTask";

    private readonly ICDPSession _session;
    private readonly List<double> _tasks;
    private readonly List<JsonElement> _events = [];
    private readonly TaskCompletionSource _complete = new(TaskCreationOptions.RunContinuationsAsynchronously);

    private Traced(ICDPSession session, List<double> tasks)
    {
        (_session, _tasks) = (session, tasks);
        session.Event("Tracing.dataCollected").OnEvent += (_, news) => _events.AddRange(news!.Value.GetProperty("value").EnumerateArray().Select(one => one.Clone()));
        session.Event("Tracing.tracingComplete").OnEvent += (_, _) => _complete.TrySetResult();
    }

    /// <summary>Begins to trace.</summary>
    /// <param name="session">The page's.</param>
    /// <param name="tasks">Filled at the end: milliseconds of processor time of each task.</param>
    internal static async Task<Traced> BeginAsync(ICDPSession session, List<double> tasks)
    {
        var traced = new Traced(session, tasks);
        await session.SendAsync("Tracing.start", new Dictionary<string, object> { ["transferMode"] = "ReportEvents", ["categories"] = "toplevel" });
        return traced;
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await _session.SendAsync("Tracing.end");
        await _complete.Task;
        HashSet<(int, int)> mains = [.. _events.Where(one => Name(one) == "thread_name" && one.GetProperty("args").GetProperty("name").GetString() == MainThread).Select(Thread)];
        _tasks.AddRange(_events.Where(one => Name(one) == Task && one.TryGetProperty("tdur", out _) && mains.Contains(Thread(one))).Select(one => one.GetProperty("tdur").GetDouble() / 1000));
    }

    private static string? Name(JsonElement one) => one.GetProperty("name").GetString();

    private static (int Process, int Thread) Thread(JsonElement one) => (one.GetProperty("pid").GetInt32(), one.GetProperty("tid").GetInt32());
}
