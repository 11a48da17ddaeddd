namespace PanelService.Hosting;

/// <summary>Where the page and the demo orders lie: beside the program, or in the source tree while it is worked on.</summary>
internal static class Folders
{
    private const string RootMark = "PanelService.sln";

    /// <summary>The page's folder. In Development the source folder, so that an edit needs no build.</summary>
    internal static string Page(bool development) => Find("wwwroot", development);

    /// <summary>The demo orders' folder.</summary>
    internal static string DemoData(bool development) => Find("demo-data", development);

    /// <summary>Where everything is kept that outlives the service: as configured, else in the user's own application data.</summary>
    internal static string Data(IConfiguration configuration) =>
        configuration["PanelService:DataFolder"] is { Length: > 0 } folder
            ? Path.GetFullPath(folder)
            : Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "panel-service");

    /// <summary>Makes the data folder, for its owner alone, where it is not there yet. What cannot be made is told by those who need it.</summary>
    internal static void MakeData(string folder)
    {
        try
        {
            if (OperatingSystem.IsWindows())
            {
                Directory.CreateDirectory(folder);
            }
            else if (!Directory.Exists(folder))
            {
                Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // The service starts all the same: it says so at /ready, and works once the folder is mended.
        }
    }

    private static string Find(string folder, bool development)
    {
        string beside = Path.Combine(AppContext.BaseDirectory, folder);
        return development && SourceRoot() is { } root ? Path.Combine(root, folder) : beside;
    }

    private static string? SourceRoot()
    {
        DirectoryInfo? here = new(AppContext.BaseDirectory);
        while (here is not null && !File.Exists(Path.Combine(here.FullName, RootMark)))
        {
            here = here.Parent;
        }

        return here?.FullName;
    }
}
