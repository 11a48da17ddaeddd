using System.Text.Json;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using PanelService.Planning.Measures;
using PanelService.Store.Faults;
using PanelService.Store.Stock;
using PanelService.Store.Tests.Hosts;
using PanelService.Tests.Shared;

namespace PanelService.Store.Tests.Faults;

/// <summary>A full disk, a folder that cannot be written, a database of a newer program, a damaged one.</summary>
public sealed class DiskTests
{
    private const string Panels = """{ "sort": "panel", "width": 8, "height": 10, "note": "NOTE" }""";

    private const int BytesPerPage = 4096;

    // No file can be made there, not even by root.
    private const string ReadOnlyFolder = "/sys/kernel/panel-service";

    [Fact]
    public async Task Full_disk_is_answered_with_507_and_nothing_is_booked_and_the_service_stays_up()
    {
        using Home home = new SqliteDatabase().Open();
        using StudioHost host = home.Start(($"{StoreOptions.Section}:{nameof(StoreOptions.MostMegabytes)}", "1"));
        using HttpClient client = host.CreateClient();
        await FillButAsync(home, pagesLeft: 40);
        string body = Panels.Replace("NOTE", new string('n', 200), StringComparison.Ordinal);
        HttpResponseMessage response = await client.SendJsonAsync(HttpMethod.Post, "/api/stock", body);
        int booked = 0;
        while (response.IsSuccessStatusCode)
        {
            booked++;
            response.Dispose();
            response = await client.SendJsonAsync(HttpMethod.Post, "/api/stock", body);
        }

        await response.ReadProblemAsync(507, "/problems/memory-full");
        response.Dispose();
        using HttpResponseMessage again = await client.SendJsonAsync(HttpMethod.Post, "/api/stock", body);
        await again.ReadProblemAsync(507, "/problems/memory-full");
        using HttpResponseMessage health = await client.GetAsync(new Uri("/health", UriKind.Relative));
        Assert.Equal(HttpStatusCode.OK, health.StatusCode);
        Assert.Equal(booked, (await client.GetJsonAsync("/api/stock")).GetProperty("stock").GetArrayLength());
    }

    // Most of the room is taken up at once: booking by booking it took a minute.
    private static async Task FillButAsync(Home home, int pagesLeft)
    {
        using Studio studio = home.OpenStudio();
        await studio.WriteAsync(
            async context =>
            {
                int free = await context.Database
                    .SqlQuery<int>($"SELECT max_page_count - page_count AS Value FROM pragma_max_page_count(), pragma_page_count()").SingleAsync();
                int bytes = (free - pagesLeft) * BytesPerPage;
                return await context.Database.ExecuteSqlAsync($"CREATE TABLE filler AS SELECT zeroblob({bytes}) AS blank");
            },
            default);
    }

    [Fact]
    public async Task Folder_that_cannot_be_written_is_answered_with_503_and_the_service_stays_up()
    {
        using var host = new StudioHost((DataFolder.Setting, ReadOnlyFolder));
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage stock = await client.SendJsonAsync(HttpMethod.Post, "/api/stock", Panels);
        using HttpResponseMessage order = await client.SendJsonAsync(HttpMethod.Post, "/api/plans", Orders.Smallest("No room"));
        using HttpResponseMessage health = await client.GetAsync(new Uri("/health", UriKind.Relative));

        await stock.ReadProblemAsync(503, "/problems/memory-not-writable");
        await order.ReadProblemAsync(503, "/problems/memory-not-writable");
        Assert.Equal(HttpStatusCode.OK, health.StatusCode);
    }

