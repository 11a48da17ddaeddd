using System.Diagnostics;
using System.Globalization;
using System.Net.Sockets;

namespace PanelService.Store.Tests.Hosts;

/// <summary>
/// A PostgreSQL server of the distribution's, started once for all tests: on a loopback port, in a temporary folder, as a
/// user that is not root, and stopped with the tests.
/// </summary>
internal sealed class PostgresServer
{
    private const string Programs = "/usr/lib/postgresql";
    private const string Missing =
        "PostgreSQL is not installed: tests/run.sh installs it from the distribution's packages (apt-get install postgresql). Without it, leave these tests out: dotnet test --filter \"Database!=PostgreSQL\".";

    private static readonly Lazy<PostgresServer> Only = new(() => new PostgresServer());

    private readonly string _programs;
    private readonly string _folder = Directory.CreateTempSubdirectory("panel-service-pg-").FullName;
    private readonly int _port = FreePort();
    private readonly Process _watch;
    private int _databases;

    private PostgresServer()
    {
        _programs = Find() ?? throw new InvalidOperationException(Missing);
        Own(_folder);
        Run("initdb", "-D", Data, "-U", "studio", "-A", "trust", "-E", "UTF8", "--no-locale", "--no-sync");
        _watch = Watch();
        Run("pg_ctl", "start", "-w", "-D", Data, "-l", Path.Combine(_folder, "log"), "-o",
            string.Create(CultureInfo.InvariantCulture, $"-p {_port} -c listen_addresses=127.0.0.1 -c unix_socket_directories={_folder} -c fsync=off -c max_connections=200"));
    }

    internal static PostgresServer Started => Only.Value;

    private string Data => Path.Combine(_folder, "data");

    /// <summary>The name of a database that no test has had yet.</summary>
    internal string NewName() => string.Create(CultureInfo.InvariantCulture, $"studio{Interlocked.Increment(ref _databases)}");

    internal string ConnectionTo(string database) =>
        string.Create(CultureInfo.InvariantCulture, $"Host=127.0.0.1;Port={_port};Username=studio;Database={database};Maximum Pool Size=20;Include Error Detail=true");

    private static string? Find() => Directory.Exists(Programs)
        ? Directory.GetDirectories(Programs).Select(version => Path.Combine(version, "bin")).Where(bin => File.Exists(Path.Combine(bin, "initdb"))).Order(StringComparer.Ordinal).LastOrDefault()
        : null;

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    // The server refuses to run as root.
    private static void Own(string folder)
    {
        if (Environment.UserName == "root")
        {
            Start("chown", ["postgres", folder]);
        }
    }

    private void Run(string program, params string[] arguments)
    {
        string path = Path.Combine(_programs, program);
        if (Environment.UserName == "root")
        {
            Start("runuser", ["-u", "postgres", "--", path, .. arguments]);
        }
        else
        {
            Start(path, arguments);
        }
    }

    // However this process ends, its end of the pipe closes: then the server is stopped and its folder removed.
    private Process Watch()
    {
        string[] asOwner = Environment.UserName == "root" ? ["runuser", "-u", "postgres", "--"] : [];
        string[] stop = [.. asOwner, Path.Combine(_programs, "pg_ctl"), "stop", "-w", "-m", "immediate", "-D", Data];
        return Process.Start(new ProcessStartInfo("bash", ["-c", "folder=$1; shift; trap '' INT TERM; cat >/dev/null; \"$@\" >/dev/null 2>&1; rm -rf \"$folder\"", "bash", _folder, .. stop])
        {
            RedirectStandardInput = true,
            WorkingDirectory = "/",
        })!;
    }

    // Nothing is read from its output: the server inherits it, and would keep a pipe open.
    private static void Start(string program, string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo("bash", ["-c", "\"$@\" >/dev/null 2>&1 </dev/null", "bash", program, .. arguments]) { WorkingDirectory = "/" })!;
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}.");
        }
    }
}
