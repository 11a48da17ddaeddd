using System.Text.RegularExpressions;

namespace PanelService.Api.Tests.Documents;

/// <summary>docs/asvs.md says of every requirement how it stands, counts right, and names tests that there are.</summary>
public sealed partial class AuditTests
{
    // OWASP ASVS 5.0.0 has 70 requirements of level 1 (counted in its chapters 1 to 17).
    private const int LevelOne = 70;

    private static string Text => File.ReadAllText(Path.Combine(SourceTree.Root, "docs", "asvs.md"));

    [Fact]
    public void Every_requirement_of_level_one_has_its_row_and_the_sum_is_right()
    {
        (string Number, string Verdict)[] rows = [.. Row().Matches(Text).Select(row => (row.Groups["number"].Value, row.Groups["verdict"].Value))];
        int met = Count(rows, "met"), apart = Count(rows, "n/a"), open = Count(rows, "**not met**") + Count(rows, "**in part**");

        Assert.Equal(LevelOne, met + apart + open);
        Assert.Equal(rows.Length, rows.Select(row => row.Number).Distinct().Count());
        Assert.Contains($"**{met} met, {apart} do not apply, {open} not met**", Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_test_it_names_is_there()
    {
        string tests = string.Join('\n', Directory.EnumerateFiles(Path.Combine(SourceTree.Root, "tests"), "*Tests.cs", SearchOption.AllDirectories).Select(File.ReadAllText));
        string[] missing = [.. Named().Matches(Text)
            .SelectMany(name => new[] { $"class {name.Groups["type"].Value}", name.Groups["member"].Success ? $" {name.Groups["member"].Value}(" : "" })
            .Where(sought => !tests.Contains(sought, StringComparison.Ordinal))];
        Assert.Empty(missing);
    }

    // A row for "10.4.1–5" stands for five.
    private static int Count((string Number, string Verdict)[] rows, string verdict) =>
        rows.Where(row => row.Verdict == verdict).Sum(row => row.Number.Contains('–', StringComparison.Ordinal) ? 5 : 1);

    [GeneratedRegex(@"^\| (?<number>\d+\.\d+\.\d+(–\d+)?) \|[^|]*\| (?<verdict>[^|]*) \|", RegexOptions.Multiline)]
    private static partial Regex Row();

    [GeneratedRegex(@"`(?<type>[A-Z]\w*Tests)(\.(?<member>\w+))?`")]
    private static partial Regex Named();
}