    [Fact]
    public async Task Fault_is_logged_with_what_the_disk_said()
    {
        var log = new LoggedLines<Studio>();
        using var studio = new Studio(new StoreOptions { DataFolder = ReadOnlyFolder }, log);

        var fault = await Assert.ThrowsAsync<StoreUnavailableException>(() => studio.OpenAsync());

        Assert.Equal(StoreFault.NotWritable, fault.Fault);
        Assert.Contains("NotWritable", Assert.Single(log.Lines), StringComparison.Ordinal);
        Assert.StartsWith("Error", log.Lines[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Folder_that_can_be_written_again_works_without_a_restart()
    {
        using var folder = new DataFolder();
        string file = Path.Combine(folder.Path, "room");
        await File.WriteAllTextAsync(file, "in the way");
        using var studio = new Studio(new StoreOptions { DataFolder = file }, new LoggedLines<Studio>());
        await Assert.ThrowsAsync<StoreUnavailableException>(() => studio.OpenAsync());
        File.Delete(file);

        await studio.OpenAsync();

        Assert.True(File.Exists(Path.Combine(file, StoreOptions.FileName)));
    }

    [Fact]
    public async Task Database_of_a_newer_program_is_refused_and_left_as_it_is()
    {
        using Home home = new SqliteDatabase().Open();
        await MakeNewerAsync(home.Options.FilePath);
        byte[] before = await File.ReadAllBytesAsync(home.Options.FilePath);
        using Studio studio = home.OpenStudio();

        var fault = await Assert.ThrowsAsync<StoreUnavailableException>(() => studio.OpenAsync());
        Assert.ThrowsAny<Exception>(() => home.Start().CreateClient());

        Assert.Equal(StoreFault.Newer, fault.Fault);
        Assert.Contains("newer program", fault.Message, StringComparison.Ordinal);
        Assert.Equal(before, await File.ReadAllBytesAsync(home.Options.FilePath));
    }

    [Fact]
    public async Task Service_ends_with_a_sentence_where_the_database_is_of_a_newer_program()
    {
        using Home home = new SqliteDatabase().Open();
        await MakeNewerAsync(home.Options.FilePath);
        using var process = new HostProcess((DataFolder.Setting, home.Options.DataFolder));

        (int code, string error) = await process.EndedAsync();

        Assert.Equal(78, code);
        Assert.Equal(
            "The database was made by a newer program (it has \"29990101000000_Tomorrow\", which this one does not know). It was left as it is: use the newer program, or another data folder.",
            error.Trim());
    }

    [Fact]
    public async Task File_that_is_no_database_is_refused_and_left_as_it_is()
    {
        using Home home = new SqliteDatabase().Open();
        string text = new('x', 10_000);
        await File.WriteAllTextAsync(home.Options.FilePath, text);
        using Studio studio = home.OpenStudio();

        var fault = await Assert.ThrowsAsync<StoreUnavailableException>(() => studio.OpenAsync());

        Assert.Equal(StoreFault.Damaged, fault.Fault);
        Assert.Equal(text, await File.ReadAllTextAsync(home.Options.FilePath));
    }

    [Fact]
    public async Task Writing_is_in_write_ahead_mode_and_on_the_disk_before_it_is_answered()
    {
        using Home home = new SqliteDatabase().Open();
        using Studio studio = home.OpenStudio();

        (string mode, long synchronous) = await studio.ReadAsync(
            async context => (
                (await context.Database.SqlQueryRaw<string>("SELECT journal_mode AS Value FROM pragma_journal_mode").ToArrayAsync())[0],
                (await context.Database.SqlQueryRaw<long>("SELECT synchronous AS Value FROM pragma_synchronous").ToArrayAsync())[0]),
            default);

        Assert.Equal("wal", mode);
        Assert.Equal(2, synchronous);
    }

    private static async Task MakeNewerAsync(string path)
    {
        await using var connection = new SqliteConnection($"Data Source={path};Pooling=false");
        await connection.OpenAsync();
        await using SqliteCommand command = connection.CreateCommand();
        command.CommandText = "INSERT INTO __EFMigrationsHistory VALUES ('29990101000000_Tomorrow', '99.0.0')";
        await command.ExecuteNonQueryAsync();
    }
}

/// <summary>The ledger is only added to: the database itself sees to that.</summary>
public abstract class LedgerGuardTests(IDatabase database)
{
    [Theory]
    [InlineData("UPDATE movements SET \"Quantity\" = 7")]
    [InlineData("DELETE FROM movements")]
    [InlineData("UPDATE bookings SET \"At\" = 0")]
    public async Task Database_refuses_to_change_or_delete_what_was_booked(string statement)
    {
        using Home home = database.Open();
        using Studio studio = home.OpenStudio();
        var book = new StockBook(studio, TimeProvider.System);
        await book.AddAsync([new StockDraft(StockSort.Panel, new StockGood(), 3, default, LengthUnit.Inch, "EUR")], null, default);

        Exception fault = await Assert.ThrowsAnyAsync<System.Data.Common.DbException>(
            () => studio.WriteAsync(context => context.Database.ExecuteSqlRawAsync(statement), default));

        Assert.Contains("only added to", fault.Message, StringComparison.Ordinal);
        Assert.Equal(3, Assert.Single(await book.ListAsync(false, default)).Quantity);
    }
}

/// <summary>On SQLite.</summary>
public sealed class SqliteLedgerGuardTests() : LedgerGuardTests(new SqliteDatabase());

/// <summary>On PostgreSQL.</summary>
[Trait(PostgresDatabase.Trait, PostgresDatabase.Name)]
public sealed class PostgresLedgerGuardTests() : LedgerGuardTests(new PostgresDatabase());

/// <summary>
/// What PostgreSQL says of its own disk. The server's disk is not ours to fill: a trigger raises what the server raises (its
/// manual, appendix A) in the middle of a booking.
/// </summary>
[Trait(PostgresDatabase.Trait, PostgresDatabase.Name)]
public sealed class PostgresDiskTests
{
    private const string Panels = """{ "sort": "panel", "width": 8, "height": 10 }""";

    [Theory]
    [InlineData("53100", 507, "/problems/memory-full")]
    [InlineData("25006", 503, "/problems/memory-not-writable")]
    public async Task Fault_of_the_servers_disk_is_answered_and_nothing_is_booked_and_the_service_stays_up(string code, int status, string type)
    {
        using Home home = new PostgresDatabase().Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        await RunAsync(home, $"""
            CREATE FUNCTION fail() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN RAISE EXCEPTION 'the disk' USING ERRCODE = '{code}'; END $$;
            CREATE TRIGGER failing BEFORE INSERT ON movements FOR EACH ROW EXECUTE FUNCTION fail();
            """);

        using HttpResponseMessage refused = await client.SendJsonAsync(HttpMethod.Post, "/api/stock", Panels);
        JsonElement meanwhile = await client.GetJsonAsync("/api/stock");
        await RunAsync(home, "DROP TRIGGER failing ON movements");
        await client.TakenAsync(HttpMethod.Post, "/api/stock", Panels);

        await refused.ReadProblemAsync(status, type);
        Assert.Equal(0, meanwhile.GetProperty("stock").GetArrayLength());
        Assert.Equal("P1", (await client.GetJsonAsync("/api/stock")).GetProperty("stock")[0].GetProperty("id").GetString());
    }

    [Fact]
    public async Task Server_that_does_not_answer_is_503_and_the_service_stays_up()
    {
        using Home home = new SqliteDatabase().Open();
        using StudioHost host = home.Start(($"{StoreOptions.Section}:{nameof(StoreOptions.Postgres)}", "Host=127.0.0.1;Port=1;Username=studio;Database=studio"), ("Planning:Shared", "false"));
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage stock = await client.SendJsonAsync(HttpMethod.Post, "/api/stock", Panels);
        using HttpResponseMessage health = await client.GetAsync(new Uri("/health", UriKind.Relative));

        await stock.ReadProblemAsync(503, "/problems/memory-unreachable");
        Assert.Equal(HttpStatusCode.OK, health.StatusCode);
    }

    private static async Task RunAsync(Home home, string statement)
    {
        await using var connection = new Npgsql.NpgsqlConnection(home.Options.Postgres);
        await connection.OpenAsync();
        await using Npgsql.NpgsqlCommand command = connection.CreateCommand();
#pragma warning disable CA2100 // The codes in it are our own.
        command.CommandText = statement;
#pragma warning restore CA2100
        await command.ExecuteNonQueryAsync();
    }
}
