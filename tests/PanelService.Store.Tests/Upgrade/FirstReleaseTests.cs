using System.Text.Json;
using Microsoft.Data.Sqlite;
using PanelService.Planning.Plans;
using PanelService.Store.Documents;
using PanelService.Store.Tests.Hosts;
using PanelService.Tests.Shared;

namespace PanelService.Store.Tests.Upgrade;

/// <summary>
/// What the first release wrote (2026-11-25: stock, supplies, a plan that was cut and one that was not) is read by this
/// program, whatever has changed since: the files in first-release are that program's, and are never written anew.
/// </summary>
public sealed class FirstReleaseTests : IDisposable
{
    private const string Cut = "a1c645c525a744dfbf13a4fbc491fd75";
    private const string Open = "609cc01139d6de2e699a808851193dfc";
    private const int FirstVersion = 1;

    private readonly DataFolder _folder = new();

    /// <summary>Puts a copy of its database where the service will look.</summary>
    public FirstReleaseTests() => File.Copy(Fixture("studio.sqlite3"), Database, overwrite: true);

    private string Database => Path.Combine(_folder.Path, "studio.db");

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData(Cut, "Tern Island, the first week", "plan-cut.json")]
    [InlineData(Open, "Tern Island, the week after", "plan-open.json")]
    public async Task Its_plans_are_listed_and_say_what_they_said(string id, string title, string document)
    {
        using StudioHost host = Start();
        using HttpClient client = host.CreateClient();

        JsonElement listed = Assert.Single((await client.GetJsonAsync("/api/plans")).GetProperty("plans").EnumerateArray(), plan => plan.GetProperty("id").GetString() == id);
        JsonElement plan = await client.GetJsonAsync($"/api/plans/{id}");

        Assert.Equal((title, id == Cut), (listed.GetProperty("title").GetString(), listed.GetProperty("isCut").GetBoolean()));
        HoldTo(Read(document), plan, "plan");
        Assert.StartsWith("<svg", await client.GetStringAsync(plan.GetProperty("sheets")[0].GetProperty("drawing").GetString()), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Its_stored_plan_keeps_its_text_and_its_version()
    {
        using (StudioHost host = Start())
        using (HttpClient client = host.CreateClient())
        {
            await client.GetJsonAsync($"/api/plans/{Open}");
            await client.TakenAsync(HttpMethod.Post, $"/api/plans/{Open}/cut");
        }

        await using SqliteConnection connection = await ConnectAsync();
        await using SqliteCommand command = connection.CreateCommand();
        command.CommandText = $"SELECT DocumentVersion, Document FROM plans WHERE Id = '{Open}'";
        await using SqliteDataReader row = await command.ExecuteReaderAsync();
        Assert.True(await row.ReadAsync());
        Assert.Equal(FirstVersion, row.GetInt32(0));
        Assert.Equal(await File.ReadAllTextAsync(Fixture("stored-plan.json")), row.GetString(1));
    }

    [Fact]
    public async Task Its_plan_document_is_read_by_itself()
    {
        Plan plan = PlanDocument.Read(await File.ReadAllTextAsync(Fixture("stored-plan.json")), FirstVersion)!;

        Assert.Equal("Tern Island, the week after", plan.Order.Title);
        Assert.Equal(2160, plan.Proof.Spent.Minor);
        Assert.Equal(9, plan.Panels.Sum(panel => panel.Made));
        Assert.Null(PlanDocument.Read("{}", PlanDocument.Version + 1));
    }

    [Fact]
    public async Task Its_stock_is_there_and_is_the_sum_of_its_movements_also_after_the_next_cut()
    {
        using StudioHost host = Start();
        using HttpClient client = host.CreateClient();
        HoldTo(Read("stock.json"), await client.GetJsonAsync("/api/stock?empty=true"), "stock");
        await HoldToMovementsAsync(client);

        await client.TakenAsync(HttpMethod.Post, $"/api/plans/{Open}/cut");
        await HoldToMovementsAsync(client);
    }

    private static async Task HoldToMovementsAsync(HttpClient client)
    {
        var sums = (await client.GetJsonAsync("/api/stock/movements?take=500")).GetProperty("movements").EnumerateArray()
            .GroupBy(movement => movement.GetProperty("stock").GetString()!)
            .ToDictionary(group => group.Key, group => group.Sum(Quantity));
        JsonElement[] stock = [.. (await client.GetJsonAsync("/api/stock?empty=true")).GetProperty("stock").EnumerateArray()];
        Assert.True(stock.Length > 3);
        Assert.All(stock, item => Assert.Equal(sums[item.GetProperty("id").GetString()!], Quantity(item)));
        Assert.Equal(sums.Count, stock.Length);
    }

    private static decimal Quantity(JsonElement item) =>
        (item.TryGetProperty("count", out JsonElement count) ? count : item.GetProperty("volume")).GetDecimal();

    // Every field it had is there with what it said; later programs may say more.
    private static void HoldTo(JsonElement said, JsonElement says, string path)
    {
        Assert.True(said.ValueKind == says.ValueKind, path);
        switch (said.ValueKind)
        {
            case JsonValueKind.Object:
                foreach (JsonProperty field in said.EnumerateObject())
                {
                    Assert.True(says.TryGetProperty(field.Name, out JsonElement now), $"{path}.{field.Name} is gone");
                    HoldTo(field.Value, now, $"{path}.{field.Name}");
                }

                break;
            case JsonValueKind.Array:
                Assert.True(said.GetArrayLength() == says.GetArrayLength(), $"{path} has another length");
                for (int i = 0; i < said.GetArrayLength(); i++)
                {
                    HoldTo(said[i], says[i], $"{path}[{i}]");
                }

                break;
            default:
                Assert.True(JsonElement.DeepEquals(said, says), $"{path} was {said}, is {says}");
                break;
        }
    }

    private StudioHost Start() => new((DataFolder.Setting, _folder.Path));

    private async Task<SqliteConnection> ConnectAsync()
    {
        var connection = new SqliteConnection($"Data Source={Database};Mode=ReadOnly;Pooling=False");
        await connection.OpenAsync();
        return connection;
    }

    private static JsonElement Read(string name)
    {
        using JsonDocument document = JsonDocument.Parse(File.ReadAllText(Fixture(name)));
        return document.RootElement.Clone();
    }

    private static string Fixture(string name) => Path.Combine(AppContext.BaseDirectory, "Upgrade", "first-release", name);
}
