using System.Globalization;
using PanelService.Work;

namespace PanelService.Api.Tests.Operations;

/// <summary>Planning gives way to everything else the service does.</summary>
public sealed class PlannerThreadTests
{
    [Fact]
    public async Task Planning_takes_no_thread_of_the_pool_and_comes_after_all_others()
    {
        int usual = Nice();
        bool isOfPool = true;
        int nice = 0;
        await PlannerThread.RunAsync(() => (isOfPool, nice) = (Thread.CurrentThread.IsThreadPoolThread, Nice()));

        Assert.False(isOfPool);
        Assert.Equal(OperatingSystem.IsLinux() ? Math.Min(usual + 5, 19) : usual, nice);
    }

    [Fact]
    public async Task Planning_that_breaks_down_is_told_to_whoever_waits()
    {
        var fault = await Assert.ThrowsAsync<InvalidOperationException>(() => PlannerThread.RunAsync(() => throw new InvalidOperationException("broken")));

        Assert.Equal("broken", fault.Message);
    }

    // proc_pid_stat(5): field 19 is the nice value; fields are counted from behind the name, which may hold anything.
    private static int Nice()
    {
        if (!OperatingSystem.IsLinux())
        {
            return 0;
        }

        string stat = File.ReadAllText("/proc/thread-self/stat");
        return int.Parse(stat[(stat.LastIndexOf(')') + 2)..].Split(' ')[19 - 3], CultureInfo.InvariantCulture);
    }
}
