using System.Diagnostics;

namespace PanelService.Store.Tests.Hosts;

/// <summary>A process of its own that books without end; killed as the system kills: SIGKILL, at once, nothing tidied up.</summary>
internal sealed class Booker : IDisposable
{
    private const string Name = "PanelService.Store.Booker";

    private readonly Process _process;

    /// <summary>Starts one.</summary>
    /// <param name="options">The database.</param>
    /// <param name="planId">The plan it cuts and takes back.</param>
    /// <param name="user">Another user to run as; null: this one.</param>
    internal Booker(StoreOptions options, string planId, string? user = null)
    {
        string folder = AppContext.BaseDirectory.Replace(typeof(Booker).Assembly.GetName().Name!, Name, StringComparison.Ordinal);
        string[] command = ["dotnet", Path.Combine(folder, Name + ".dll"), options.DataFolder, planId, .. options.UsesPostgres ? new[] { options.Postgres! } : []];
        if (user is not null)
        {
            command = ["runuser", "-u", user, "--", .. command];
        }

        _process = Process.Start(new ProcessStartInfo(command[0], command[1..]) { RedirectStandardOutput = true, RedirectStandardInput = true, WorkingDirectory = "/" })!;
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

    /// <summary>Waits until it ends by itself.</summary>
    internal async Task<int> EndedAsync()
    {
        await _process.WaitForExitAsync();
        return _process.ExitCode;
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
