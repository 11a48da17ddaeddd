using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.EntityFrameworkCore;
using PanelService.Store.Tests.Hosts;

namespace PanelService.Store.Tests.Plans;

/// <summary>Plans outlive the service: the same document, drawings and papers after a restart.</summary>
public abstract class PlanMemoryTests(IDatabase database)
{
    private const int Lines = 3;

    private static readonly string[] Papers =
        ["", "/sheets/1.svg", "/cost", "/buy.csv", "/labels.svg", "/saw-run.svg", "/order", "?drawings=inline"];

    [Theory]
    [InlineData("tern-island")]
    [InlineData("lighthouse-studio")]
    public async Task Plan_after_a_restart_is_the_same_in_every_paper(string demo)
    {
        using Home home = database.Open();
        string address;
        var before = new Dictionary<string, string>();
        using (StudioHost host = home.Start())
        using (HttpClient client = host.CreateClient())
        {
            // Some of its panels show whether a plan is kept as well as all of them.
            JsonNode order = JsonNode.Parse(await client.GetStringAsync($"/api/demo/{demo}"))!;
            order["effort"] = "quick";
            order["panels"] = new JsonArray([.. order["panels"]!.AsArray().Take(Lines).Select(line => line!.DeepClone())]);
            address = await client.PlanAsync(order.ToJsonString());
            foreach (string paper in Papers)
            {
                before[paper] = await client.GetStringAsync(address + paper);
            }
        }

        using StudioHost again = home.Start();
        using HttpClient later = again.CreateClient();
        foreach (string paper in Papers)
        {
            Assert.Equal(before[paper], await later.GetStringAsync(address + paper));
        }
    }

    [Fact]
    public async Task Damaged_plan_is_told_as_damaged_and_the_others_are_read()
    {
        using Home home = database.Open();
        string damaged;
        string whole;
        using (StudioHost host = home.Start())
        using (HttpClient client = host.CreateClient())
        {
            damaged = await client.PlanAsync(Orders.Smallest("Torn"));
            whole = await client.PlanAsync(Orders.Smallest("Whole"));
        }

        using (Studio studio = home.OpenStudio())
        {
            await studio.WriteAsync(context => context.Database.ExecuteSqlRawAsync("UPDATE plans SET \"Document\" = substr(\"Document\", 1, 200) WHERE \"Title\" = 'Torn'"), default);
        }

        using StudioHost again = home.Start();
        using HttpClient later = again.CreateClient();
        using HttpResponseMessage response = await later.GetAsync(new Uri(damaged, UriKind.Relative));
        await response.ReadProblemAsync(503, "/problems/memory-damaged");
        Assert.Equal("Whole", (await later.GetJsonAsync(whole)).GetProperty("title").GetString());
        Assert.Equal(2, (await later.GetJsonAsync("/api/plans")).GetProperty("plans").GetArrayLength());
    }

    [Fact]
    public async Task List_finds_by_title_and_day_and_copies_into_a_new_order()
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();
        await client.PlanAsync(Orders.Smallest("Été on Tern Island"));
        string second = await client.PlanAsync(Orders.Smallest("Winter sea"));

        JsonElement found = await client.GetJsonAsync("/api/plans?title=winter");
        JsonElement all = await client.GetJsonAsync("/api/plans?take=1");
        JsonElement folded = await client.GetJsonAsync("/api/plans?title=ÉTÉ");
        JsonElement past = await client.GetJsonAsync("/api/plans?to=2001-01-01");
        JsonElement since = await client.GetJsonAsync("/api/plans?from=2001-01-01");

        Assert.Equal("Winter sea", Assert.Single(found.GetProperty("plans").EnumerateArray()).GetProperty("title").GetString());
        Assert.Equal(2, all.GetProperty("total").GetInt32());
        Assert.Equal("Winter sea", Assert.Single(all.GetProperty("plans").EnumerateArray()).GetProperty("title").GetString());
        Assert.Equal(1, folded.GetProperty("total").GetInt32());
        Assert.Equal(0, past.GetProperty("total").GetInt32());
        Assert.Equal(2, since.GetProperty("total").GetInt32());
        string copy = await client.GetStringAsync($"{second}/order");
        Assert.Equal(Orders.Smallest("Winter sea"), copy);
        Assert.NotEqual(second, await client.PlanAsync(copy));
    }

    [Fact]
    public async Task Delete_forgets_a_plan_for_good()
    {
        using Home home = database.Open();
        string address;
        using (StudioHost host = home.Start())
        using (HttpClient client = host.CreateClient())
        {
            address = await client.PlanAsync(Orders.Smallest("Gone"));

            using HttpResponseMessage deleted = await client.DeleteAsync(new Uri(address, UriKind.Relative));
            using HttpResponseMessage twice = await client.DeleteAsync(new Uri(address, UriKind.Relative));

            Assert.Equal(HttpStatusCode.NoContent, deleted.StatusCode);
            Assert.Equal(HttpStatusCode.NotFound, twice.StatusCode);
        }

        using StudioHost again = home.Start();
        using HttpClient later = again.CreateClient();
        using HttpResponseMessage found = await later.GetAsync(new Uri(address, UriKind.Relative));
        Assert.Equal(HttpStatusCode.NotFound, found.StatusCode);
    }

    [Theory]
    [InlineData("from=yesterday", "from")]
    [InlineData("to=2026-13-01", "to")]
    [InlineData("take=0", "take")]
    [InlineData("skip=-1", "skip")]
    public async Task List_with_a_faulty_search_says_which_part(string query, string field)
    {
        using Home home = database.Open();
        using StudioHost host = home.Start();
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage response = await client.GetAsync(new Uri($"/api/plans?{query}", UriKind.Relative));

        JsonElement problem = await response.ReadProblemAsync(400, "/problems/invalid-request");
        Assert.True(problem.GetProperty("errors").TryGetProperty(field, out _));
    }
}

/// <summary>On SQLite.</summary>
public sealed class SqlitePlanMemoryTests() : PlanMemoryTests(new SqliteDatabase());

/// <summary>On PostgreSQL.</summary>
[Trait(PostgresDatabase.Trait, PostgresDatabase.Name)]
public sealed class PostgresPlanMemoryTests() : PlanMemoryTests(new PostgresDatabase());
