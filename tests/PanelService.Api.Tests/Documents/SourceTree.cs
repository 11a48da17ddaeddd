namespace PanelService.Api.Tests.Documents;

/// <summary>Where the repository lies that these tests were built from.</summary>
internal static class SourceTree
{
    internal static string Root { get; } = Find();

    private static string Find()
    {
        DirectoryInfo here = new(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(here.FullName, "PanelService.sln")))
        {
            here = here.Parent ?? throw new DirectoryNotFoundException("These tests read documents of the source tree.");
        }

        return here.FullName;
    }
}
