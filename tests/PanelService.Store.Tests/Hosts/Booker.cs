using System.Diagnostics;

namespace PanelService.Store.Tests.Hosts;

/// <summary>A process of its own that books without end in several studios; killed as the system kills: SIGKILL, at once, nothing tidied up.</summary>
internal sealed class Booker : IDisposable
{
    private const string Name = "PanelService.Store.Booker";

    private readonly Process _process;

    /// <summary>Starts one.</summary>
    /// <param name="planId">The plan it cuts and takes back.</param>
    /// <param name="studios">The databases it books in, in all of them at once.</param>
    internal Booker(string planId, IEnumerable<StoreOptions> studios)
    {
        string folder = AppContext.BaseDirectory.Replace(typeof(Booker).Assembly.GetName().Name!, Name, StringComparison.Ordinal);
        string[] arguments = [Path.Combine(folder, Name + ".dll"), planId, .. studios.SelectMany(studio => new[] { studio.DataFolder, studio.Postgres ?? "-" })];
        _process = Process.Start(new ProcessStartInfo("dotnet", arguments) { RedirectStandardOutput = true, RedirectStandardInput = true, WorkingDirectory = "/" })!;
    }

    /// <summary>The next thing it says; null where it has ended.</summary>
    internal ValueTask<string?> NextAsync() => new(_process.StandardOutput.ReadLineAsync());

    /// <summary>Kills it; what it had said before is read to the end.</summary>
    internal async Task<List<string>> KillAsync()
    {
        _process.Kill();
        List<string> said = [];
        while (await NextAsync() is { } line)
        {
            said.Add(line);
        }

        await _process.WaitForExitAsync();

        // 128 + 9: it was killed, it did not end.
        Assert.Equal(137, _process.ExitCode);
        return said;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (!_process.HasExited)
        {
            _process.Kill(entireProcessTree: true);
        }

        _process.Dispose();
    }
}
