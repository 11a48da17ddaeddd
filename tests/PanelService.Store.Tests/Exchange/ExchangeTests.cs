using System.Text.Json;
using PanelService.Store.Tests.Hosts;
using PanelService.Tests.Shared;

namespace PanelService.Store.Tests.Exchange;

/// <summary>The whole studio out and in again, and copies of the live database.</summary>
public abstract class ExchangeTests(IDatabase database)
{
    [Fact]
    public async Task Export_taken_into_an_empty_studio_gives_the_same_studio_and_it_goes_on()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string address = await FurnishAsync(client);
        string document = await client.GetStringAsync("/api/export");
        using Home other = database.Open();
        using StudioHost second = other.Start();
        using HttpClient there = second.CreateClient();

        JsonElement imported = await there.TakenAsync(HttpMethod.Post, "/api/import", document);
        using HttpResponseMessage twice = await there.SendJsonAsync(HttpMethod.Post, "/api/import", document);

        await twice.ReadProblemAsync(409, "/problems/studio-not-empty");
        Assert.Equal(1, imported.GetProperty("plans").GetInt32());
        foreach (string paper in new[] { address, $"{address}/cut", "/api/stock?empty=true", "/api/stock/movements", "/api/supplies", "/api/settings", "/api/export" })
        {
            Assert.Equal(await client.GetStringAsync(paper), await there.GetStringAsync(paper));
        }

        string next = (await client.TakenAsync(HttpMethod.Post, "/api/stock", """{ "sort": "panel", "width": 8, "height": 10 }""")).GetProperty("id").GetString()!;
        Assert.Equal(next, (await there.TakenAsync(HttpMethod.Post, "/api/stock", """{ "sort": "panel", "width": 8, "height": 10 }""")).GetProperty("id").GetString());
        await there.TakenAsync(HttpMethod.Post, $"{address}/cut/undo");
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("not json")]
    [InlineData("""{ "format": "panel-service-studio", "version": 99 }""")]
    [InlineData("""{ "format": "panel-service-studio", "version": 1, "movements": [ { "id": 1, "bookingId": 1, "stockId": "B1", "quantity": 1, "reason": "added" } ] }""")]
    public async Task Import_of_what_is_no_studio_stores_nothing(string document)
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage response = await client.SendJsonAsync(HttpMethod.Post, "/api/import", document);

        await response.ReadProblemAsync(400, "/problems/no-studio");
        Assert.Equal(0, (await client.GetJsonAsync("/api/stock")).GetProperty("stock").GetArrayLength());
    }

    internal static async Task<string> FurnishAsync(HttpClient client)
    {
        await client.TakenAsync(HttpMethod.Put, "/api/settings", """{ "units": "inch", "currency": "EUR" }""");
        await client.TakenAsync(HttpMethod.Put, "/api/supplies/boards/hb3", """{ "thickness": "1/8", "width": 24, "height": 48, "price": 6.10 }""");
        string address = await client.PlanAsync(Orders.Smallest("Kept"));
        await client.TakenAsync(HttpMethod.Post, $"{address}/cut");
        await client.TakenAsync(HttpMethod.Post, "/api/stock", """{ "sort": "offcut", "thickness": "1/8", "width": 9, "height": 12, "count": 2 }""");
        return address;
    }
}

/// <summary>On SQLite; copies of the file too.</summary>
public sealed class SqliteExchangeTests() : ExchangeTests(new SqliteDatabase())
{
    [Fact]
    public async Task Backup_of_the_live_database_is_a_studio_of_its_own()
    {
        using Home home = new SqliteDatabase().Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        await FurnishAsync(client);

        byte[] copy = await client.GetByteArrayAsync(new Uri("/api/backup", UriKind.Relative));

        using Home other = new SqliteDatabase().Open();
        await File.WriteAllBytesAsync(other.Options.FilePath, copy);
        using StudioHost second = other.Start();
        using HttpClient there = second.CreateClient();
        Assert.Equal(await client.GetStringAsync("/api/export"), await there.GetStringAsync("/api/export"));
    }

    [Fact]
    public async Task Backup_command_copies_once_and_never_over_a_file()
    {
        using Home home = new SqliteDatabase().Open();
        using (StudioHost host = home.Start())
        using (HttpClient client = host.CreateClient())
        {
            await FurnishAsync(client);
        }

        using var folder = new DataFolder();
        string path = Path.Combine(folder.Path, "copy.db");
        using var said = new StringWriter();
        int first = await Hosting.BackupCommand.RunAsync(["backup", path], home.Options, said, said);
        byte[] copy = await File.ReadAllBytesAsync(path);
        int second = await Hosting.BackupCommand.RunAsync(["backup", path], home.Options, said, said);
        int bare = await Hosting.BackupCommand.RunAsync(["backup"], home.Options, said, said);

        Assert.Equal([0, 1, 1], [first, second, bare]);
        Assert.Equal(copy, await File.ReadAllBytesAsync(path));
        Assert.Contains("there already", said.ToString(), StringComparison.Ordinal);
    }
}

/// <summary>On PostgreSQL.</summary>
[Trait(PostgresDatabase.Trait, PostgresDatabase.Name)]
public sealed class PostgresExchangeTests() : ExchangeTests(new PostgresDatabase())
{
    [Fact]
    public async Task Backup_says_that_there_is_no_file()
    {
        using Home home = new PostgresDatabase().Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage response = await client.GetAsync(new Uri("/api/backup", UriKind.Relative));

        await response.ReadProblemAsync(409, "/problems/no-file-to-copy");
    }
}
