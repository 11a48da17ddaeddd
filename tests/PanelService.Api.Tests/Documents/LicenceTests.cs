using System.Text;
using System.Text.Json;
using System.Xml.Linq;

namespace PanelService.Api.Tests.Documents;

/// <summary>docs/licences.md lists what the lock file lists, each package under the licence its own nuspec names.</summary>
public sealed class LicenceTests
{
    private const string Begin = "<!-- table -->\n";
    private const string End = "<!-- end of table -->\n";

    // Licences that let the service be given on under its own (MIT): permissive ones (SPDX names), and the LGPL for a library that is
    // a file of its own beside the program and can be replaced.
    private static readonly HashSet<string> Allowed = ["MIT", "Apache-2.0", "BSD-3-Clause", "PostgreSQL", "MS-PL OR Apache-2.0", "LGPL-3.0-or-later", "LGPL-3.0-only"];

    // Where the nuspec names only a file: what a person read in that file.
    private static readonly Dictionary<string, string> Read = new(StringComparer.Ordinal)
    {
        ["Hangfire.Core"] = "LGPL-3.0-or-later",
        ["Hangfire.PostgreSql"] = "LGPL-3.0-only",
    };

    private static string List => Path.Combine(SourceTree.Root, "docs", "licences.md");

    [Fact]
    public void The_list_is_the_lock_files()
    {
        string document = File.ReadAllText(List).ReplaceLineEndings("\n");
        int from = document.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        int to = document.IndexOf(End, StringComparison.Ordinal);
        string expected = Table();
        if (Environment.GetEnvironmentVariable("REWRITE_DOCUMENTS") == "1")
        {
            document = document[..from] + expected + document[to..];
            File.WriteAllText(List, document);
            to = from + expected.Length;
        }

        Assert.Equal(expected, document[from..to]);
    }

    [Fact]
    public void Every_licence_lets_the_service_be_given_on_under_its_own() =>
        Assert.Empty(Packages().Select(package => package.Licence).Where(licence => !Allowed.Contains(licence)).Distinct());

    private static string Table()
    {
        var table = new StringBuilder("| package | version | | licence |\n|---|---|---|---|\n");
        foreach ((string name, string version, bool isDirect, string licence) in Packages())
        {
            table.Append(null, $"| {name} | {version} | {(isDirect ? "direct" : "transitive")} | {licence} |\n");
        }

        return table.ToString();
    }

    private static IEnumerable<(string Name, string Version, bool IsDirect, string Licence)> Packages()
    {
        using JsonDocument locks = JsonDocument.Parse(File.ReadAllText(Path.Combine(SourceTree.Root, "src", "PanelService", "packages.lock.json")));
        return [.. locks.RootElement.GetProperty("dependencies").EnumerateObject()
            .SelectMany(platform => platform.Value.EnumerateObject())
            .Where(package => package.Value.GetProperty("type").GetString() != "Project")
            .Select(package => (package.Name, Version: package.Value.GetProperty("resolved").GetString()!, Type: package.Value.GetProperty("type").GetString()))
            .DistinctBy(package => package.Name)
            .OrderBy(package => package.Name, StringComparer.OrdinalIgnoreCase)
            .Select(package => (package.Name, package.Version, package.Type is "Direct" or "CentralTransitive", LicenceOf(package.Name, package.Version)))];
    }

    // The packages were restored to build this test; those of other platforms too, since the lock file names them.
    private static string LicenceOf(string name, string version)
    {
        string cache = Environment.GetEnvironmentVariable("NUGET_PACKAGES")
            ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages");
        string id = name.ToLowerInvariant();
        XElement nuspec = XDocument.Load(Path.Combine(cache, id, version.ToLowerInvariant(), id + ".nuspec")).Root!;
        XElement? licence = nuspec.Descendants().FirstOrDefault(element => element.Name.LocalName == "license");
        return licence is { } said && (string?)said.Attribute("type") == "expression" ? said.Value : Read.GetValueOrDefault(name, "not named");
    }
}
