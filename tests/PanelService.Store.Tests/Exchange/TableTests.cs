using System.Text;
using System.Text.Json;
using PanelService.Store.Tests.Hosts;

namespace PanelService.Store.Tests.Exchange;

/// <summary>Supplies and stock as tables: what goes out comes in again, and a faulty line refuses the whole by its number.</summary>
public abstract class TableTests(IDatabase database)
{
    private const string Goods =
        "sort,id,name,units,currency,thickness,width,height,price,sale.by,sale.step,sale.price,coverage.area,coverage.volume,containers[0].volume,containers[0].price\r\n"
        + "boards,hb3,\"Hardboard, 1/8\"\"\",inch,EUR,1/8,24,48,6.10,,,,,,,\r\n"
        + "cloths,lin,,inch,EUR,,62,,,length,36,31.00,,,,\r\n"
        + "adhesives,007,=glue,inch,EUR,,,,,,,,80,0.4,8,7.90\r\n";

    [Fact]
    public async Task Supplies_out_and_in_again_are_the_same()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();

        JsonElement taken = await (await PostAsync(client, "/api/supplies.csv", Goods)).ReadAsync();
        string before = await client.GetStringAsync("/api/supplies.csv");
        await PostAsync(client, "/api/supplies.csv", before);

        Assert.Equal(3, taken.GetProperty("lines").GetInt32());
        Assert.Equal(before, await client.GetStringAsync("/api/supplies.csv"));
        JsonElement glue = await client.GetJsonAsync("/api/supplies/adhesives/007");
        Assert.Equal("=glue", glue.GetProperty("name").GetString());
        Assert.Equal(7.90m, glue.GetProperty("containers")[0].GetProperty("price").GetDecimal());
        Assert.Equal("Hardboard, 1/8\"", (await client.GetJsonAsync("/api/supplies/boards/hb3")).GetProperty("name").GetString());
    }

    [Fact]
    public async Task Table_with_faulty_lines_names_them_all_and_saves_nothing()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage response = await PostAsync(client, "/api/supplies.csv", Goods + "boards,x,,inch,EUR,1/8,24,wide,6.10,,,,,,,\r\nnails,y,,,,,,,,,,,,,,\r\nboards,z\r\n");

        JsonElement errors = (await response.ReadProblemAsync(400, "/problems/invalid-request")).GetProperty("errors");
        Assert.Equal(["line 5, height", "line 6, sort", "line 7"], errors.EnumerateObject().Select(error => error.Name).Order(StringComparer.Ordinal));
        Assert.Equal(0, (await client.GetJsonAsync("/api/supplies")).GetProperty("boards").GetArrayLength());
    }

    [Theory]
    [InlineData("price,price.x\n5,6\n")]
    [InlineData("price.x,price\n5,6\n")]
    [InlineData("price[0].x,price\n5,6\n")]
    [InlineData("price,price[0].x\n5,6\n")]
    [InlineData("price,price\n5,6\n")]
    [InlineData("a.b.c.d.e.f.g\n1\n")]
    public async Task Table_whose_columns_stand_in_one_another_is_refused(string columns)
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        string[] lines = columns.Split('\n');

        using HttpResponseMessage supplies = await PostAsync(client, "/api/supplies.csv", $"sort,id,{lines[0]}\nboards,x,{lines[1]}\n");
        using HttpResponseMessage stock = await PostAsync(client, "/api/stock.csv", $"sort,{lines[0]}\noffcut,{lines[1]}\n");

        foreach (HttpResponseMessage refused in new[] { supplies, stock })
        {
            JsonElement errors = (await refused.ReadProblemAsync(400, "/problems/invalid-request")).GetProperty("errors");
            Assert.StartsWith("line ", Assert.Single(errors.EnumerateObject().Select(error => error.Name).Take(1)), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Stock_comes_in_by_lines_and_goes_out_with_its_ids()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        const string heaps = "sort,thickness,width,height,count,volume,coverage.area,coverage.volume,units\noffcut,1/8,9,12,2,,,,inch\nadhesive,,,,,3,80,0.4,inch\n";

        JsonElement taken = await (await PostAsync(client, "/api/stock.csv", heaps)).ReadAsync();
        using HttpResponseMessage faulty = await PostAsync(client, "/api/stock.csv", "id,sort,thickness,width,height\nB1,offcut,1/8,9,12\n,offcut,,9,12\n");

        Assert.Equal(["B1", "L1"], taken.GetProperty("ids").EnumerateArray().Select(id => id.GetString()));
        JsonElement errors = (await faulty.ReadProblemAsync(400, "/problems/invalid-request")).GetProperty("errors");
        Assert.Equal(["line 2, id", "line 3, thickness"], errors.EnumerateObject().Select(error => error.Name));
        string[] lines = (await client.GetStringAsync("/api/stock.csv")).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.StartsWith("id,sort,", lines[0], StringComparison.Ordinal);
        Assert.Equal(["B1,offcut", "L1,adhesive"], lines[1..].Select(line => string.Join(',', line.Split(',')[..2])));
    }

    private static async Task<HttpResponseMessage> PostAsync(HttpClient client, string address, string table)
    {
        using var body = new StringContent(table, Encoding.UTF8, "text/csv");
        return await client.PostAsync(new Uri(address, UriKind.Relative), body);
    }
}

/// <summary>On SQLite.</summary>
public sealed class SqliteTableTests() : TableTests(new SqliteDatabase());

/// <summary>On PostgreSQL.</summary>
[Trait(PostgresDatabase.Trait, PostgresDatabase.Name)]
public sealed class PostgresTableTests() : TableTests(new PostgresDatabase());
