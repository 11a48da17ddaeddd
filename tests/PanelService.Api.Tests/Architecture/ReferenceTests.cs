using System.Xml.Linq;

namespace PanelService.Api.Tests.Architecture;

/// <summary>The design's arrows: references between our projects run one way, and the core knows no host.</summary>
public sealed class ReferenceTests
{
    private static readonly string[] HostLibraries =
        ["Microsoft.AspNetCore", "Microsoft.EntityFrameworkCore", "Microsoft.Extensions", "Serilog", "FluentValidation", "Swashbuckle", "CsvHelper", "System.Net"];

    [Theory]
    [InlineData("PanelService.Cutting", "")]
    [InlineData("PanelService.Planning", "PanelService.Cutting")]
    [InlineData("PanelService.Drawing", "PanelService.Planning")]
    [InlineData("PanelService.Store", "PanelService.Planning")]
    [InlineData("PanelService", "PanelService.Drawing PanelService.Store")]
    public void Project_references_only_what_the_design_allows(string project, string allowed) =>
        Assert.Equal(allowed.Split(' ', StringSplitOptions.RemoveEmptyEntries), References(project, "ProjectReference").Select(Path.GetFileNameWithoutExtension).Order());

    [Fact]
    public void Design_covers_every_project_under_src() =>
        Assert.Equal(
            ["PanelService", "PanelService.Cutting", "PanelService.Drawing", "PanelService.Planning", "PanelService.Store"],
            Directory.GetFiles(Path.Combine(Root(), "src"), "*.csproj", SearchOption.AllDirectories).Select(Path.GetFileNameWithoutExtension).Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("PanelService.Cutting")]
    [InlineData("PanelService.Planning")]
    [InlineData("PanelService.Drawing")]
    public void Core_assembly_uses_no_host_library(string project)
    {
        var used = System.Reflection.Assembly.Load(project).GetReferencedAssemblies().Select(name => name.Name!);

        Assert.DoesNotContain(used, name => HostLibraries.Any(library => name.StartsWith(library, StringComparison.Ordinal)));
        Assert.DoesNotContain(References(project, "PackageReference"), name => HostLibraries.Any(library => name.StartsWith(library, StringComparison.Ordinal)));
        Assert.Empty(References(project, "FrameworkReference"));
    }

    internal static string Root()
    {
        DirectoryInfo? here = new(AppContext.BaseDirectory);
        while (here is not null && !File.Exists(Path.Combine(here.FullName, "PanelService.sln")))
        {
            here = here.Parent;
        }

        return here?.FullName ?? throw new DirectoryNotFoundException("The source tree is not above the tests.");
    }

    private static IEnumerable<string> References(string project, string kind) =>
        XDocument.Load(Path.Combine(Root(), "src", project, project + ".csproj"))
            .Descendants(kind)
            .Select(reference => reference.Attribute("Include")!.Value.Replace('\\', '/'));
}
