namespace PanelService.Browser.Tests;

/// <summary>The browser the tests drive: the distribution's Chromium, else the one Playwright installed for itself.</summary>
internal static class Chromium
{
    private static readonly string[] Names = ["chromium-headless-shell", "chromium", "chromium-browser", "google-chrome"];

    /// <summary>Where it is; null where Playwright is to find its own.</summary>
    public static string? Path { get; } = (Environment.GetEnvironmentVariable("PATH") ?? "")
        .Split(System.IO.Path.PathSeparator)
        .SelectMany(folder => Names.Select(name => System.IO.Path.Combine(folder, name)))
        .FirstOrDefault(File.Exists);

    /// <summary>Whether there is any.</summary>
    public static bool IsThere => Path is not null || Directory.Exists(OwnFolder);

    private static string OwnFolder => System.IO.Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".cache", "ms-playwright");
}

/// <summary>A test in a browser; skipped, and said so, where there is none.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class BrowserFactAttribute : FactAttribute
{
    public BrowserFactAttribute() => Skip = Chromium.IsThere ? null : "No Chromium is installed: the page was not tested.";
}

/// <summary>As <see cref="BrowserFactAttribute"/>, for several cases.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class BrowserTheoryAttribute : TheoryAttribute
{
    public BrowserTheoryAttribute() => Skip = Chromium.IsThere ? null : "No Chromium is installed: the page was not tested.";
}
