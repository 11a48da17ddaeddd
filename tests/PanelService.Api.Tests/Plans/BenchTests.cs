using System.Text.Json;
using System.Xml.Linq;
using PanelService.Api.Tests.Hosts;

namespace PanelService.Api.Tests.Plans;

/// <summary>The bench on the wire: stacks, schedule, bars, what is mounted later.</summary>
public sealed class BenchTests(PlainHosts hosts) : IClassFixture<PlainHosts>
{
    private const string Order = """
        { "title": "Keepers & rush", "units": "inch", "currency": "EUR",
          "panels": [ { "mark": "A", "width": 12, "height": 16, "quantity": 3, "surface": "cloth" },
                      { "mark": "R", "width": 8, "height": 10, "quantity": 2, "surface": "cloth", "first": true },
                      { "mark": "K", "width": 8, "height": 10, "quantity": 4, "surface": "cloth", "mount": "later" } ],
          "boards": [ { "id": "hb3", "thickness": "1/8", "width": 48, "height": 48, "price": 6.10 } ],
          "cloths": [ { "id": "duck", "width": 54, "sale": { "by": "length", "step": 36, "price": 12 } } ],
          "adhesives": [ { "id": "glue", "coverage": { "area": 80, "volume": 0.4 }, "containers": [ { "volume": 8, "price": 7.90 } ] } ] }
        """;

    // 20 kg of books on the 12 × 16 stack is 44 lb: 1.58 kPa (worked).
    [Fact]
    public async Task Plan_says_what_weight_goes_on_which_stack()
    {
        using HttpClient client = hosts.Plain.CreateClient();

        JsonElement stacks = (await client.PlanAsync(Order)).GetProperty("benchPlan").GetProperty("stacks");

        Assert.Equal(["R", "A"], stacks.EnumerateArray().Select(stack => stack.GetProperty("panels")[0].GetProperty("mark").GetString()));
        Assert.Equal("44 lb of books on the 12 × 16 stack", stacks[1].GetProperty("text").GetString());
        Assert.Equal("K", (await client.PlanAsync(Order)).GetProperty("benchPlan").GetProperty("mountLater")[0].GetString());
    }

    // A painter's own figures go before the table's; the grain runs along the height, which is the long side of A.
    [Fact]
    public async Task Board_is_computed_with_the_stiffness_the_order_gives_it()
    {
        using var host = new TestHost();
        using HttpClient client = host.CreateClient();
        const string own = """{ "id": "hb3", "thickness": "1/8", "width": 48, "height": 48, "price": 6.10, "grain": "height", "elasticity": 12000, "elasticityAcross": 2000, "shear": 600, "density": 650 }""";

        JsonElement one = (await client.PlanAsync(Json.With(Order, "boards[0]", own))).GetProperty("strength")[0];
        JsonElement alike = (await client.PlanAsync(Json.With(Order, "boards[0]", own.Replace("2000,", "12000,", StringComparison.Ordinal)))).GetProperty("strength")[0];

        JsonElement material = one.GetProperty("material");
        Assert.Equal((650m, 12000m, 2000m, 600m), (Figure(material, "density"), Figure(material, "elasticity"), Figure(material, "elasticityAcross"), Figure(material, "shear")));
        Assert.Equal("alongLong", one.GetProperty("grain").GetString());
        Assert.True(Figure(one, "sagUnderHand") > Figure(alike, "sagUnderHand"));
        Assert.True(Figure(one, "cornerSag") > Figure(one, "sag"));

        static decimal Figure(JsonElement parent, string name) => parent.GetProperty(name).GetDecimal();
    }

    // Every minute labour is paid for is a minute of a job.
    [Fact]
    public async Task Labour_is_the_minutes_of_the_schedule_at_the_price_of_an_hour()
    {
        using var host = new TestHost();
        using HttpClient client = host.CreateClient();

        JsonElement plan = await client.PlanAsync(Json.With(Order, "labour", """{ "perHour": 21.40 }"""));

        decimal minutes = plan.GetProperty("benchPlan").GetProperty("schedule").GetProperty("jobs").EnumerateArray().Sum(job => job.GetProperty("minutes").GetDecimal());
        decimal labour = plan.GetProperty("cost").GetProperty("panels").EnumerateArray().Sum(line => line.GetProperty("labour").GetDecimal());
        Assert.True(minutes > 0);
        Assert.Equal(Math.Round(21.40m * minutes / 60, 2, MidpointRounding.AwayFromZero), labour);
    }

