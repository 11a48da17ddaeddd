using System.Diagnostics;

namespace PanelService.Store.Tests.Hosts;

/// <summary>The service as a process of its own, as a planner host of a workshop is.</summary>
internal sealed class HostProcess : IDisposable
{
    private readonly Process _process;

    internal HostProcess(params (string Key, string Value)[] settings)
    {
        string[] arguments = [Path.Combine(AppContext.BaseDirectory, "PanelService.dll"), "--urls", "http://127.0.0.1:0", .. settings.Select(setting => $"--{setting.Key}={setting.Value}")];
        _process = Process.Start(new ProcessStartInfo("dotnet", arguments) { RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = "/" })!;
        _process.OutputDataReceived += (_, _) => { };
        _process.BeginOutputReadLine();
    }

    /// <summary>How it ended by itself, and what it said of that.</summary>
    internal async Task<(int Code, string Error)> EndedAsync()
    {
        string error = await _process.StandardError.ReadToEndAsync();
        await _process.WaitForExitAsync();
        return (_process.ExitCode, error);
    }

    /// <summary>SIGKILL.</summary>
    internal void Kill()
    {
        _process.Kill();
        _process.WaitForExit();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (!_process.HasExited)
        {
            Kill();
        }

        _process.Dispose();
    }
}
