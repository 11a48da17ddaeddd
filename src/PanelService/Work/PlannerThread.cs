using System.Runtime.InteropServices;

namespace PanelService.Work;

/// <summary>
/// Planning on a thread of its own that gives way to all others: whoever asks for the page or whether the service is up
/// waits neither for a free thread of the pool nor for a planner's share of the processor.
/// </summary>
internal static class PlannerThread
{
    // Linux has no other priorities than nice values, which .NET leaves alone; threads that planning starts inherit them.
    private const int Politeness = 5;

    /// <summary>Runs it; ends as it ends.</summary>
    internal static Task RunAsync(Action plan)
    {
        var ended = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        var thread = new Thread(() =>
        {
            GiveWay();
            try
            {
                plan();
                ended.SetResult();
            }
            catch (Exception fault)
            {
                // Whatever it is, it belongs to whoever waits: unhandled here, it would end the process.
                ended.SetException(fault);
            }
        })
        {
            IsBackground = true,
            Name = "Planner",
            Priority = ThreadPriority.BelowNormal,
        };
        thread.Start();
        return ended.Task;
    }

    private static void GiveWay()
    {
        if (OperatingSystem.IsLinux())
        {
            // There it counts for the calling thread alone. Where it is refused, planning goes on as before.
            _ = Nice(Politeness);
        }
    }

    [DllImport("libc", EntryPoint = "nice")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Nice(int more);
}
