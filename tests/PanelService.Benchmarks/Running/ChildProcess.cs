using System.Diagnostics;

namespace PanelService.Benchmarks.Running;

/// <summary>
/// Runs the program again for one suite, so that peak memory belongs to that suite alone, or to hold it to one
/// core: a .NET process counts its processors once, when it starts.
/// </summary>
public static class ChildProcess
{
    private const string Marker = "PANEL_BENCHMARKS_CHILD";

    /// <summary>Whether this process was started by another of its kind.</summary>
    public static bool IsChild => Environment.GetEnvironmentVariable(Marker) is not null;

    /// <summary>Runs one suite and waits.</summary>
    /// <param name="args">The whole command line of the child.</param>
    /// <param name="oneThread">Whether to hold it to one core.</param>
    /// <returns>Its exit code.</returns>
    public static int Run(IEnumerable<string> args, bool oneThread)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!);
        if (Path.GetFileNameWithoutExtension(start.FileName) == "dotnet")
        {
            start.ArgumentList.Add(typeof(ChildProcess).Assembly.Location);
        }

        foreach (string arg in args)
        {
            start.ArgumentList.Add(arg);
        }

        start.Environment[Marker] = "1";
        if (oneThread)
        {
            start.Environment["DOTNET_PROCESSOR_COUNT"] = "1";
        }

        using var child = Process.Start(start)!;
        child.WaitForExit();
        return child.ExitCode;
    }
}
