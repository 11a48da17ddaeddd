using System.Diagnostics;

namespace PanelService.Trials;

/// <summary>The service in a process of its own, on a free port of this machine, with an empty data folder.</summary>
internal sealed class Service : IAsyncDisposable
{
    private const string Listening = "Now listening on: ";

    private readonly DirectoryInfo _data;
    private readonly Process _process;

    private Service(DirectoryInfo data, Process process, Uri address)
    {
        (_data, _process, Address) = (data, process, address);
        var handler = new SocketsHttpHandler
        {
            RequestHeaderEncodingSelector = (_, _) => System.Text.Encoding.UTF8,
            AutomaticDecompression = System.Net.DecompressionMethods.All,
            AllowAutoRedirect = false,
        };
        Client = new HttpClient(handler) { BaseAddress = address, Timeout = TimeSpan.FromSeconds(600) };
    }

    internal Uri Address { get; }

    internal HttpClient Client { get; }

    internal bool IsRunning => !_process.HasExited;

    internal static async Task<Service> StartAsync(params string[] settings)
    {
        DirectoryInfo data = Directory.CreateTempSubdirectory("panel-service-trial-");
        string program = Path.Combine(AppContext.BaseDirectory, "PanelService.dll");
        var start = new ProcessStartInfo("dotnet", [program, "--urls", "http://127.0.0.1:0", "--PanelService:DataFolder", data.FullName, .. settings])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        Process process = Process.Start(start) ?? throw new InvalidOperationException("The service did not start.");
        string? line;
        do
        {
            line = await process.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException(await process.StandardError.ReadToEndAsync());
        }
        while (!line.Contains(Listening, StringComparison.Ordinal));

        // Read on, or a full pipe would hold it up.
        _ = process.StandardOutput.BaseStream.CopyToAsync(Stream.Null);
        _ = process.StandardError.BaseStream.CopyToAsync(Stream.Null);
        return new Service(data, process, new Uri(line[(line.IndexOf(Listening, StringComparison.Ordinal) + Listening.Length)..].Trim()));
    }

    /// <summary>Memory in use now, and the most there ever was, in MiB.</summary>
    internal (double Now, double Peak) Memory()
    {
        _process.Refresh();
        return (_process.WorkingSet64 / 1048576.0, _process.PeakWorkingSet64 / 1048576.0);
    }

    /// <summary>Processor time taken so far.</summary>
    internal TimeSpan Processor()
    {
        _process.Refresh();
        return _process.TotalProcessorTime;
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        if (IsRunning)
        {
            _process.Kill();
        }

        await _process.WaitForExitAsync();
        _process.Dispose();
        _data.Delete(recursive: true);
    }
}
