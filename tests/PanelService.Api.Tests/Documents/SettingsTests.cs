using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using PanelService.FrontDoor;
using PanelService.Store;
using PanelService.Work;

namespace PanelService.Api.Tests.Documents;

/// <summary>docs/operations.md names every setting there is, none that there is not, and the defaults as they are.</summary>
public sealed partial class SettingsTests
{
    // What is not bound to a class of options: the platform's own, and the log's.
    private static readonly string[] Others =
        ["urls", "Kestrel:Certificates:Default:Path", "ASPNETCORE_FORWARDEDHEADERS_ENABLED", "Logs:File", "Logs:DaysKept", "OTEL_EXPORTER_OTLP_ENDPOINT"];

    // Said in words: they depend on the machine, or are none.
    private static readonly string[] InWords = ["DataFolder", "Postgres", "MostMegabytes", "Planners", "Hosts"];

    private static (string Name, string Default)[] Rows { get; } =
        [.. Row().Matches(File.ReadAllText(Path.Combine(SourceTree.Root, "docs", "operations.md"))).Select(row => (row.Groups["name"].Value, row.Groups["default"].Value.Trim()))];

    [Fact]
    public void Every_setting_has_its_row_and_every_row_its_setting() =>
        Assert.Equal(Bound().Select(one => one.Name).Concat(Others).Order(StringComparer.Ordinal), Rows.Select(row => row.Name).Order(StringComparer.Ordinal));

    [Fact]
    public void Defaults_are_as_they_stand_there()
    {
        var expected = Bound().Where(one => !InWords.Contains(one.Property)).Select(one => (one.Name, one.Default));
        Assert.Empty(expected.Except(Rows));
    }

    private static IEnumerable<(string Name, string Property, string Default)> Bound() =>
        Of(StoreOptions.Section, new StoreOptions()).Concat(Of(PlanningOptions.Section, new PlanningOptions())).Concat(Of(FrontDoorOptions.Section, new FrontDoorOptions()));

    private static IEnumerable<(string Name, string Property, string Default)> Of(string section, object options) => options.GetType()
        .GetProperties(BindingFlags.Public | BindingFlags.Instance)
        .Where(property => property.CanWrite)
        .Select(property => ($"{section}:{property.Name}", property.Name, Convert.ToString(property.GetValue(options), CultureInfo.InvariantCulture)!.ToLowerInvariant()));

    [GeneratedRegex(@"^\| `(?<name>[^`]+)` \|(?<default>[^|]*)\|", RegexOptions.Multiline)]
    private static partial Regex Row();
}