    [Fact]
    public async Task Bench_of_what_was_left_for_later_is_its_gluing_and_pressing_alone()
    {
        using HttpClient client = hosts.Plain.CreateClient();
        JsonElement plan = await client.PlanAsync(Order);

        JsonElement later = await client.GetJsonAsync($"/api/plans/{plan.GetProperty("id").GetString()}/bench?mount=later&start=2027-01-04T10:00");

        JsonElement jobs = later.GetProperty("schedule").GetProperty("jobs");
        Assert.Equal(["glue", "trim"], jobs.EnumerateArray().Select(job => job.GetProperty("task").GetString()));
        Assert.Equal(4, jobs[0].GetProperty("panels")[0].GetProperty("count").GetInt32());
        Assert.Equal(("2027-01-04", "10:00"), (jobs[0].GetProperty("begins").GetProperty("date").GetString(), jobs[0].GetProperty("begins").GetProperty("time").GetString()));
    }

    [Fact]
    public async Task Bench_mounted_at_no_such_time_is_400()
    {
        using HttpClient client = hosts.Plain.CreateClient();
        JsonElement plan = await client.PlanAsync(Order);

        using HttpResponseMessage response = await client.GetAsync(new Uri($"/api/plans/{plan.GetProperty("id").GetString()}/bench?mount=never", UriKind.Relative));

        JsonElement problem = await Json.ReadProblemAsync(response, 400, "/problems/invalid-request");
        Assert.True(problem.GetProperty("errors").TryGetProperty("mount", out _));
    }

    [Fact]
    public async Task Schedule_is_drawn_with_a_bar_for_every_job_and_one_for_every_wait()
    {
        using HttpClient client = hosts.Plain.CreateClient();
        JsonElement plan = await client.PlanAsync(Order);
        JsonElement schedule = plan.GetProperty("benchPlan").GetProperty("schedule");

        using HttpResponseMessage response = await client.GetAsync(new Uri(schedule.GetProperty("drawing").GetString()!, UriKind.Relative));

        Assert.Equal("image/svg+xml", response.Content.Headers.ContentType?.MediaType);
        XElement svg = XDocument.Parse(await response.Content.ReadAsStringAsync()).Root!;
        JsonElement[] jobs = [.. schedule.GetProperty("jobs").EnumerateArray()];
        Assert.Equal(jobs.Length, svg.Descendants().Count(e => (string?)e.Attribute("class") == "hands"));
        Assert.Equal(jobs.Count(job => job.GetProperty("press").GetBoolean()), svg.Descendants().Count(e => (string?)e.Attribute("class") == "press"));
        Assert.Equal(jobs.Count(job => job.GetProperty("wait").GetInt32() > 0 && !job.GetProperty("press").GetBoolean()), svg.Descendants().Count(e => (string?)e.Attribute("class") == "wait"));
        Assert.Contains("Keepers & rush", svg.Elements().First(e => e.Name.LocalName == "title").Value, StringComparison.Ordinal);

        // A bar twice as long is drawn twice as long: time runs evenly across.
        double[] widths = [.. svg.Descendants().Where(e => (string?)e.Attribute("class") == "press").Select(e => (double)e.Attribute("width")!)];
        Assert.All(widths, width => Assert.Equal(widths[0], width, 1));
    }

    [Fact]
    public async Task Care_is_told_where_the_order_makes_it_matter()
    {
        using HttpClient client = hosts.Plain.CreateClient();

        JsonElement plain = await client.PlanAsync(Order);
        JsonElement oil = await client.PlanAsync(Json.With(Order, "cloths[0].ground", "\"oil\""));

        Assert.DoesNotContain("oil-ground-water-glue", Ids(plain));
        Assert.Contains("oil-ground-water-glue", Ids(oil));

        static IEnumerable<string?> Ids(JsonElement plan) => plan.GetProperty("care").EnumerateArray().Select(note => note.GetProperty("id").GetString());
    }
}
