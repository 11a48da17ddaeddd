using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;
using PanelService.Outside.Tests.Orders;

namespace PanelService.Outside.Tests.Readme;

/// <summary>What README.md shows is what the service does, and what it points to is there.</summary>
public sealed partial class ReadmeTests(Service service) : IClassFixture<Service>
{
    private static readonly string Root = FindRoot();
    private static readonly string Text = File.ReadAllText(Path.Combine(Root, "README.md"));

    [Fact]
    public async Task Request_of_the_readme_is_answered_as_it_says()
    {
        var (status, body) = await service.Plan(Block("request"));
        using var answer = JsonDocument.Parse(body);
        using var told = JsonDocument.Parse(Block("answer"));

        Assert.Equal(HttpStatusCode.Created, status);
        Assert.Empty(Differences("", told.RootElement, answer.RootElement));
    }

    [Theory]
    [InlineData("README.md")]
    [InlineData("DEVELOPERS.md")]
    public void Links_inside_the_repository_lead_somewhere(string file)
    {
        var links = Link().Matches(File.ReadAllText(Path.Combine(Root, file))).Select(match => match.Groups[1].Value)
            .Where(link => !link.Contains(':', StringComparison.Ordinal));

        Assert.DoesNotContain(links, link => !Path.Exists(Path.Combine(Root, link)));
    }

    // Everything told must be in the answer; the answer may hold more.
    private static IEnumerable<string> Differences(string path, JsonElement told, JsonElement answer) => told.ValueKind switch
    {
        _ when told.ValueKind != answer.ValueKind => [$"{path}: {told.ValueKind} instead of {answer.ValueKind}"],
        JsonValueKind.Object => told.EnumerateObject().SelectMany(field => answer.TryGetProperty(field.Name, out var there)
            ? Differences($"{path}.{field.Name}", field.Value, there)
            : [$"{path}.{field.Name} is not in the answer"]),
        JsonValueKind.Array when told.GetArrayLength() != answer.GetArrayLength() => [$"{path}: another length"],
        JsonValueKind.Array => told.EnumerateArray().Zip(answer.EnumerateArray())
            .SelectMany((pair, i) => Differences($"{path}[{i}]", pair.First, pair.Second)),
        JsonValueKind.Number => told.GetDecimal() == answer.GetDecimal() ? [] : [$"{path}: {told} instead of {answer}"],
        _ => told.ToString() == answer.ToString() ? [] : [$"{path}: {told} instead of {answer}"],
    };

    private static string Block(string name) =>
        Regex.Match(Text, $"<!-- {name} -->\\s*```json\\s*(.*?)```", RegexOptions.Singleline).Groups[1].Value;

    private static string FindRoot()
    {
        DirectoryInfo? here = new(AppContext.BaseDirectory);
        while (here is not null && !File.Exists(Path.Combine(here.FullName, "PanelService.sln")))
        {
            here = here.Parent;
        }

        return here?.FullName ?? throw new DirectoryNotFoundException("The source tree is not above the tests.");
    }

    [GeneratedRegex(@"\]\(([^)#]+)\)")]
    private static partial Regex Link();
}
